package storyrod.description;

import storyrod.measure.Rational;

/**
 * How sandpaper is sold.
 *
 * @param pack how many sheets of one grit come in a pack
 * @param price of a pack
 */
public record SandpaperEntry(int pack, Rational price) {}
