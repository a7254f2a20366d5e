package storyrod.build;

import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;

/** What leads a part, or the tool, straight through a dado or a rabbet, by the part's size. */
public enum Guidance {
  /** An edge that is long enough against the fence. */
  FENCE(""),
  /** A mitre gauge or a crosscut sled: the end is too short to run along a fence. */
  SLED("-across"),
  /** A straightedge clamped across it: the part is too large to be pushed over the saw. */
  ROUTER("-routed");

  /** As wide a part as a mitre gauge carries before the cutter (common practice, from memory). */
  private static final Length WIDEST = Length.mm(300);

  /** A longer part hangs off the gauge and turns (common practice, from memory). */
  private static final Length LONGEST = Length.mm(900);

  private final String suffix;

  Guidance(String suffix) {
    this.suffix = suffix;
  }

  /** What stands behind the trait of a cut that is led so. */
  String suffix() {
    return suffix;
  }

  /** What leads a trench that runs from edge to edge. */
  public static Guidance of(Part part, Cut.Trench trench) {
    Axis across = CutKind.widthAxis(part, trench);
    Length run = part.box().size(Axis.other(trench.from().axis(), across));
    Length beside = part.box().size(across);
    if (!run.isShorterThan(beside)) {
      return FENCE;
    }
    return run.isLongerThan(WIDEST) || beside.isLongerThan(LONGEST) ? ROUTER : SLED;
  }
}
