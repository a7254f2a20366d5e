package storyrod.drawing;

/** Room for a drawing on paper, in mm. */
public record Size(double widthMm, double heightMm) {
  public Size {
    if (!(widthMm > 0 && heightMm > 0)) {
      throw new IllegalArgumentException("bug: no room " + widthMm + " x " + heightMm);
    }
  }
}
