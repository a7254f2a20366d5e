package storyrod.drawing;

/** A step's picture with the same notes in any room. */
record NotedPicture(int step, Picture picture, Picture.Notes notes) implements PicturedStep {
  @Override
  public double heightMm(double widthMm) {
    return picture.heightMm(notes, widthMm);
  }

  @Override
  public Drawing drawn(Size room) {
    return picture.drawn("step-" + step, notes, room);
  }
}
