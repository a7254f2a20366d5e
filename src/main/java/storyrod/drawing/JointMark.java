package storyrod.drawing;

import storyrod.drawing.Drawing.At;

/**
 * A part's mark beside the picture of a joint.
 *
 * @param tip the point of the part at which it points
 */
record JointMark(String mark, At tip) {
  /** The leader to the tip from where the mark stands. */
  Paper.Stretch leader(At centre) {
    return new Paper.Stretch(centre, tip);
  }
}
