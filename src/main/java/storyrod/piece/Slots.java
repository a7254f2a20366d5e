package storyrod.piece;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/**
 * Equal slots in a row with equal spacing, each long along the row; one slot where the count is 1.
 *
 * @param first the first slot's middle, on the face it is cut from
 * @param along the axis of the row, along which each slot is long
 * @param step the distance from middle to middle; zero for a single slot
 * @param size of each slot
 * @param through whether the slots go right through
 */
public record Slots(
    String term,
    Form form,
    Face from,
    Point first,
    Axis along,
    Length step,
    int count,
    Size size,
    boolean through,
    Optional<String> forWhat,
    Span at)
    implements Cut {

  /** How a slot ends. */
  public enum Form {
    /** As a router bit leaves it: half rounds as wide as the slot, its bottom flat. */
    ROUND_ENDS,
    /** As a disc that is plunged in leaves it: its bottom an arc that comes out at both ends. */
    PLUNGED
  }

  /** Length over all and width at the face, and depth in the middle. */
  public record Size(Length length, Length width, Length depth) {}

  public Length length() {
    return size.length();
  }

  public Length width() {
    return size.width();
  }

  public Length depth() {
    return size.depth();
  }

  /** The middles on the face, in order. */
  public List<Point> centres() {
    return IntStream.range(0, count).mapToObj(i -> first.moved(along, step.times(i))).toList();
  }

  /** The axis of the face across the row. */
  public Axis across() {
    return Axis.other(from.axis(), along);
  }

  /** The least box round one slot. */
  public Box around(Point centre) {
    Length surface = centre.on(from.axis());
    Length bottom = surface.minus(depth().times(from.sign()));
    return new Box(
            new Range(surface, surface), new Range(surface, surface), new Range(surface, surface))
        .with(from.axis(), new Range(surface.min(bottom), surface.max(bottom)))
        .with(along, about(centre.on(along), length()))
        .with(across(), about(centre.on(across()), width()));
  }

  /** The least box round all of them. */
  public Box around() {
    Box one = around(centres().getFirst());
    Box last = around(centres().getLast());
    return one.with(
        along,
        new Range(
            one.on(along).from().min(last.on(along).from()),
            one.on(along).to().max(last.on(along).to())));
  }

  private static Range about(Length middle, Length length) {
    Length low = middle.minus(length.dividedBy(2, RoundingMode.FLOOR));
    return new Range(low, low.plus(length));
  }

  /** The path of one slot's mouth, on the face. */
  public Contour mouth(Point centre) {
    if (form == Form.PLUNGED) {
      return Contour.rectangle(around(centre), from);
    }
    Length radius = width().dividedBy(2, RoundingMode.FLOOR);
    Length half = length().dividedBy(2, RoundingMode.FLOOR);
    Pencil pencil = new Pencil();
    for (int sign : new int[] {1, -1}) {
      Point end = centre.moved(along, half.minus(radius).times(sign));
      pencil.to(end.moved(across(), radius.times(-sign)));
      pencil.arc(centre.moved(along, half.times(sign)), end.moved(across(), radius.times(sign)));
    }
    return new Contour(from.axis(), pencil.closed());
  }

  /** What each slot takes away, its arcs as facets. */
  List<Solid> solids(Fineness fineness) {
    return centres().stream()
        .map(
            centre ->
                form == Form.PLUNGED
                    ? Solid.of(profile(centre), around(centre).on(across()), fineness)
                    : Solid.of(mouth(centre), around(centre).on(from.axis()), fineness))
        .toList();
  }

  /** The arc down to the bottom of a plunged slot, and the chord in the face. */
  private Contour profile(Point centre) {
    Range whole = around(centre).on(along);
    Pencil pencil = new Pencil();
    pencil.to(centre.with(along, whole.from()));
    pencil.arc(
        centre.moved(from.axis(), depth().times(-from.sign())), centre.with(along, whole.to()));
    return new Contour(across(), pencil.closed());
  }

  /** How long a slot a disc of some diameter leaves when it is plunged to a depth. */
  public static Length plungedLength(Length disc, Length depth) {
    double half = StrictMath.sqrt(depth.toMm() * (disc.toMm() - depth.toMm()));
    return Length.nearest(2 * half);
  }
}
