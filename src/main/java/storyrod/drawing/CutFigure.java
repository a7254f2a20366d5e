package storyrod.drawing;

import storyrod.drawing.Drawing.Group;

/** What a step cuts, enlarged beside the parts, with the figures to which the tool is set. */
sealed interface CutFigure permits CutProfile, EdgeProfile {
  /** What it takes on the paper, with its figures. */
  Size size();

  /** At the right of a room, in the middle of its height. */
  Group in(Size room);
}
