package storyrod.wood;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A shelf as a beam: an upright rectangle of one material, with or without a strip of another along
 * its front, flush at the top.
 *
 * @param modulus of elasticity, in MPa
 * @param depth from front to back, in mm
 * @param thickness in mm
 * @param edging the strip, or one without any depth
 */
public record Beam(double modulus, double depth, double thickness, Strip edging) {
  /** What long load adds to the first deflection of solid wood: half (common practice). */
  public static final double CREEP = 1.5;

  /** At so many places a beam under several loads is looked at: it is flat where it bends most. */
  private static final int PLACES = 200;

  /** A strip along the front: its modulus in MPa, its depth and its height in mm. */
  public record Strip(double modulus, double depth, double height) {
    public static final Strip NONE = new Strip(1, 0, 0);
  }

  /** How its ends are held, with the deflection of an even load in wL⁴/EI. */
  public enum Ends {
    SIMPLE(5.0 / 384),
    FIXED(1.0 / 384),
    /** One of two equal spans in one piece. */
    TWO_SPANS(1 / 184.6);

    private final double factor;

    Ends(double factor) {
      this.factor = factor;
    }
  }

  public Beam(double modulus, double depth, double thickness) {
    this(modulus, depth, thickness, Strip.NONE);
  }

  /** The second moment of area in mm⁴, the strip's width turned into the shelf's own material. */
  public double secondMoment() {
    double strip = edging.depth() * edging.modulus() / modulus;
    double area = depth * thickness + strip * edging.height();
    double axis =
        (depth * thickness * thickness + strip * edging.height() * edging.height()) / 2 / area;
    return about(axis, depth, thickness) + about(axis, strip, edging.height());
  }

  private static double about(double axis, double wide, double high) {
    double off = axis - high / 2;
    return wide * high * high * high / 12 + wide * high * off * off;
  }

  /**
   * The deflection in mm in the middle, at once and without creep: beam theory, as in any handbook
   * of structures and in Wood Handbook ch. 9.
   *
   * @param loadPerMetre the even load in N/m, which is N/mm times 1000
   */
  public double deflection(double spanMm, double loadPerMetre, Ends ends) {
    double load = loadPerMetre / 1000;
    return ends.factor * load * Math.pow(spanMm, 4) / (modulus * secondMoment());
  }

  /**
   * The deflection in mm at one place under a load at another, at once and without creep, its ends
   * lying on their supports: beam theory, as in any handbook of structures.
   *
   * @param loadMm from the left support to the load
   * @param force in N
   * @param atMm from the left support to where the beam is looked at
   */
  public double deflectionUnder(double spanMm, double loadMm, double force, double atMm) {
    boolean isLeft = atMm <= loadMm;
    double beyond = isLeft ? spanMm - loadMm : loadMm;
    double at = isLeft ? atMm : spanMm - atMm;
    double bent = force * beyond * at * (spanMm * spanMm - beyond * beyond - at * at);
    return bent / (6 * modulus * secondMoment() * spanMm);
  }

  /** A load at one place, in mm from the left support and in N. */
  public record PointLoad(double atMm, double force) {}

  /** The largest deflection in mm under several loads, its ends lying on their supports. */
  public double deflection(double spanMm, List<PointLoad> loads) {
    return IntStream.range(1, PLACES)
        .mapToDouble(place -> deflectionAt(spanMm * place / PLACES, spanMm, loads))
        .max()
        .orElseThrow();
  }

  private double deflectionAt(double atMm, double spanMm, List<PointLoad> loads) {
    return loads.stream()
        .mapToDouble(load -> deflectionUnder(spanMm, load.atMm, load.force, atMm))
        .sum();
  }
}
