package storyrod.stock;

import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** In which order parts are placed: the awkward ones first, by different measures of awkward. */
enum PartOrder {
  AREA,
  LONGER_SIDE,
  SHORTER_SIDE,
  LENGTH,
  WIDTH,
  PERIMETER;

  /** All parts, the most awkward first, equal sizes together. */
  List<Integer> sorted(Enlarged sizes) {
    return IntStream.range(0, sizes.size())
        .boxed()
        .sorted(
            byMost(part -> measure(sizes, part))
                .thenComparing(byMost(part -> sizes.length(part, false)))
                .thenComparing(byMost(part -> sizes.width(part, false))))
        .toList();
  }

  private static Comparator<Integer> byMost(IntToDoubleFunction measure) {
    return Comparator.comparingDouble(part -> -measure.applyAsDouble(part));
  }

  /** Sorts some parts by this measure, disturbed a little by chance. */
  void shuffle(List<Integer> parts, Enlarged sizes, Chance chance) {
    double[] disturbed = new double[sizes.size()];
    for (int part : parts) {
      disturbed[part] = measure(sizes, part) * (0.6 + 0.8 * chance.part());
    }
    parts.sort(byMost(part -> disturbed[part]));
  }

  private double measure(Enlarged sizes, int part) {
    long length = sizes.length(part, false);
    long width = sizes.width(part, false);
    return switch (this) {
      case AREA -> (double) length * width;
      case LONGER_SIDE -> Math.max(length, width);
      case SHORTER_SIDE -> Math.min(length, width);
      case LENGTH -> length;
      case WIDTH -> width;
      case PERIMETER -> length + width;
    };
  }
}
