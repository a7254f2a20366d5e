package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.TextStyle;

/**
 * Finds the place of a note: its text free of everything, its leader short, clear of texts and of
 * other leaders, and crossing few lines.
 */
final class NotePlacer {
  private static final double RING = 2.5;
  private static final List<Ray> RAYS = rays();
  private static final double LANDING = 2;

  /** What is left free between a landing and its text, in mm. */
  private static final double BESIDE = 0.8;

  private static final double PER_LINE = 3;
  private static final double PER_CROSSING = 7;
  private static final double SHORTEST = 5;
  private static final int TIPS = 5;

  private final Paper paper;
  private final Size area;
  private final List<Paper.Stretch> leaders = new ArrayList<>();
  private Bounds within = Bounds.ALL;

  NotePlacer(Paper paper, Size area) {
    this.paper = paper;
    this.area = area;
  }

  /** Keeps clear of leaders that stand already. */
  void keepOff(List<Paper.Stretch> others) {
    leaders.addAll(others);
  }

  /** How many leaders stand: a state to come back to. */
  int state() {
    return leaders.size();
  }

  void backTo(int state) {
    leaders.subList(state, leaders.size()).clear();
  }

  /**
   * How notes are placed.
   *
   * @param dimensions the dimension lines that stand
   * @param crossed what it costs to cross one of them
   * @param widest the width of a text's lines, in mm
   * @param most a place that costs as much as this is none
   */
  record Terms(List<Paper.Stretch> dimensions, double crossed, double widest, double most) {
    Terms(List<Paper.Stretch> dimensions, double crossed, double widest) {
      this(dimensions, crossed, widest, Double.POSITIVE_INFINITY);
    }

    Terms below(double cost) {
      return new Terms(dimensions, crossed, widest, cost);
    }

    /** What the dimensions that a leader crosses cost, counted no further than to a most. */
    double cost(Paper.Stretch leader, double most) {
      double cost = 0;
      for (Paper.Stretch each : dimensions) {
        if (leader.crosses(each)) {
          cost += crossed;
          if (cost >= most) {
            return cost;
          }
        }
      }
      return cost;
    }
  }

  /** Lets notes stand nowhere but in a rectangle. */
  void keepIn(Bounds room) {
    within = room;
  }

  /** Puts a note on the paper and tells its cost, in mm of leader; nothing if there is no room. */
  OptionalDouble place(CutNote note, ViewOnPaper view, Terms terms) {
    return place(note.words(), aim(note, view), terms);
  }

  /** Whether there is any place for a note, however dear. */
  boolean hasRoom(CutNote note, ViewOnPaper view, double widest) {
    Search search = new Search(paper.bounds(), new Terms(List.of(), 0, widest));
    Aim aim = aim(note, view);
    List<NoteLines> ways = NoteLines.ways(note.words(), widest);
    double most = area.widthMm() + area.heightMm();
    for (double away = SHORTEST + aim.rim; away < most && search.best.isEmpty(); away += RING) {
      search.weigh(aim, ways, away);
    }
    return search.best.isPresent();
  }

  private static Aim aim(CutNote note, ViewOnPaper view) {
    List<At> all = note.tips().stream().filter(view::shows).map(view::at).toList();
    int step = Math.max(1, Math.ceilDiv(all.size(), TIPS));
    List<At> tips =
        IntStream.range(0, all.size()).filter(i -> i % step == 0).mapToObj(all::get).toList();
    return new Aim(tips, note.rimMm() * view.factor());
  }

  /** Puts a note on the paper that points at one of some points, or at a rim round it. */
  OptionalDouble place(String words, Aim aim, Terms terms) {
    Search found = best(words, aim, terms);
    if (found.best.isEmpty()) {
      return OptionalDouble.empty();
    }
    Note best = found.best.get();
    paper.add(best);
    leaders.add(leader(best));
    leaders.add(landing(best));
    return OptionalDouble.of(found.least);
  }

  /** Points of which a leader may lead to any, and how far from each it ends, in mm. */
  record Aim(List<At> tips, double rim) {}

  /** Looks round the points in wider and wider rings until no place can be better. */
  private Search best(String words, Aim aim, Terms terms) {
    Search search = new Search(paper.bounds(), terms);
    List<NoteLines> ways = NoteLines.ways(words, terms.widest);
    double reach = area.widthMm() + area.heightMm();
    for (double away = SHORTEST + aim.rim; away < Math.min(reach, search.least); away += RING) {
      search.weigh(aim, ways, away);
    }
    return search;
  }

  /** A direction of a leader from its tip. */
  private record Ray(double x, double y) {
    /** The text stands on the side to which the leader leans. */
    List<Anchor> anchors() {
      if (Math.abs(x) < 1e-9) {
        return List.of(Anchor.START, Anchor.END);
      }
      return List.of(x > 0 ? Anchor.START : Anchor.END);
    }
  }

  /** All round in steps, none of them level. */
  private static List<Ray> rays() {
    List<Ray> rays = new ArrayList<>();
    for (int degrees = 20; degrees <= 160; degrees += 10) {
      double x = StrictMath.cos(StrictMath.toRadians(degrees));
      double y = StrictMath.sin(StrictMath.toRadians(degrees));
      rays.add(new Ray(degrees == 90 ? 0 : x, -y));
      rays.add(new Ray(degrees == 90 ? 0 : x, y));
    }
    return List.copyOf(rays);
  }

  /** The best place so far and what it costs, in mm of leader. */
  private final class Search {
    private final Bounds now;
    private final Bounds elbows;
    private final Terms terms;
    private Optional<Note> best = Optional.empty();
    private double least;

    Search(Bounds now, Terms terms) {
      this.now = now;
      this.elbows = elbows(now);
      this.terms = terms;
      this.least = terms.most;
    }

    /** Weighs the places of a ring round each point. */
    void weigh(Aim aim, List<NoteLines> ways, double away) {
      for (At tip : aim.tips) {
        for (Ray ray : RAYS) {
          At elbow = tip.plus(ray.x * away, ray.y * away);
          if (elbows.contains(elbow)) {
            for (NoteLines lines : ways) {
              for (Anchor anchor : ray.anchors()) {
                weigh(new Block(lines, anchor, elbow), tip, aim.rim);
              }
            }
          }
        }
      }
    }

    private void weigh(Block block, At tip, double rim) {
      Bounds room = block.bounds();
      double cost =
          block.elbow.distance(tip) + growth(room, now) + block.set.lines().size() * PER_LINE;
      if (cost >= least || !fits(room, now)) {
        return;
      }
      Note note = block.note(tip, rim);
      cost += terms.cost(leader(note), least - cost);
      cost += terms.cost(landing(note), least - cost);
      if (cost < least && isFree(note, room)) {
        cost += crossings(leader(note), least - cost);
        if (cost < least) {
          best = Optional.of(note);
          least = cost;
        }
      }
    }
  }

  private record Block(NoteLines set, Anchor anchor, At elbow) {
    private At text() {
      double side = anchor == Anchor.START ? 1 : -1;
      return elbow.plus(side * (BESIDE + LANDING), Lowering.LEADER_ABOVE);
    }

    Bounds bounds() {
      double size = TextStyle.NOTE.sizeMm();
      At text = text();
      double left = anchor == Anchor.START ? text.x() : text.x() - set.width();
      double below = TextSetting.DESCENT + (set.lines().size() - 1) * Lowering.LINE_SPACING;
      double bottom = text.y() + size * below;
      return new Bounds(left, text.y() - size * TextSetting.ASCENT, left + set.width(), bottom);
    }

    Note note(At centre, double rim) {
      double part = rim / centre.distance(elbow);
      At tip = centre.plus((elbow.x() - centre.x()) * part, (elbow.y() - centre.y()) * part);
      return new Note(tip, elbow, text(), anchor, set.lines());
    }
  }

  /** Where elbows may lie: a text starts right beside its own, and all has to fit the area. */
  private Bounds elbows(Bounds now) {
    double wide = area.widthMm() - 1;
    double high = area.heightMm() - 1;
    return new Bounds(now.right() - wide, now.bottom() - high, now.left() + wide, now.top() + high)
        .within(within)
        .widened(BESIDE + LANDING + 0.1);
  }

  private boolean fits(Bounds block, Bounds now) {
    Bounds all = now.with(block);
    return block.isIn(within)
        && all.width() <= area.widthMm() - 1
        && all.height() <= area.heightMm() - 1;
  }

  private static double growth(Bounds block, Bounds now) {
    Bounds all = now.with(block);
    return (all.width() - now.width() + all.height() - now.height()) * 0.7;
  }

  /** What the lines under a leader cost, counted no further than to a most. */
  private double crossings(Paper.Stretch leader, double most) {
    return PER_CROSSING * paper.crossed(leader, (int) Math.ceil(most / PER_CROSSING));
  }

  private boolean isFree(Note note, Bounds room) {
    PlacedText whole =
        new PlacedText(
            "", TextStyle.NOTE.sizeMm(), room.left(), room.top(), room.right(), room.bottom());
    Paper.Stretch leader = leader(note);
    Paper.Stretch landing = landing(note);
    return paper.isFree(whole.widened(0.8))
        && paper.missesTexts(leader)
        && paper.missesTexts(landing)
        && missesLeaders(leader)
        && missesLeaders(landing);
  }

  private boolean missesLeaders(Paper.Stretch stretch) {
    for (Paper.Stretch each : leaders) {
      if (stretch.crosses(each)) {
        return false;
      }
    }
    return true;
  }

  static Paper.Stretch leader(Note note) {
    return new Paper.Stretch(note.tip(), note.elbow());
  }

  /** The level stretch from a leader to its text. */
  static Paper.Stretch landing(Note note) {
    return new Paper.Stretch(note.elbow(), note.text().plus(0, -Lowering.LEADER_ABOVE));
  }
}
