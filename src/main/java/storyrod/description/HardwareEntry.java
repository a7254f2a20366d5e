package storyrod.description;

import java.util.List;
import java.util.Optional;

/**
 * Hardware that no joint brings: slides, pulls, pins, feet.
 *
 * @param parts the full names of the parts it is fastened to or serves
 * @param screw the item that holds it, with how many for each
 */
public record HardwareEntry(
    Span at,
    Located<String> item,
    int count,
    List<Located<String>> parts,
    Optional<String> screw,
    int screwsEach,
    Optional<String> say) {
  public HardwareEntry {
    parts = List.copyOf(parts);
  }

  /** The same entry with another number of screws for each. */
  public HardwareEntry withScrewsEach(int other) {
    return new HardwareEntry(at, item, count, parts, screw, other, say);
  }
}
