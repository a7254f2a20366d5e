package storyrod.drawing;

import java.util.List;
import storyrod.drawing.Drawing.Element;

/** A small figure in a grid: what a step does to one of many parts, or a sheet that it saws. */
sealed interface Tile permits MarkTile, SandTile, SheetTile {
  /** How wide it is for its height. */
  double shape();

  /** Its elements in a rectangle of the paper that has room for it. */
  List<Element> in(Bounds room);

  /** What can stand below it, the first that has room. */
  List<String> captions();
}
