package storyrod.drawing;

import storyrod.geometry.Lazy;

/**
 * How well a step is seen from one side: at most a point each for its new parts and for their ways.
 * To look at the parts takes by far longer, so that is done only where the ways leave it open.
 */
record Sight(Lazy<Double> parts, double ways) {
  private static final double MOST_OF_PARTS = 1;

  double score() {
    return parts.get() + ways;
  }

  boolean isMoreThan(double least) {
    return MOST_OF_PARTS + ways > least && score() > least;
  }

  boolean isAtLeast(double least) {
    return MOST_OF_PARTS + ways >= least && score() >= least;
  }
}
