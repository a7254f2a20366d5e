package storyrod.description;

import storyrod.measure.Rational;

/**
 * What a formula gives.
 *
 * @param amount for a length its ticks, which need not be whole
 */
record Value(Rational amount, Kind kind) {
  /** What a value can be used as. */
  enum Kind {
    /** Digits without a unit: a plain number, or a length in the project's unit, as needed. */
    BARE,
    /** A count or a ratio, never a length. */
    NUMBER,
    LENGTH,
    /** What a condition gives; its amount is 1 where it holds and 0 where it does not. */
    TRUTH
  }

  static Value bare(Rational amount) {
    return new Value(amount, Kind.BARE);
  }

  static Value length(Rational ticks) {
    return new Value(ticks, Kind.LENGTH);
  }

  static Value truth(boolean holds) {
    return new Value(holds ? Rational.ONE : Rational.ZERO, Kind.TRUTH);
  }

  boolean holds() {
    return kind == Kind.TRUTH && amount.signum() != 0;
  }

  boolean isLength() {
    return kind == Kind.LENGTH;
  }
}
