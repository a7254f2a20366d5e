package storyrod.description;

import storyrod.measure.Length;

/**
 * What the shop's machines and habits are; each has a usual value if not given.
 *
 * @param kerf the saw blade's cut
 * @param edgeTrim what is cut off each edge of a sheet first
 * @param extraLength what a rough part is longer than the finished one
 * @param extraWidth what a rough part is wider than the finished one
 * @param wastePercent what is bought beyond the rough parts, in per cent
 */
public record ShopEntry(
    Length kerf,
    Length edgeTrim,
    Length extraLength,
    Length extraWidth,
    Length planerWidth,
    int wastePercent,
    int clamps) {}
