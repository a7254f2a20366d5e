package storyrod.wood;

/** How much wood grows (positive) or shrinks (negative) across the grain. */
public final class Movement {
  /** Between these moisture contents, in per cent, a coefficient holds. */
  private static final double LOW = 6;

  private static final double HIGH = 14;

  /** The moisture content in per cent above which wood does not swell any more. */
  private static final double FIBRE_SATURATION = 30;

  private Movement() {}

  /**
   * The change of a width, in its own unit: by coefficient where it holds, else by shrinkage.
   *
   * @param from moisture content in per cent
   * @param to moisture content in per cent
   */
  public static double change(Species species, Sawn sawn, double width, double from, double to) {
    boolean holds = Math.min(from, to) >= LOW && Math.max(from, to) <= HIGH;
    return holds
        ? byCoefficient(width, sawn.of(species.coefficient()), from, to)
        : byShrinkage(width, sawn.of(species.shrinkage()), from, to);
  }

  /**
   * Wood Handbook eq. 13-2, for moisture contents from 6 to 14 %.
   *
   * @param coefficient change as a ratio for each per cent of moisture
   */
  public static double byCoefficient(double width, double coefficient, double from, double to) {
    return width * coefficient * (to - from);
  }

  /**
   * Wood Handbook eq. 13-3 (from memory), for moisture contents up to fibre saturation.
   *
   * @param shrinkage in per cent from green to ovendry
   */
  public static double byShrinkage(double width, double shrinkage, double from, double to) {
    double low = Math.min(from, FIBRE_SATURATION);
    double high = Math.min(to, FIBRE_SATURATION);
    return width * (high - low) / (100 * FIBRE_SATURATION / shrinkage - FIBRE_SATURATION + low);
  }
}
