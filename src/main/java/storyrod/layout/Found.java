package storyrod.layout;

import java.util.Arrays;
import java.util.List;

/**
 * Sheets laid out; nothing changes them any more.
 *
 * @param out how many parts of each type found no place
 * @param value what the sheets take
 */
record Found(List<Laid> sheets, int[] out, long value) {
  /** A piece of stock of a kind, by its place in the kinds, with its tree. */
  record Laid(int kind, CutTree tree) {}

  static final Found NOTHING = new Found(List.of(), new int[0], Long.MAX_VALUE);

  boolean isComplete() {
    return value < Long.MAX_VALUE && Arrays.stream(out).allMatch(each -> each == 0);
  }

  private long areaOut(Enlarged sizes) {
    long area = 0;
    for (int i = 0; i < out.length; i++) {
      area += out[i] * sizes.types.get(i).area();
    }
    return area;
  }

  /** Whether this has less left out, or takes less and leaves no more out. */
  boolean isBetterThan(Found other, Enlarged sizes) {
    if (value == Long.MAX_VALUE || other.value == Long.MAX_VALUE) {
      return value < other.value;
    }
    long less = other.areaOut(sizes) - areaOut(sizes);
    return less > 0 || less == 0 && value < other.value;
  }
}
