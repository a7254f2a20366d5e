package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Element;

/**
 * A small figure in a grid: what a step does to one of many parts, a sheet that it saws, or an
 * offcut on which it tries a finish.
 */
sealed interface Tile permits PartTile, SheetTile, CoatsTile {
  /** Of the part that it shows; empty of what is no part. */
  default Optional<String> partMark() {
    return Optional.empty();
  }

  /** How wide it is for its height. */
  double shape();

  /** The least height in mm at which its marks can be read. */
  double leastMm();

  /** The height in mm beyond which more is no gain. */
  double mostMm();

  /** How many such stand side by side at most. */
  int inARow();

  /** Its elements in a rectangle of the paper that has room for it. */
  List<Element> in(Bounds room);

  /** What can stand below it, the first that has room. */
  List<String> captions();
}
