package storyrod.piece;

import java.util.List;

/**
 * A distinct part with its mark: all parts that are the same to the maker, and their mirror images.
 *
 * @param mark the letter or letters: A to Z, then AA
 * @param title the name for a reader
 * @param shown the part that the drawing shows
 * @param same how many are as shown
 * @param mirrored how many are its mirror image
 * @param parts the full names, those as shown first
 */
public record Mark(
    String mark, String title, Part shown, int same, int mirrored, List<String> parts) {
  /** The alphabet without I and O, which read as figures. */
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  public Mark {
    parts = List.copyOf(parts);
  }

  /** A to Z without I and O, then AA, AB and so on. */
  public static String letters(int index) {
    int base = LETTERS.length();
    String last = LETTERS.substring(index % base, index % base + 1);
    return index < base ? last : letters(index / base - 1) + last;
  }

  public int count() {
    return same + mirrored;
  }
}
