package storyrod.layout.sheet;

/** Numbers that look like chance and are the same for the same seed (xorshift, Marsaglia 2003). */
final class Chance {
  private long state;

  Chance(long seed) {
    // Zero would stay zero for ever.
    state = seed * 0x9E3779B97F4A7C15L | 1;
  }

  private long next() {
    state ^= state << 13;
    state ^= state >>> 7;
    state ^= state << 17;
    return state;
  }

  /** A whole number from 0 up to but not including a bound. */
  int below(int bound) {
    return (int) ((next() >>> 33) * bound >>> 31);
  }

  /** True once in so many times. */
  boolean onceIn(int times) {
    return below(times) == 0;
  }

  /** A number from 0 up to but not including 1. */
  double part() {
    return (next() >>> 11) * 0x1.0p-53;
  }
}
