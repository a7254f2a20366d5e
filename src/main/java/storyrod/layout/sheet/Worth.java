package storyrod.layout.sheet;

/**
 * What a free rectangle is worth: more than in proportion to its area, so that one large rest beats
 * two small ones.
 */
final class Worth {
  private Worth() {}

  static double of(double area) {
    return area * Math.sqrt(area);
  }
}
