package storyrod.drawing;

/** A drawing scale 1:n, or n:1 where it enlarges. */
public record Scale(int paper, int real) {
  /** Millimetres on paper for a millimetre of the piece. */
  public double factor() {
    return paper / (double) real;
  }

  @Override
  public String toString() {
    return paper + ":" + real;
  }
}
