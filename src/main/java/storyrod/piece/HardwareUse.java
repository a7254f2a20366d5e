package storyrod.piece;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;

/**
 * The items of hardware that a piece uses up, those of joints and those that are mounted; what is
 * made in the shop is none of them.
 *
 * @param counts how many of each, in the order of the description's items
 * @param made the marks of what is made, by its item
 */
public record HardwareUse(Map<String, Integer> counts, Map<String, String> made) {
  private static final String LETTER = "H";

  public HardwareUse {
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    made = Collections.unmodifiableMap(new LinkedHashMap<>(made));
  }

  public static HardwareUse of(Piece piece) {
    Map<String, Integer> sums = new LinkedHashMap<>();
    piece.joints().stream()
        .flatMap(joint -> joint.fasteners().stream())
        .forEach(each -> add(sums, each.item(), each.count()));
    piece.description().hardware().forEach(entry -> add(sums, entry));
    Map<String, Integer> ordered = new LinkedHashMap<>();
    piece.description().items().values().stream()
        .map(ItemEntry::name)
        .filter(name -> sums.getOrDefault(name, 0) > 0)
        .filter(name -> piece.made(name).isEmpty())
        .forEach(name -> ordered.put(name, sums.get(name)));
    Map<String, String> made = new LinkedHashMap<>();
    piece.made().forEach(each -> made.put(each.item(), each.mark()));
    return new HardwareUse(ordered, made);
  }

  private static void add(Map<String, Integer> sums, HardwareEntry entry) {
    add(sums, entry.item().value(), entry.count());
    int screws = Math.multiplyExact(entry.count(), entry.screwsEach());
    entry.screw().ifPresent(screw -> add(sums, screw, screws));
  }

  private static void add(Map<String, Integer> sums, String item, int count) {
    sums.merge(item, count, Math::addExact);
  }

  /**
   * The mark of an item in the hardware schedule and in drawings: H1, H2, in the schedule's order;
   * the letter in the cut list of what is made.
   */
  public String mark(String item) {
    if (made.containsKey(item)) {
      return made.get(item);
    }
    int at = List.copyOf(counts.keySet()).indexOf(item);
    if (at < 0) {
      throw new IllegalStateException("bug: no item " + item + " in use");
    }
    return LETTER + (at + 1);
  }
}
