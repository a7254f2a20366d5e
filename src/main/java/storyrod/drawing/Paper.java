package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Text;

/** What stands on the paper so far, and whether one more thing finds room there. */
final class Paper {
  /** The least distance of a text from another and from a line, in mm. */
  private static final double CLEAR = 0.35;

  private final List<Element> elements = new ArrayList<>();
  private final List<PlacedText> texts = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();
  private final Boxes textBoxes = new Boxes();
  private final Boxes stretchBoxes = new Boxes();

  /** What was taken after each element. */
  private final List<Bounds> taken = new ArrayList<>();

  /** A straight stretch of a line. */
  record Stretch(At from, At to) {
    Bounds bounds() {
      return Bounds.of(from, to);
    }

    boolean crosses(Stretch other) {
      return areNear(from.x(), to.x(), other.from.x(), other.to.x())
          && areNear(from.y(), to.y(), other.from.y(), other.to.y())
          && meets(other);
    }

    /** Whether two ranges have a point in common; most stretches are told apart by this. */
    private static boolean areNear(double a, double b, double c, double d) {
      return Math.max(a, b) >= Math.min(c, d) && Math.max(c, d) >= Math.min(a, b);
    }

    private boolean meets(Stretch other) {
      return java.awt.geom.Line2D.linesIntersect(
          from.x(),
          from.y(),
          to.x(),
          to.y(),
          other.from.x(),
          other.from.y(),
          other.to.x(),
          other.to.y());
    }
  }

  /** A state to come back to. */
  record State(int elements, int texts, int stretches) {}

  /** With nothing on the paper. */
  static final State NOTHING = new State(0, 0, 0);

  State state() {
    return new State(elements.size(), texts.size(), stretches.size());
  }

  void backTo(State state) {
    elements.subList(state.elements, elements.size()).clear();
    taken.subList(state.elements, taken.size()).clear();
    texts.subList(state.texts, texts.size()).clear();
    stretches.subList(state.stretches, stretches.size()).clear();
    textBoxes.keep(state.texts);
    stretchBoxes.keep(state.stretches);
  }

  List<Element> elements() {
    return elements;
  }

  /** What came after a state. */
  List<Element> elementsSince(State state) {
    return List.copyOf(elements.subList(state.elements, elements.size()));
  }

  /** The dimension lines, without extension lines, of what stands so far. */
  List<Stretch> dimensionLines() {
    return elements.stream().flatMap(each -> DimensionLayout.line(each).stream()).toList();
  }

  /** The dimensions of what stands so far; what shows the grain is as little to be crossed. */
  DrawnDimensions dimensions() {
    return new DrawnDimensions(
        Stream.concat(dimensionLines().stream(), grain()).toList(),
        elements.stream()
            .filter(Drawing.Dimension.class::isInstance)
            .flatMap(each -> DimensionLayout.of((Drawing.Dimension) each).extensions().stream())
            .toList());
  }

  private Stream<Stretch> grain() {
    return elements.stream()
        .filter(each -> each instanceof Drawing.Arrow arrow && arrow.twoHeads())
        .map(Drawing.Arrow.class::cast)
        .map(arrow -> new Stretch(arrow.from(), arrow.to()));
  }

  void add(Element element) {
    Bounds bounds = bounds();
    elements.add(element);
    for (Element simple : Lowering.simple(element)) {
      if (simple instanceof Text text) {
        bounds = bounds.with(add(PlacedText.of(text)));
      }
      for (Stretch stretch : stretches(simple)) {
        bounds = bounds.with(add(stretch));
      }
    }
    taken.add(bounds);
  }

  private Bounds add(PlacedText text) {
    texts.add(text);
    textBoxes.add(Bounds.of(text));
    return Bounds.of(text);
  }

  private Bounds add(Stretch stretch) {
    Bounds bounds = stretch.bounds();
    stretches.add(stretch);
    stretchBoxes.add(bounds);
    return bounds;
  }

  /** Whether neither a text of the element nor one that stands already would be touched. */
  boolean hasRoomFor(Element element) {
    for (Element simple : Lowering.simple(element)) {
      boolean free =
          simple instanceof Text text
              ? isFree(PlacedText.of(text))
              : stretches(simple).stream().allMatch(this::missesTexts);
      if (!free) {
        return false;
      }
    }
    return true;
  }

  boolean isFree(PlacedText text) {
    return layer(NOTHING, state()).isFree(text);
  }

  boolean missesTexts(PlacedText room) {
    return layer(NOTHING, state()).missesTexts(room);
  }

  boolean missesTexts(Stretch line) {
    return layer(NOTHING, state()).missesTexts(line);
  }

  /** How many lines a stretch crosses. */
  int crossed(Stretch line) {
    return layer(NOTHING, state()).crossed(line);
  }

  /** What came onto the paper from one state to another. */
  Layer layer(State from, State to) {
    return new Layer(
        new Boxes.Span(from.texts, to.texts), new Boxes.Span(from.stretches, to.stretches));
  }

  /** Some of what stands on the paper, and whether one more thing finds room among it. */
  final class Layer {
    private final Boxes.Span text;
    private final Boxes.Span lines;

    private Layer(Boxes.Span text, Boxes.Span lines) {
      this.text = text;
      this.lines = lines;
    }

    /** What stands on the paper now and came later. */
    Layer above() {
      return new Layer(
          new Boxes.Span(text.to(), texts.size()), new Boxes.Span(lines.to(), stretches.size()));
    }

    /** The lines of it that a half-line may meet. */
    List<Stretch> linesOn(HalfLine way) {
      return way.mayMeet(stretches.subList(lines.from(), lines.to()));
    }

    /** Its lines that a half-line lies along. */
    List<Stretch> linesAlong(HalfLine way) {
      return stretches.subList(lines.from(), lines.to()).stream().filter(way::runsAlong).toList();
    }

    /** The room of its texts that a half-line may meet. */
    List<PlacedText> textsOn(HalfLine way) {
      return texts.subList(text.from(), text.to()).stream()
          .map(each -> each.widened(CLEAR))
          .filter(way::mayMeet)
          .toList();
    }

    /** Points along its lines and round its texts. */
    Strewn strewn() {
      return new Strewn(
          bounds(),
          stretches.subList(lines.from(), lines.to()),
          texts.subList(text.from(), text.to()));
    }

    boolean isFree(PlacedText text) {
      PlacedText room = text.widened(CLEAR);
      return missesTexts(text)
          && !stretchBoxes.anyTouching(Bounds.of(room), lines, i -> room.meets(stretches.get(i)));
    }

    boolean missesTexts(PlacedText room) {
      PlacedText clear = room.widened(CLEAR);
      return !textBoxes.anyTouching(Bounds.of(clear), text, i -> clear.overlaps(texts.get(i)));
    }

    boolean missesTexts(Stretch line) {
      Bounds near = line.bounds().widened(CLEAR);
      return !textBoxes.anyTouching(near, text, i -> texts.get(i).widened(CLEAR).meets(line));
    }

    /** How many lines a stretch crosses. */
    int crossed(Stretch line) {
      int[] crossed = {0};
      stretchBoxes.anyTouching(
          line.bounds(),
          lines,
          i -> {
            crossed[0] += line.crosses(stretches.get(i)) ? 1 : 0;
            return false;
          });
      return crossed[0];
    }
  }

  /** The stretches of a simple element's lines and outlines. */
  static List<Stretch> stretches(Element simple) {
    return switch (simple) {
      case Line line -> chain(line.points());
      case Area area ->
          area.tone() == Drawing.Tone.INK || area.tone() == Drawing.Tone.HATCH
              ? area.rings().stream().flatMap(ring -> chain(closed(ring)).stream()).toList()
              : List.of();
      case Ellipse e -> chain(closed(round(e)));
      default -> List.of();
    };
  }

  private static List<At> round(Ellipse e) {
    double cos = StrictMath.cos(e.turned());
    double sin = StrictMath.sin(e.turned());
    List<At> ring = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double x = e.rx() * StrictMath.cos(i * Math.PI / 4);
      double y = e.ry() * StrictMath.sin(i * Math.PI / 4);
      ring.add(e.centre().plus(x * cos - y * sin, x * sin + y * cos));
    }
    return ring;
  }

  private static List<At> closed(List<At> ring) {
    List<At> closed = new ArrayList<>(ring);
    closed.add(ring.getFirst());
    return closed;
  }

  private static List<Stretch> chain(List<At> points) {
    List<Stretch> chain = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      chain.add(new Stretch(points.get(i), points.get(i + 1)));
    }
    return chain;
  }

  Bounds bounds() {
    return taken.isEmpty() ? Bounds.NONE : taken.getLast();
  }

  /** The bounds of what reaches into a strip from {@code from} to {@code to}. */
  Bounds boundsWithin(boolean stripOfX, double from, double to) {
    Bounds bounds = Bounds.NONE;
    for (PlacedText text : texts) {
      bounds = bounds.withIn(stripOfX, from, to, Bounds.of(text));
    }
    for (Stretch line : stretches) {
      bounds = bounds.withIn(stripOfX, from, to, line.bounds());
    }
    return bounds;
  }
}
