package storyrod.planset;

/**
 * For whom a copy of a plan set is, and its number, which stand on each of its pages.
 *
 * @param number from 1
 */
public record Stamp(String name, int number) {
  /** So many characters stand on one line under a page, in the narrowest setting. */
  public static final int LONGEST = 80;

  public Stamp {
    if (name.isBlank() || name.codePointCount(0, name.length()) > LONGEST || number < 1) {
      throw new IllegalArgumentException("bug: a stamp for " + name + ", number " + number);
    }
  }
}
