package storyrod.planset;

/**
 * For whom a copy of a plan set is, and its number, which stand on each of its pages.
 *
 * @param number from 1
 */
public record Stamp(String name, int number) {
  public Stamp {
    if (name.isBlank() || number < 1) {
      throw new IllegalArgumentException("bug: a stamp for " + name + ", number " + number);
    }
  }
}
