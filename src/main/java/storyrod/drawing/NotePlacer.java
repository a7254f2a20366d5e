package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.NoteElbow.Landing;
import storyrod.drawing.NoteElbow.Place;
import storyrod.drawing.NotePlaces.Aim;
import storyrod.geometry.Point;

/**
 * Finds the place of a note: its text free of everything, its leader short, clear of texts and of
 * other leaders, and crossing few lines.
 */
final class NotePlacer {
  private static final double PER_LINE = 3;
  private static final double PER_CROSSING = 7;
  private static final double PER_GROWTH = 0.7;
  private static final int TIPS = 5;

  /** Nearer to another note than a line is high, as if the two were one, and what that costs. */
  private static final double APART_MM = TextStyle.NOTE.sizeMm() * Lowering.LINE_SPACING;

  private static final double PER_CROWDED = 60;

  /** Of which a leader is made. */
  private static final int STRETCHES = 2;

  private final Paper paper;
  private final Size area;
  private final List<Paper.Stretch> leaders = new ArrayList<>();
  private final List<Bounds> texts = new ArrayList<>();
  private Bounds within = Bounds.ALL;

  NotePlacer(Paper paper, Size area) {
    this.paper = paper;
    this.area = area;
  }

  /** Keeps clear of leaders that stand already. */
  void keepOff(List<Paper.Stretch> others) {
    leaders.addAll(others);
  }

  /** How many notes stand: a state to come back to. */
  int state() {
    return texts.size();
  }

  void backTo(int state) {
    int from = leaders.size() - STRETCHES * (texts.size() - state);
    leaders.subList(from, leaders.size()).clear();
    texts.subList(state, texts.size()).clear();
  }

  /**
   * How notes are placed.
   *
   * @param crossed what it costs to cross a dimension line
   * @param widest the width of a text's lines, in mm
   * @param most a place that costs as much as this is none
   */
  record Terms(double crossed, double widest, double most) {
    Terms(double crossed, double widest) {
      this(crossed, widest, Double.POSITIVE_INFINITY);
    }

    Terms below(double cost) {
      return new Terms(crossed, widest, cost);
    }
  }

  /** Lets notes stand nowhere but in a rectangle. */
  void keepIn(Bounds room) {
    within = room;
  }

  /** What stands on the paper now, as the ground of all notes to come. */
  NoteGround ground() {
    Paper.Layer all = paper.layer(Paper.NOTHING, paper.state());
    return new NoteGround(all, all.strewn(), paper.bounds(), area, within, paper.dimensions());
  }

  static Aim aim(CutNote note, ViewOnPaper view) {
    List<Point> shown = note.tips().stream().filter(view::shows).toList();
    Stream<Point> seen =
        shown.isEmpty() ? note.tips().stream().flatMap(view::besideBreak) : shown.stream();
    List<At> all = seen.map(view::at).toList();
    int step = Math.max(1, Math.ceilDiv(all.size(), TIPS));
    List<At> tips =
        IntStream.range(0, all.size()).filter(i -> i % step == 0).mapToObj(all::get).toList();
    return new Aim(tips, note.rimMm() * view.factor());
  }

  /** Puts a note on the paper that points at one of some points, or at a rim round it. */
  OptionalDouble place(String words, Aim aim, Terms terms) {
    return place(new NotePlaces(ground(), aim, words, terms.widest), terms);
  }

  /** Puts a note on the paper and tells its cost, in mm of leader; nothing if there is no room. */
  OptionalDouble place(NotePlaces places, Terms terms) {
    Search search = new Search(places, terms);
    search.run(false);
    if (search.best.isEmpty()) {
      return OptionalDouble.empty();
    }
    Note best = search.best.get().note();
    paper.add(best);
    texts.add(search.best.get().text());
    leaders.add(leader(best));
    leaders.add(landing(best));
    return OptionalDouble.of(search.least);
  }

  /** Whether there is any place for a note, however dear. */
  boolean hasRoom(NotePlaces places, double widest) {
    Search search = new Search(places, new Terms(0, widest));
    search.run(true);
    return search.best.isPresent();
  }

  /** The best place so far and what it costs, in mm of leader. */
  private final class Search {
    private final NotePlaces places;
    private final Terms terms;
    private final Bounds now = paper.bounds();
    private final Paper.Layer notes;
    private final int fewest;
    private final boolean[] blocked;
    private Optional<Place> best = Optional.empty();
    private double least;

    Search(NotePlaces places, Terms terms) {
      this.places = places;
      this.terms = terms;
      this.notes = places.ground().paper().above();
      this.fewest = places.fewestLines(terms.widest);
      this.blocked = new boolean[places.beams()];
      this.least = terms.most;
    }

    /** Looks in wider and wider rings until no place can be better, or until there is any. */
    void run(boolean any) {
      double reach = area.widthMm() + area.heightMm();
      for (int i = 0; places.ring(i).away() < Math.min(reach, least); i++) {
        places.ring(i).elbows().forEach(this::weigh);
        if (any && best.isPresent()) {
          return;
        }
      }
    }

    private void weigh(NoteElbow elbow) {
      boolean hopeless = blocked[elbow.beam()] || leastAt(elbow) >= least;
      if (!hopeless) {
        for (Place place : elbow.places()) {
          if (!place.isBlocked() && place.lines() >= fewest) {
            weigh(elbow, place);
          }
        }
      }
    }

    /** What a place there costs at least. */
    private double leastAt(NoteElbow elbow) {
      double cost = elbow.distance() + fewest * PER_LINE;
      return cost >= least ? cost : cost + ofDimensions(elbow);
    }

    private double ofDimensions(NoteElbow elbow) {
      return terms.crossed == 0 ? 0 : terms.crossed * elbow.dimensionsCrossed();
    }

    private double ofDimensions(Landing landing) {
      return terms.crossed == 0 ? 0 : terms.crossed * landing.dimensionsCrossed();
    }

    private void weigh(NoteElbow elbow, Place place) {
      double growth = NoteGround.growth(place.text(), now) * PER_GROWTH;
      double cost = elbow.distance() + growth + place.lines() * PER_LINE;
      if (cost >= least || !places.ground().fits(place.text(), now)) {
        return;
      }
      cost += ofDimensions(elbow);
      cost += ofDimensions(place.landing()) + PER_CROWDED * crowded(place.text());
      if (cost < least && isFree(elbow, place)) {
        cost += PER_CROSSING * (elbow.linesCrossed() + notes.crossed(elbow.leader()));
        if (cost < least) {
          best = Optional.of(place);
          least = cost;
        }
      }
    }

    /** How many notes stand so near that they would be read together. */
    private long crowded(Bounds text) {
      Bounds near = text.widened(APART_MM);
      return texts.stream().filter(near::overlaps).count();
    }

    private boolean isFree(NoteElbow elbow, Place place) {
      blocked[elbow.beam()] = blocked[elbow.beam()] || !misses(elbow.leader());
      return !blocked[elbow.beam()]
          && place.isFree()
          && notes.isFree(place.room())
          && misses(place.landing().line());
    }

    /** Whether a leader or a landing keeps clear of the notes that stand. */
    private boolean misses(Paper.Stretch line) {
      return notes.missesTexts(line) && leaders.stream().noneMatch(line::crosses);
    }
  }

  static Paper.Stretch leader(Note note) {
    return new Paper.Stretch(note.tip(), note.elbow());
  }

  /** The level stretch from a leader to its text. */
  static Paper.Stretch landing(Note note) {
    return new Paper.Stretch(note.elbow(), note.text().plus(0, -Lowering.LEADER_ABOVE));
  }
}
