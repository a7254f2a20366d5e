package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;

/** Lines of text for the middle of a rectangle, level or upwards, with a grain arrow if it fits. */
record Label(List<Line> lines) {
  private static final double EDGE = 0.8;
  private static final double LEADING = 1.3;
  private static final double GAP = 1.6;
  private static final double ARROW_ROOM = 3.6;
  private static final double SHORTEST_ARROW = 7;
  private static final double LONGEST_ARROW = 16;

  Label {
    lines = List.copyOf(lines);
  }

  /** A line of one text, or of several beside each other. */
  record Line(List<Run> runs) {
    Line {
      runs = List.copyOf(runs);
    }

    double width() {
      return runs.stream().mapToDouble(Run::width).sum() + (runs.size() - 1) * GAP;
    }

    double sizeMm() {
      return runs.stream().mapToDouble(run -> run.style.sizeMm()).max().orElse(0);
    }
  }

  /** A text in its style. */
  record Run(TextStyle style, String text) {
    double width() {
      return TextSetting.of(style, text).width();
    }
  }

  static Label of(TextStyle style, String text) {
    return new Label(List.of(new Line(List.of(new Run(style, text)))));
  }

  /** A further line. */
  Label and(TextStyle style, String text) {
    List<Line> more = new ArrayList<>(lines);
    more.add(new Line(List.of(new Run(style, text))));
    return new Label(more);
  }

  /** A further text beside the last line. */
  Label beside(TextStyle style, String text) {
    List<Line> more = new ArrayList<>(lines);
    List<Run> runs = new ArrayList<>(more.removeLast().runs);
    runs.add(new Run(style, text));
    more.add(new Line(runs));
    return new Label(more);
  }

  /**
   * The first label that fits, with the arrow rather than without.
   *
   * @param grain whether the grain runs across the paper; empty for no arrow
   */
  static List<Element> place(List<Label> labels, Bounds room, Optional<Boolean> grain) {
    for (Label label : labels) {
      List<Slot> slots = List.of(new Slot(label, room, true), new Slot(label, room, false));
      Optional<List<Element>> placed =
          slots.stream().flatMap(slot -> slot.withArrow(grain).stream()).findFirst();
      placed = placed.or(() -> slots.stream().flatMap(slot -> slot.alone().stream()).findFirst());
      if (placed.isPresent()) {
        return placed.get();
      }
    }
    return List.of();
  }

  /**
   * The first label that fits one way, else the first that fits the other way.
   *
   * @param levelFirst whether the one way is level, the other upwards
   */
  static List<Element> placeRow(
      List<Label> labels, Bounds room, boolean levelFirst, Optional<Boolean> grain) {
    for (boolean level : new boolean[] {levelFirst, !levelFirst}) {
      for (Label label : labels) {
        Slot slot = new Slot(label, room, level);
        Optional<List<Element>> placed = slot.withArrow(grain).or(slot::alone);
        if (placed.isPresent()) {
          return placed.get();
        }
      }
    }
    return List.of();
  }

  double width() {
    return lines.stream().mapToDouble(Line::width).max().orElse(0);
  }

  double height() {
    double between = lines.stream().skip(1).mapToDouble(line -> line.sizeMm() * LEADING).sum();
    return between
        + lines.getFirst().sizeMm() * TextSetting.ASCENT
        + lines.getLast().sizeMm() * TextSetting.DESCENT;
  }

  /** A label in a rectangle, level or written upwards. */
  private record Slot(Label label, Bounds room, boolean level) {
    /** The room along and across the lines of writing. */
    private double along() {
      return (level ? room.width() : room.height()) - 2 * EDGE;
    }

    private double across() {
      return (level ? room.height() : room.width()) - 2 * EDGE;
    }

    boolean takes(double moreAlong, double moreAcross) {
      return label.width() + moreAlong <= along() && label.height() + moreAcross <= across();
    }

    boolean takesArrow(boolean grainAcross) {
      boolean grainAlong = grainAcross == level;
      double length = arrowLength(grainAcross);
      return length >= SHORTEST_ARROW
          && (grainAlong ? takes(0, ARROW_ROOM) : takes(2 * ARROW_ROOM, 0));
    }

    private double arrowLength(boolean grainAcross) {
      double free = (grainAcross ? room.width() : room.height()) - 4 * EDGE;
      return Math.min(LONGEST_ARROW, free * 0.7);
    }

    Optional<List<Element>> alone() {
      return takes(0, 0) ? Optional.of(texts(0, 0)) : Optional.empty();
    }

    Optional<List<Element>> withArrow(Optional<Boolean> grain) {
      return grain.filter(this::takesArrow).map(this::withArrow);
    }

    private List<Element> withArrow(boolean grainAcross) {
      boolean grainAlong = grainAcross == level;
      List<Element> elements = new ArrayList<>(texts(0, grainAlong ? ARROW_ROOM : 0));
      double half = arrowLength(grainAcross) / 2;
      At middle =
          grainAlong
              ? point(0, (label.height() + ARROW_ROOM) / 2 - 0.6)
              : point(label.width() / 2 + ARROW_ROOM / 2, 0);
      elements.add(
          grainAcross
              ? new Arrow(middle.plus(-half, 0), middle.plus(half, 0), true)
              : new Arrow(middle.plus(0, half), middle.plus(0, -half), true));
      return elements;
    }

    /** A point by its distance from the middle, along and down the lines of writing. */
    private At point(double along, double down) {
      At middle = new At((room.left() + room.right()) / 2, (room.top() + room.bottom()) / 2);
      return level ? middle.plus(along, down) : middle.plus(down, -along);
    }

    List<Element> texts(double moreAlong, double below) {
      List<Element> texts = new ArrayList<>();
      double down = -(label.height() + below) / 2;
      double step = TextSetting.ASCENT;
      for (Line line : label.lines) {
        down += line.sizeMm() * step;
        step = LEADING;
        addLine(texts, line, -moreAlong / 2, down);
      }
      return texts;
    }

    private void addLine(List<Element> texts, Line line, double middle, double down) {
      double at = middle - line.width() / 2;
      for (Run run : line.runs) {
        At place = point(at + run.width() / 2, down);
        texts.add(new Text(run.style, place, Anchor.MIDDLE, level, run.text));
        at += run.width() + GAP;
      }
    }
  }
}
