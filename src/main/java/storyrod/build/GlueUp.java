package storyrod.build;

/**
 * What the glue of a step asks of the shop.
 *
 * @param clamps in use at once, from the step's start until its glue has set
 * @param clampMinutes from its end until the last of them come off
 * @param curedMinutes from its end until tools may run across its joints; none where it spreads no
 *     glue
 */
public record GlueUp(int clamps, int clampMinutes, int curedMinutes) {
  public static final GlueUp NONE = new GlueUp(0, 0, 0);

  /** Whether it spreads glue: open glue does not wait for the morning. */
  public boolean isSpread() {
    return curedMinutes > 0;
  }

  /** The same, with fasteners in the place of clamps until the next step. */
  GlueUp unclamped() {
    return new GlueUp(0, 0, curedMinutes);
  }
}
