package storyrod.planset;

/**
 * Tells, block after block, where a new page begins: a block that the rest of a page has no room
 * for goes on the next one. The layout itself keeps no block of tables whole.
 */
final class PageBreaks {
  private final double roomMm;
  private double atMm;

  /** Starts on a page that is filled down to a height in mm. */
  PageBreaks(double roomMm, double atMm) {
    this.roomMm = roomMm;
    this.atMm = atMm % roomMm;
  }

  /** How far down the page is filled so far. */
  double atMm() {
    return atMm;
  }

  /**
   * Whether a block begins a page; one higher than a page runs on over more.
   *
   * @param aboveMm the part of its height that falls away at the top of a page
   */
  boolean before(double heightMm, double aboveMm) {
    boolean breaks = atMm > 0 && atMm + heightMm > roomMm;
    atMm = ((breaks ? -aboveMm : atMm) + heightMm) % roomMm;
    return breaks;
  }
}
