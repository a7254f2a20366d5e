package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Angle;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/**
 * A row of dovetails: the tails left on the end of one part, or the sockets for them in the end of
 * another, between which its pins are left.
 *
 * @param from the end that is cut
 * @param wide the face towards which the tails widen
 * @param across the axis along which they stand in a row
 * @param end the part's whole width, as long as the tails and as thick as the part that has them
 * @param tails in order along the axis
 * @param slope the run for a rise of one: 7 for 1:7
 */
public record Dovetails(
    String term,
    Face from,
    Face wide,
    Axis across,
    Box end,
    List<Tail> tails,
    Rational slope,
    Optional<String> forWhat,
    Span at)
    implements Slanted {
  public static final String TAILS = "tails";
  public static final String PINS = "pins";
  public static final String HALF_BLIND = "half-blind pins";

  public Dovetails {
    tails = List.copyOf(tails);
  }

  /** A tail, or what is cut away between two, by its width at the baseline and at the end. */
  public record Tail(Range narrow, Range wide) {}

  /** Whether the tails stay and what is between them falls; else it is the other way round. */
  public boolean isTails() {
    return from == wide;
  }

  /** What stands after "1:" for the slope. */
  public String slopeWord() {
    return slope.isWhole()
        ? slope.toString()
        : String.format(java.util.Locale.ROOT, "%.1f", slope.toDouble());
  }

  /** How long the tails are, and so how deep their sockets from the face. */
  public Length length() {
    return end.size(wide.axis());
  }

  /** How far the baseline lies from the end that is cut. */
  public Length baseline() {
    return end.size(from.axis());
  }

  /** How much a tail widens at each side over its length. */
  public Length widening() {
    return tails.getFirst().narrow().from().minus(tails.getFirst().wide().from());
  }

  /** Between the side of a tail and the length of its part. */
  public Angle angle() {
    return Angle.of(widening(), length());
  }

  /** The pins at their thin side, the half pins at both edges among them. */
  public List<Length> pins() {
    List<Length> pins = new ArrayList<>();
    Length before = end.on(across).from();
    for (Tail tail : tails) {
      pins.add(tail.wide().from().minus(before));
      before = tail.wide().to();
    }
    pins.add(end.on(across).to().minus(before));
    return pins;
  }

  /** What is cut away. */
  public List<Tail> gone() {
    return isTails() ? between() : tails;
  }

  private List<Tail> between() {
    List<Tail> gaps = new ArrayList<>();
    Range whole = end.on(across);
    Tail before = new Tail(start(whole.from()), start(whole.from()));
    for (Tail tail : tails) {
      gaps.add(gap(before, tail));
      before = tail;
    }
    gaps.add(gap(before, new Tail(start(whole.to()), start(whole.to()))));
    return gaps;
  }

  private static Range start(Length at) {
    return new Range(at, at);
  }

  private static Tail gap(Tail one, Tail next) {
    return new Tail(
        new Range(one.narrow().to(), next.narrow().from()),
        new Range(one.wide().to(), next.wide().from()));
  }

  /** All that is taken, exactly. */
  public List<Solid> solids() {
    return gone().stream().map(this::solid).toList();
  }

  private Solid solid(Tail tail) {
    Axis normal = Axis.other(across, wide.axis());
    Point base = end.low().with(wide.axis(), end.at(wide.opposite()));
    Point far = end.low().with(wide.axis(), end.at(wide));
    Contour contour =
        Contour.of(
            normal,
            List.of(
                base.with(across, tail.narrow().from()),
                far.with(across, tail.wide().from()),
                far.with(across, tail.wide().to()),
                base.with(across, tail.narrow().to())));
    return Solid.of(contour, end.on(normal), Fineness.USUAL);
  }

  /**
   * The same in two steps for each slope, which fill each other where tails and pins meet: enough
   * to tell which way the parts can move.
   */
  @Override
  public List<Box> boxes() {
    Axis run = wide.axis();
    Range whole = end.on(run);
    Range low = new Range(whole.from(), whole.middle());
    Range high = new Range(whole.middle(), whole.to());
    List<Box> boxes = new ArrayList<>();
    for (Tail tail : gone()) {
      Box base = end.with(run, wide.sign() > 0 ? low : high);
      Box far = end.with(run, wide.sign() > 0 ? high : low);
      boxes.add(base.with(across, tail.narrow()));
      boxes.add(far.with(across, tail.wide()));
    }
    return boxes;
  }
}
