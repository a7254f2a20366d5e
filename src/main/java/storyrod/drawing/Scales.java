package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import storyrod.measure.Unit;

/** The scales a part may be drawn to, largest first: ISO 5455, with those of US practice. */
final class Scales {
  private static final List<Scale> ISO =
      List.of(1, 2, 5, 10, 20, 50, 100).stream().map(real -> new Scale(1, real)).toList();
  private static final List<Scale> ISO_AND_US =
      List.of(1, 2, 4, 5, 8, 10, 12, 16, 20, 50, 100).stream()
          .map(real -> new Scale(1, real))
          .toList();

  /** Between 1:10 and 1:50, for pictures from which nothing is measured. */
  private static final List<Scale> BETWEEN =
      List.of(12, 15, 16, 25, 30, 40).stream().map(real -> new Scale(1, real)).toList();

  private Scales() {}

  /** The scales of a layout of a sheet, all of whose sizes are written beside it. */
  static List<Scale> forLayouts(Unit unit) {
    return Stream.concat(in(unit).stream(), BETWEEN.stream())
        .distinct()
        .sorted(Comparator.comparingInt(Scale::real))
        .toList();
  }

  static List<Scale> in(Unit unit) {
    return switch (unit) {
      case INCH -> ISO_AND_US;
      case MM -> ISO;
    };
  }
}
