package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

  /** An arrow in a line of writing: its two heads with a bit of a shaft between them, or more. */
  private static final double LEAST_IN_LINE = 5.4;

  private static final double MOST_IN_LINE = 9;

  /** How high above its base line the middle of a line's capitals lies, in parts of its size. */
  private static final double MIDDLE = Lowering.CAPITAL / 2;

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
   * The first label that fits with the arrow, else the first that fits without.
   *
   * @param grain whether the grain runs across the paper; empty for no arrow
   */
  static List<Element> place(List<Label> labels, Bounds room, Optional<Boolean> grain) {
    return first(
        labels.stream()
            .map(each -> List.of(new Slot(each, room, true), new Slot(each, room, false))),
        grain);
  }

  /**
   * The first label that fits one way, else the first that fits the other way; with the arrow if
   * any fits with it.
   *
   * @param levelFirst whether the one way is level, the other upwards
   */
  static List<Element> placeRow(
      List<Label> labels, Bounds room, boolean levelFirst, Optional<Boolean> grain) {
    return first(
        Stream.of(levelFirst, !levelFirst)
            .flatMap(level -> labels.stream().map(each -> new Slot(each, room, level)))
            .map(List::of),
        grain);
  }

  /** Of places in their order, those that are alike together, the first that has room. */
  private static List<Element> first(Stream<List<Slot>> places, Optional<Boolean> grain) {
    List<List<Slot>> slots = places.toList();
    return slots.stream()
        .flatMap(
            alike ->
                Stream.concat(
                    alike.stream().flatMap(slot -> slot.withArrow(grain).stream()),
                    alike.stream().flatMap(slot -> slot.withShortArrow(grain).stream())))
        .findFirst()
        .or(
            () ->
                slots.stream()
                    .flatMap(List::stream)
                    .flatMap(slot -> slot.alone().stream())
                    .findFirst())
        .orElse(List.of());
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

    private boolean takesArrow(boolean grainAcross) {
      boolean grainAlong = grainAcross == level;
      return arrowLength(grainAcross) >= SHORTEST_ARROW
          && (grainAlong ? takes(0, ARROW_ROOM) : takes(2 * ARROW_ROOM, 0));
    }

    private double arrowLength(boolean grainAcross) {
      double free = (grainAcross ? room.width() : room.height()) - 4 * EDGE;
      return Math.min(LONGEST_ARROW, free * 0.7);
    }

    Optional<List<Element>> alone() {
      return takes(0, 0) ? Optional.of(texts(0, 0, 0)) : Optional.empty();
    }

    /** With the arrow below the lines, or beside them if it crosses them. */
    Optional<List<Element>> withArrow(Optional<Boolean> grain) {
      return grain
          .filter(this::takesArrow)
          .map(across -> across == level ? withArrowBelow() : withArrowBeside(0));
    }

    /** With the arrow at the end of the first line, or close beside the lines. */
    Optional<List<Element>> withShortArrow(Optional<Boolean> grain) {
      return grain.flatMap(across -> across == level ? withArrowInLine() : withArrowClose());
    }

    private List<Element> withArrowBelow() {
      At middle = point(0, (label.height() + ARROW_ROOM) / 2 - 0.6);
      return with(texts(0, 0, ARROW_ROOM), arrow(middle, level, arrowLength(level)));
    }

    /**
     * The arrow across the lines, at their right.
     *
     * @param back how far the lines give way to it
     */
    private List<Element> withArrowBeside(double back) {
      At middle = point(label.width() / 2 + ARROW_ROOM / 2 - back, 0);
      return with(texts(back, back, 0), arrow(middle, !level, arrowLength(!level)));
    }

    private Optional<List<Element>> withArrowClose() {
      return arrowLength(!level) >= LEAST_IN_LINE && takes(ARROW_ROOM, 0)
          ? Optional.of(withArrowBeside(ARROW_ROOM / 2))
          : Optional.empty();
    }

    private Optional<List<Element>> withArrowInLine() {
      Line first = label.lines.getFirst();
      double length = Math.min(MOST_IN_LINE, along() - first.width() - GAP);
      if (length < LEAST_IN_LINE || !takes(0, 0)) {
        return Optional.empty();
      }
      double down = first.sizeMm() * (TextSetting.ASCENT - MIDDLE) - label.height() / 2;
      At middle = point((first.width() + GAP) / 2, down);
      return Optional.of(with(texts((length + GAP) / 2, 0, 0), arrow(middle, level, length)));
    }

    private static List<Element> with(List<Element> texts, Arrow arrow) {
      return Stream.concat(texts.stream(), Stream.of(arrow)).toList();
    }

    private static Arrow arrow(At middle, boolean grainAcross, double length) {
      double half = length / 2;
      return grainAcross
          ? new Arrow(middle.plus(-half, 0), middle.plus(half, 0), true)
          : new Arrow(middle.plus(0, half), middle.plus(0, -half), true);
    }

    /** A point by its distance from the middle, along and down the lines of writing. */
    private At point(double along, double down) {
      At middle = room.middle();
      return level ? middle.plus(along, down) : middle.plus(down, -along);
    }

    /**
     * The lines about the middle.
     *
     * @param first how far the first line gives way, towards where writing begins
     * @param others how far the others do
     * @param below what is left free below them, half of it taken from above
     */
    private List<Element> texts(double first, double others, double below) {
      List<Element> texts = new ArrayList<>();
      double down = -(label.height() + below) / 2;
      double step = TextSetting.ASCENT;
      double back = first;
      for (Line line : label.lines) {
        down += line.sizeMm() * step;
        addLine(texts, line, -back, down);
        step = LEADING;
        back = others;
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
