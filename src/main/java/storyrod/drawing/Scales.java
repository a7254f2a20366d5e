package storyrod.drawing;

import java.util.List;
import java.util.stream.IntStream;
import storyrod.measure.Unit;

/**
 * The scales a drawing may have, largest first: reductions of ISO 5455, and for inches those of the
 * architect's and engineer's scales of US practice.
 */
final class Scales {
  private static final List<Scale> ISO = reduced(1, 2, 5, 10, 20, 50, 100);

  /** 3 in to the foot is 1:4, 1 1/2 in 1:8, 1 in 1:12, 3/4 in 1:16. */
  private static final List<Scale> ISO_AND_US = reduced(1, 2, 4, 5, 8, 10, 12, 16, 20, 50, 100);

  /** 1/2 in to the foot is 1:24, 3/8 in 1:32: too small for a joint, enough for a sheet. */
  private static final List<Scale> OF_SHEETS =
      reduced(1, 2, 4, 5, 8, 10, 12, 16, 20, 24, 32, 50, 100);

  private Scales() {}

  private static List<Scale> reduced(int... real) {
    return IntStream.of(real).mapToObj(each -> new Scale(1, each)).toList();
  }

  /** The scales of a layout of a sheet, all of whose sizes are written beside it. */
  static List<Scale> forLayouts(Unit unit) {
    return switch (unit) {
      case INCH -> OF_SHEETS;
      case MM -> ISO;
    };
  }

  static List<Scale> in(Unit unit) {
    return switch (unit) {
      case INCH -> ISO_AND_US;
      case MM -> ISO;
    };
  }
}
