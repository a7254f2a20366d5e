package storyrod.piece;

import storyrod.description.Description.PartEntry;
import storyrod.description.Description.StockEntry;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;

/**
 * A part before anything is cut in it.
 *
 * @param shoulder the box as described
 * @param box the box with what joints add
 */
public record Blank(
    PartEntry entry, StockEntry stock, Box shoulder, Box box, Axis length, Axis thickness) {
  public String name() {
    return entry.name();
  }

  public Span at() {
    return entry.at();
  }

  Blank withBox(Box longer) {
    return new Blank(entry, stock, shoulder, longer, length, thickness);
  }
}
