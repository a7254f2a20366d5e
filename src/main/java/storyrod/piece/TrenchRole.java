package storyrod.piece;

/**
 * What a trench is there for, whatever the grain makes of its word: a groove for a panel that runs
 * across the grain is called a dado, and still is a groove to whatever has to know what lies in it.
 */
public enum TrenchRole {
  /** Takes the end of a part as a shelf's; right across, or stopped. */
  HOUSING,
  /** Takes the edge of a panel, a tongue or a fastener, and runs through. */
  GROOVE,
  /** The same, which ends where its panel ends. */
  STOPPED_GROOVE,
  /** Any other, which its term tells: a mortise, a rabbet, a notch. */
  OTHER;

  /** Whether a cut is a trench of this role. */
  public boolean isOf(Cut cut) {
    return cut instanceof Cut.Trench trench && trench.role() == this;
  }

  /** The same trench in this role. */
  public Cut.Trench given(Cut.Trench trench) {
    return new Cut.Trench(
        trench.term(),
        this,
        trench.from(),
        trench.removed(),
        trench.depth(),
        trench.forWhat(),
        trench.alsoFor(),
        trench.at());
  }
}
