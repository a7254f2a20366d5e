package storyrod.cli.lists;

import storyrod.layout.LayoutJob.Least;
import storyrod.measure.Unit;

/**
 * What the lists themselves do not say.
 *
 * @param unit of lengths that are written without one
 * @param turn whether parts without grain may be turned
 */
public record ListOptions(Unit unit, boolean turn, Least least) {}
