package storyrod.measure;

import java.util.Optional;
import java.util.stream.Stream;

/** In which units a plan set prints lengths. */
public enum Units {
  /** That in which the description is written. */
  OWN("own"),
  INCH("inch"),
  MM("mm"),
  /** The description's own, and the other in square brackets behind it. */
  BOTH("both");

  private final String word;

  Units(String word) {
    this.word = word;
  }

  /** The word by which they are chosen. */
  public String word() {
    return word;
  }

  /** Those that a word names; the description's own are what holds without a choice. */
  public static Optional<Units> named(String word) {
    return Stream.of(INCH, MM, BOTH).filter(each -> each.word.equals(word)).findFirst();
  }
}
