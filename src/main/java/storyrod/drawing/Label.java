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
  private static final double ARROW_ROOM = 3.6;
  private static final double SHORTEST_ARROW = 7;
  private static final double LONGEST_ARROW = 16;

  Label {
    lines = List.copyOf(lines);
  }

  /** A line of text in its style. */
  record Line(TextStyle style, String text) {}

  static Label of(TextStyle style, String text) {
    return new Label(List.of(new Line(style, text)));
  }

  Label and(TextStyle style, String text) {
    List<Line> more = new ArrayList<>(lines);
    more.add(new Line(style, text));
    return new Label(more);
  }

  /**
   * The first label that fits, with the arrow rather than without.
   *
   * @param grain whether the grain runs across the paper; empty for no arrow
   */
  static List<Element> place(List<Label> labels, Bounds room, Optional<Boolean> grain) {
    for (Label label : labels) {
      for (boolean level : new boolean[] {true, false}) {
        Slot slot = new Slot(label, room, level);
        if (grain.isPresent() && slot.takesArrow(grain.get())) {
          return slot.withArrow(grain.get());
        }
      }
      for (boolean level : new boolean[] {true, false}) {
        Slot slot = new Slot(label, room, level);
        if (slot.takes(0, 0)) {
          return slot.texts(0, 0);
        }
      }
    }
    return List.of();
  }

  /** The first label that fits level, else the first that fits upwards. */
  static List<Element> placeLevel(List<Label> labels, Bounds room) {
    for (boolean level : new boolean[] {true, false}) {
      for (Label label : labels) {
        Slot slot = new Slot(label, room, level);
        if (slot.takes(0, 0)) {
          return slot.texts(0, 0);
        }
      }
    }
    return List.of();
  }

  private double width() {
    return lines.stream()
        .mapToDouble(line -> TextSetting.of(line.style(), line.text()).width())
        .max()
        .orElse(0);
  }

  private double height() {
    double between =
        lines.stream().skip(1).mapToDouble(line -> line.style().sizeMm() * LEADING).sum();
    return between
        + lines.getFirst().style().sizeMm() * TextSetting.ASCENT
        + lines.getLast().style().sizeMm() * TextSetting.DESCENT;
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

    List<Element> withArrow(boolean grainAcross) {
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
        down += line.style().sizeMm() * step;
        step = LEADING;
        texts.add(
            new Text(line.style(), point(-moreAlong / 2, down), Anchor.MIDDLE, level, line.text()));
      }
      return texts;
    }
  }
}
