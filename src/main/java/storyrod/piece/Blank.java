package storyrod.piece;

import storyrod.description.PartEntry;
import storyrod.description.Span;
import storyrod.description.StockEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * A part before anything is cut in it.
 *
 * @param shoulder the box as described, a slanted end where its longest point lies
 * @param box the box with what joints add
 */
public record Blank(
    PartEntry entry,
    StockEntry stock,
    Box shoulder,
    Box box,
    Axis length,
    Axis thickness,
    Pose pose) {
  public String name() {
    return entry.name();
  }

  public Span at() {
    return entry.at();
  }

  /** The box as the description gives it, before any slant moves its ends. */
  Box described() {
    return new Box(entry.x().value(), entry.y().value(), entry.z().value());
  }

  Blank withBox(Box longer) {
    return new Blank(entry, stock, shoulder, longer, length, thickness, pose);
  }

  /** The same with one end of its box and shoulder elsewhere. */
  Blank endingAt(Face end, Length at) {
    Range range = shoulder.on(end.axis());
    Range moved = end.sign() < 0 ? new Range(at, range.to()) : new Range(range.from(), at);
    Box shorter = shoulder.with(end.axis(), moved);
    return new Blank(entry, stock, shorter, shorter, length, thickness, pose);
  }

  public Axis width() {
    return Axis.other(length, thickness);
  }
}
