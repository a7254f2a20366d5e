package storyrod.measure;

/** A unit in which a project is written and printed. */
public enum Unit {
  INCH("inch", Length.TICKS_PER_INCH),
  MM("mm", Length.TICKS_PER_MM);

  private final String word;
  private final long ticks;

  Unit(String word, long ticks) {
    this.word = word;
    this.ticks = ticks;
  }

  /** The unit's name as a description and a drawing write it. */
  public String word() {
    return word;
  }

  /** One of this unit as a length. */
  public Length one() {
    return new Length(ticks);
  }
}
