package storyrod.drawing;

import storyrod.drawing.Drawing.Group;

/** What is enlarged beside the parts of a strip: a cut with its figures, or how ends lie. */
sealed interface CutFigure permits CutProfile, EdgeProfile, EndView {
  /** What it takes on the paper, with its figures. */
  Size size();

  /** At the right of a room, in the middle of its height. */
  Group in(Size room);
}
