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
  public Mark {
    parts = List.copyOf(parts);
  }

  public int count() {
    return same + mirrored;
  }
}
