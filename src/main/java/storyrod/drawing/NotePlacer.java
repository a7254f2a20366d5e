package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.TextStyle;

/**
 * Finds the place of a note: its text free of everything, its leader short, clear of texts and of
 * other leaders, and crossing few lines. Every place on a grid is weighed.
 */
final class NotePlacer {
  private static final double GRID = 3;
  private static final double LANDING = 2;
  private static final double WIDEST = 46;
  private static final double PER_CROSSING = 7;
  private static final double SHORTEST = 5;

  private final Paper paper;
  private final Size area;
  private final List<Paper.Stretch> leaders = new ArrayList<>();

  NotePlacer(Paper paper, Size area) {
    this.paper = paper;
    this.area = area;
  }

  /** Puts a note on the paper; false if there is no room. */
  boolean place(CutNote note, PlacedView view) {
    List<String> lines = wrapped(note.words());
    List<At> tips = note.tips().stream().map(view::at).toList();
    double rim = note.rimMm() * view.ruler().factor();
    Optional<Note> best = best(lines, tips, rim);
    best.ifPresent(
        found -> {
          paper.add(found);
          leaders.add(new Paper.Stretch(found.tip(), found.elbow()));
        });
    return best.isPresent();
  }

  /** The note in lines of some width. */
  static List<String> wrapped(String words) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.split("(?<!\\d) (?!deep|in\\b)|(?<=[,×]) ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      boolean fits = TextSetting.of(TextStyle.NOTE, longer).width() <= WIDEST;
      if (!fits && !line.isEmpty()) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  private Optional<Note> best(List<String> lines, List<At> tips, double rim) {
    Bounds now = paper.bounds();
    double widest =
        lines.stream().mapToDouble(each -> TextSetting.of(TextStyle.NOTE, each).width()).max()
            .orElseThrow();
    Optional<Note> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Trial trial : trials(new Wish(lines, widest, tips, rim), now)) {
      if (trial.least() >= least) {
        break;
      }
      Note note = trial.block().note(trial.tip(), rim);
      double cost = trial.least() + crossings(note) * PER_CROSSING;
      if (cost < least && isFree(note, trial.block())) {
        best = Optional.of(note);
        least = cost;
      }
    }
    return best;
  }

  private record Wish(List<String> lines, double width, List<At> tips, double rim) {}

  /** A place for the text and a point for the leader, with what it costs before any crossing. */
  private record Trial(Block block, At tip, double least) {}

  private List<Trial> trials(Wish wish, Bounds now) {
    List<Trial> trials = new ArrayList<>();
    for (double y = now.bottom() - area.heightMm(); y < now.top() + area.heightMm(); y += GRID) {
      for (double x = now.right() - area.widthMm(); x < now.left() + area.widthMm(); x += GRID) {
        addTrials(wish, new At(x, y), now, trials);
      }
    }
    trials.sort(java.util.Comparator.comparingDouble(Trial::least));
    return trials;
  }

  private void addTrials(Wish wish, At text, Bounds now, List<Trial> trials) {
    for (Anchor anchor : List.of(Anchor.START, Anchor.END)) {
      Block block = new Block(wish.lines, anchor, text, wish.width);
      if (fits(block.bounds(), now)) {
        for (At tip : wish.tips) {
          if (block.isSane(tip, wish.rim)) {
            double least = block.elbow().distance(tip) + growth(block.bounds(), now);
            trials.add(new Trial(block, tip, least));
          }
        }
      }
    }
  }

  private record Block(List<String> lines, Anchor anchor, At text, double width) {
    private double side() {
      return anchor == Anchor.START ? -1 : 1;
    }

    At elbow() {
      return text.plus(side() * (0.8 + LANDING), -Lowering.LEADER_ABOVE);
    }

    Bounds bounds() {
      double size = TextStyle.NOTE.sizeMm();
      double left = anchor == Anchor.START ? text.x() : text.x() - width;
      double bottom = text.y() + size * (TextSetting.DESCENT + (lines.size() - 1) * Lowering.LINE_SPACING);
      return new Bounds(left, text.y() - size * TextSetting.ASCENT, left + width, bottom);
    }

    /** The leader runs away from the text, and neither level nor very short. */
    boolean isSane(At tip, double rim) {
      double over = (tip.x() - elbow().x()) * side();
      double up = Math.abs(tip.y() - elbow().y());
      return over >= 0 && up >= 0.35 * over && up >= 2 && tip.distance(elbow()) >= SHORTEST + rim;
    }

    Note note(At centre, double rim) {
      double part = rim / centre.distance(elbow());
      At tip =
          centre.plus((elbow().x() - centre.x()) * part, (elbow().y() - centre.y()) * part);
      return new Note(tip, elbow(), text, anchor, lines);
    }
  }

  private boolean fits(Bounds block, Bounds now) {
    Bounds all = now.with(block);
    return all.width() <= area.widthMm() - 1 && all.height() <= area.heightMm() - 1;
  }

  private static double growth(Bounds block, Bounds now) {
    Bounds all = now.with(block);
    return (all.width() - now.width() + all.height() - now.height()) * 0.7;
  }

  private long crossings(Note note) {
    Paper.Stretch leader = leader(note);
    return paper.stretches().stream().filter(leader::crosses).count();
  }

  private boolean isFree(Note note, Block block) {
    Bounds room = block.bounds();
    PlacedText whole =
        new PlacedText(
            "", TextStyle.NOTE.sizeMm(), room.left(), room.top(), room.right(), room.bottom());
    Paper.Stretch landing = new Paper.Stretch(note.elbow(), note.text().plus(0, -Lowering.LEADER_ABOVE));
    return paper.isFree(whole.widened(0.5))
        && paper.missesTexts(leader(note))
        && paper.missesTexts(landing)
        && leaders.stream().noneMatch(leader(note)::crosses);
  }

  private static Paper.Stretch leader(Note note) {
    return new Paper.Stretch(note.tip(), note.elbow());
  }
}
