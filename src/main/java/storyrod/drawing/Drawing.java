package storyrod.drawing;

import java.util.List;
import java.util.Optional;

/**
 * A drawing on paper, painted in the order of its elements. The set of elements is closed.
 *
 * @param name a name for files and ids: {@code exploded}, {@code part-A}
 * @param widthMm the width of the paper it takes
 * @param heightMm the height of the paper it takes
 * @param scale 1:{@code scale}, or empty where it has none
 */
public record Drawing(
    String name, double widthMm, double heightMm, Optional<Scale> scale, List<Element> elements) {
  public Drawing {
    elements = List.copyOf(elements);
  }

  /** Millimetres on paper for one of the piece; 0 of a drawing without a scale. */
  double factor() {
    return scale.map(Scale::factor).orElse(0.0);
  }

  /** The same under another name. */
  Drawing named(String other) {
    return new Drawing(other, widthMm, heightMm, scale, elements);
  }

  /** A point on the paper in mm. */
  public record At(double x, double y) {
    public At plus(double dx, double dy) {
      return new At(x + dx, y + dy);
    }

    public double distance(At other) {
      double dx = x - other.x;
      double dy = y - other.y;
      return Math.sqrt(dx * dx + dy * dy);
    }
  }

  /** What a line means; width and dashes follow from it (ISO 128-2). */
  public enum Role {
    VISIBLE(0.5),
    /** Edges of what stands already, or of small things. */
    THIN(0.25),
    HIDDEN(0.25),
    CENTRE(0.18),
    DIMENSION(0.18),
    TRAIL(0.18),
    /** The outline of what lies before a section. */
    PHANTOM(0.18),
    CUT(0.35);

    private final double widthMm;

    Role(double widthMm) {
      this.widthMm = widthMm;
    }

    public double widthMm() {
      return widthMm;
    }
  }

  /** The tone of an area: the paper's warm greys by the direction of a face, or a hatch. */
  public enum Tone {
    WHITE,
    TOP,
    FRONT,
    SIDE,
    PALE,
    HATCH,
    INK
  }

  /** What a text is, which decides its size and weight. */
  public enum TextStyle {
    DIMENSION(2.6),
    NOTE(2.6),
    MARK(3.4),
    SMALL(2.5),
    TITLE(4.2);

    private final double sizeMm;

    TextStyle(double sizeMm) {
      this.sizeMm = sizeMm;
    }

    /** The size of the font, in mm. */
    public double sizeMm() {
      return sizeMm;
    }
  }

  /** Where a text's point lies on its line of writing. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** A thing on the paper. */
  public sealed interface Element {}

  /** A line through points, not closed. */
  public record Line(Role role, List<At> points) implements Element {
    public Line {
      points = List.copyOf(points);
    }
  }

  /** An area with openings, by the even-odd rule; no line round it. */
  public record Area(Tone tone, List<List<At>> rings) implements Element {
    public Area {
      rings = rings.stream().map(List::copyOf).toList();
    }
  }

  /** A circle or, with two radii, an ellipse turned by an angle (radians, clockwise on paper). */
  public record Ellipse(
      Role role, At centre, double rx, double ry, double turned, Optional<Tone> fill)
      implements Element {}

  /**
   * A text.
   *
   * @param at the anchor on the base line
   * @param upright false if it is written upwards, readable from the right
   */
  public record Text(TextStyle style, At at, Anchor anchor, boolean upright, String text)
      implements Element {}

  /**
   * A dimension between two points of the drawing, measured along x or along y of the paper.
   *
   * @param from the first measured point
   * @param to the second measured point
   * @param alongX whether it measures along the paper's x
   * @param line where the dimension line lies: its y if it measures along x, else its x
   * @param text the figures, as printed
   * @param measure the length they stand for
   */
  public record Dimension(
      At from, At to, boolean alongX, double line, String text, storyrod.measure.Length measure)
      implements Element {}

  /**
   * Heights that are all measured from one origin, along one line up the paper: superimposed
   * running dimensions (ISO 129-1, from memory).
   *
   * @param line the x of the dimension line
   * @param heights from below, at least one
   */
  public record RunningDimension(At origin, double line, List<Height> heights) implements Element {
    public RunningDimension {
      heights = List.copyOf(heights);
    }

    /**
     * One of them.
     *
     * @param to the measured point
     * @param text the figures, as printed
     * @param measure the length they stand for
     */
    public record Height(At to, String text, storyrod.measure.Length measure) {}
  }

  /**
   * A ringed mark with a leader that ends in a dot inside its part.
   *
   * @param count for hardware how many there are, zero for parts, which have none
   */
  public record Balloon(At centre, At tip, String mark, int count) implements Element {
    /** A part's balloon. */
    public Balloon(At centre, At tip, String mark) {
      this(centre, tip, mark, 0);
    }
  }

  /** A note at the end of a leader that starts with an arrow at what it speaks of. */
  public record Note(At tip, At elbow, At text, Anchor anchor, List<String> lines)
      implements Element {
    public Note {
      lines = List.copyOf(lines);
    }
  }

  /** An arrow that shows a direction: grain (two heads) or insertion (one filled head). */
  public record Arrow(At from, At to, boolean twoHeads) implements Element {}

  /**
   * Elements that belong to one part; SVG makes a group of them that bears what is said here.
   *
   * @param id the only one of its kind in the drawing
   * @param mark the part's mark
   * @param name what the part is called
   */
  public record Group(String id, String mark, String name, List<Element> elements)
      implements Element {
    public Group {
      elements = List.copyOf(elements);
    }

    /** Mark and name as they are read out. */
    public String title() {
      return mark.isEmpty() || mark.equals(name) ? name : mark + " " + name;
    }
  }
}
