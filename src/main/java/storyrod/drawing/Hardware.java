package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.description.ItemEntry;
import storyrod.piece.HardwareUse;
import storyrod.piece.Piece;

/**
 * An item of hardware to be drawn.
 *
 * @param id of its group: the item's name and which of its bodies it is
 * @param mark that of the hardware schedule
 * @param title the item's
 */
record Hardware(PlacedItem placed, String id, String mark, String title) {

  /** All hardware of a piece that has a place. */
  static List<Hardware> of(Piece piece) {
    HardwareUse use = HardwareUse.of(piece);
    Map<String, Integer> numbers = new LinkedHashMap<>();
    List<Hardware> all = new ArrayList<>();
    for (PlacedItem placed : PlacedHardware.of(piece)) {
      String name = placed.item();
      String id = "hardware-" + name.replace('.', '-') + "-" + numbers.merge(name, 1, Integer::sum);
      String title = piece.item(name).map(ItemEntry::title).orElse(name);
      all.add(new Hardware(placed, id, use.mark(name), title));
    }
    return List.copyOf(all);
  }

  /** Pulls, slides, hinges and the like, without the screws that hold them. */
  static List<Hardware> mountedOn(Piece piece) {
    return of(piece).stream().filter(Hardware::isMounted).toList();
  }

  /** Whether it is on by a line of the list, itself and no screw of it. */
  boolean isMounted() {
    return placed.origin().entry().filter(e -> e.item().value().equals(placed.item())).isPresent();
  }

  /** Its kind and its place. */
  List<String> atPlace() {
    return List.of(placed.item(), place());
  }

  /** The part into which it goes; of a pair, all that it serves. */
  private String place() {
    return placed.origin().each() > 1 ? String.join(" ", placed.origin().parts()) : placed.host();
  }

  /** How many items some bodies make: two members on the case are one pair of slides. */
  static int count(List<Hardware> bodies) {
    PlacedItem first = bodies.getFirst().placed();
    long alike =
        bodies.stream()
            .filter(each -> each.makeup().sort() == first.origin().makeup().sort())
            .count();
    return (int) alike / first.origin().each();
  }

  private PlacedItem.Makeup makeup() {
    return placed.origin().makeup();
  }
}
