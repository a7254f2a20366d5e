package storyrod.planset;

/**
 * The measures of steps on their pages, in mm; they are those of the style sheet, {@code
 * templates/style/style.ftl}.
 */
final class StepMeasures {
  /** Above and below a picture. */
  static final double AROUND_PICTURE_MM = 5;

  /** Above and below the strip of a step that cuts. */
  static final double AROUND_STRIP_MM = 2.5;

  /** Below a step with a picture; at the end of a page it may be cut short. */
  static final double BELOW_MM = 6.5;

  /** Below a step without a picture. */
  static final double SMALL_BELOW_MM = 4.5;

  /** The heading of a stage. */
  static final double STAGE_MM = 10.5;

  /** The width of the column in which lists stand. */
  static final double SIDE_MM = 54;

  /** The heading of a list and the space below it. */
  static final double BLOCK_MM = 6.6;

  private StepMeasures() {}
}
