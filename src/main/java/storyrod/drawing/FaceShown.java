package storyrod.drawing;

import storyrod.geometry.Face;
import storyrod.piece.Mark;

/** Which face of a part its drawing and its template show. */
public final class FaceShown {
  private FaceShown() {}

  /** The face, in the frame of the piece. */
  public static Face of(Mark mark) {
    return FlatPart.of(mark.shown()).shown();
  }
}
