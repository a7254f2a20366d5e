package storyrod.stock;

/**
 * What a free rectangle of a sheet is worth: more than in proportion to its area, so that one large
 * rest beats two small ones.
 */
enum Worth {
  AREA_TO_THREE_HALVES,
  AREA_SQUARED;

  double of(long length, long width) {
    double area = (double) length * width;
    return switch (this) {
      case AREA_TO_THREE_HALVES -> area * Math.sqrt(area);
      case AREA_SQUARED -> area * area;
    };
  }
}
