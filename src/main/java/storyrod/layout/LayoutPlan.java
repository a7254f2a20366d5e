package storyrod.layout;

import java.util.List;
import storyrod.layout.LayoutJob.Area;
import storyrod.measure.Length;

/**
 * Layouts that give the blanks of a job.
 *
 * @param pieces in the order in which they are sawn
 * @param missing blanks that the stock does not give, because none takes them or there is too
 *     little; as a rule none
 * @param value what they take: pieces or cost, as the job asks
 * @param lowerBound the least that any layout of all the blanks which fit can take; where the stock
 *     does not give them, the least were there more of it
 */
public record LayoutPlan(List<Sawn> pieces, List<Missing> missing, long value, long lowerBound) {
  public LayoutPlan {
    pieces = List.copyOf(pieces);
    missing = List.copyOf(missing);
  }

  /** A plan that gives every blank. */
  public LayoutPlan(List<Sawn> pieces, long value, long lowerBound) {
    this(pieces, List.of(), value, lowerBound);
  }

  /** Whether every blank is there and no layout takes less. */
  public boolean proved() {
    return missing.isEmpty() && value == lowerBound;
  }

  /**
   * Equal blanks that are not there.
   *
   * @param blank its place in the job's blanks
   * @param fits whether some stock is large enough, were there more of it
   */
  public record Missing(int blank, int count, boolean fits) {}

  /**
   * One piece of stock and what the saw does to it.
   *
   * @param stock its place in the job's stock
   * @param cuts in the order in which they are made
   * @param offcuts what is left and worth keeping, the largest first
   */
  public record Sawn(int stock, List<Spot> spots, List<SawCut> cuts, List<Area> offcuts) {
    public Sawn {
      spots = List.copyOf(spots);
      cuts = List.copyOf(cuts);
      offcuts = List.copyOf(offcuts);
    }
  }

  /**
   * Where a part comes to lie.
   *
   * @param blank its place in the job's blanks
   * @param turned if its own length runs across the stock's
   */
  public record Spot(int blank, Area area, boolean turned) {}

  /**
   * A cut right across the piece that is left, one kerf wide.
   *
   * @param alongLength whether the saw runs along the stock's length
   * @param at the side of the kerf nearer the near corner, as x or y; below zero where a trim is
   *     narrower than the blade
   * @param from where the cut starts along its own direction
   * @param to where it ends
   * @param fence the distance from the piece's own edge to the kerf, for the saw's fence: from the
   *     near edge, but from the far edge where a near edge is trimmed
   */
  public record SawCut(
      int number, boolean alongLength, Length at, Length from, Length to, Length fence) {}
}
