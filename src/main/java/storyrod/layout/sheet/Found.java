package storyrod.layout.sheet;

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
}
