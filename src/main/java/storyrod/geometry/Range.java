package storyrod.geometry;

import java.math.RoundingMode;
import storyrod.measure.Length;

/** A stretch of one axis; the end is never before the start. */
public record Range(Length from, Length to) {
  public Range {
    if (to.isShorterThan(from)) {
      throw new IllegalArgumentException("bug: a range from " + from + " back to " + to);
    }
  }

  public Length length() {
    return to.minus(from);
  }

  /** Half way between its ends, to the lower tick. */
  public Length middle() {
    return from.plus(length().dividedBy(2, RoundingMode.FLOOR));
  }

  /** The end on one side: {@code to} for +1, {@code from} for -1. */
  public Length end(int sign) {
    return sign < 0 ? from : to;
  }

  /** The same range with one end moved outwards. */
  public Range extended(int sign, Length by) {
    return sign < 0 ? new Range(from.minus(by), to) : new Range(from, to.plus(by));
  }

  /** The same range further on, or back where the length is negative. */
  public Range moved(Length by) {
    return new Range(from.plus(by), to.plus(by));
  }

  public boolean overlaps(Range other) {
    return from.isShorterThan(other.to) && other.from.isShorterThan(to);
  }

  public boolean contains(Range other) {
    return !other.from.isShorterThan(from) && !other.to.isLongerThan(to);
  }

  public boolean contains(Length at) {
    return !at.isShorterThan(from) && !at.isLongerThan(to);
  }

  /** From the first start to the last end of two ranges. */
  public Range around(Range other) {
    return new Range(from.min(other.from), to.max(other.to));
  }

  /** What two ranges share; they must at least touch. */
  public Range shared(Range other) {
    return new Range(from.max(other.from), to.min(other.to));
  }
}
