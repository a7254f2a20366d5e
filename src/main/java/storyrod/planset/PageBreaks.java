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
   * The same for a block that others follow: it begins a page too where the page before it is half
   * full, and only then all of them stand on one.
   *
   * @param allMm the height of the block and of those that follow
   */
  boolean before(double heightMm, double aboveMm, double allMm) {
    boolean areApart = atMm + allMm > roomMm && allMm - aboveMm <= roomMm;
    if (atMm > roomMm / 2 && areApart) {
      atMm = heightMm - aboveMm;
      return true;
    }
    return before(heightMm, aboveMm);
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
