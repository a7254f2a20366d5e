package storyrod.description;

import java.math.RoundingMode;
import storyrod.measure.Length;

/**
 * What the shop's machines and habits are; each has a usual value if not given.
 *
 * @param kerf the saw blade's cut
 * @param edgeTrim what is cut off each edge of a sheet first
 * @param extraLength what a rough part is longer than the finished one
 * @param extraWidth what a rough part up to four feet long is wider than the finished one
 * @param wastePercent what is bought beyond the rough parts, in per cent
 * @param widestFixed how wide solid wood may be held across its grain
 * @param hoursPerDay how long the maker works in a day
 */
public record ShopEntry(
    Length kerf,
    Length edgeTrim,
    Length extraLength,
    Length extraWidth,
    Length planerWidth,
    int wastePercent,
    int clamps,
    Length widestFixed,
    ShopMachines machines,
    int hoursPerDay) {
  /** How long a maker works in a day: 8 hours, common practice. */
  static final int HOURS_PER_DAY = 8;

  /** How wide solid wood may be held across its grain: 5 in, common practice. */
  static final Length WIDEST_FIXED = Length.inches(5);

  private static final Length FOUR_FEET = Length.inches(48);

  /** A shop of whose other machines nothing is known. */
  public ShopEntry(
      Length kerf,
      Length edgeTrim,
      Length extraLength,
      Length extraWidth,
      Length planerWidth,
      int wastePercent,
      int clamps) {
    this(
        kerf,
        edgeTrim,
        extraLength,
        extraWidth,
        planerWidth,
        wastePercent,
        clamps,
        WIDEST_FIXED,
        ShopMachines.USUAL,
        HOURS_PER_DAY);
  }

  /**
   * What a rough part of a finished length is wider: the longer a board, the more its crook takes
   * when an edge is jointed. Half as much again for each four feet after the first four (common
   * practice, from memory).
   */
  public Length extraWidth(Length length) {
    long further = Math.max(0, Math.ceilDiv(length.ticks(), FOUR_FEET.ticks()) - 1);
    return extraWidth.plus(extraWidth.times(further).dividedBy(2, RoundingMode.CEILING));
  }
}
