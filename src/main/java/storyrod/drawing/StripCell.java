package storyrod.drawing;

import java.util.List;
import storyrod.drawing.Drawing.Element;

/** What stands in one cell of a strip: a part or a board, as it is worked in a step. */
sealed interface StripCell permits CutPart, BoardFigure, BlankFigure, MillFigure {
  /** Of the part that it shows. */
  String mark();

  /** Of all parts for which it stands, as those of one size. */
  default List<String> marks() {
    return List.of(mark());
  }

  /** What stands below it, line by line. */
  List<String> captions();

  /** How wide it is for its height. */
  double shape();

  /** The height in mm that it fills at a width. */
  double heightMm(double widthMm);

  /** The least height in mm at which it can be made out. */
  double leastMm();

  /** Its elements in a rectangle of the paper. */
  List<Element> in(Bounds cell);
}
