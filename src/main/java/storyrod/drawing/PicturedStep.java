package storyrod.drawing;

/** The picture of a step before its room is known. */
sealed interface PicturedStep permits StepPicture, MountPicture {
  /** The number of the step. */
  int step();

  /** The height in mm that the picture fills where only its width is given. */
  double heightMm(double widthMm);

  /** The picture, as large as a room allows. */
  Drawing drawn(Size room);
}
