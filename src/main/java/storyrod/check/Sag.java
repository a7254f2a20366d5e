package storyrod.check;

import storyrod.description.Located;
import storyrod.measure.Rational;
import storyrod.piece.Part;
import storyrod.wood.Beam;

/**
 * How far a part bends under its load and its own weight, in mm.
 *
 * @param load in kg, as it is described
 * @param span the longest stretch between two supports
 * @param bends at once
 * @param limit what would pass
 */
public record Sag(Part shelf, Located<Rational> load, double span, double bends, double limit) {
  /** Once the load has lain on it for long. */
  public double inTime() {
    return bends * Beam.CREEP;
  }

  boolean isTooMuch() {
    return bends > limit;
  }
}
