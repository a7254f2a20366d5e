package storyrod.build;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Which hardware is fitted on trial before the finish goes on: what hangs doors and drawers, for
 * only then do the gaps show, and an edge that is planed to fit must still be bare.
 */
public final class Trials {
  private final Piece piece;
  private final Nesting nesting;

  public Trials(Piece piece) {
    this.piece = piece;
    this.nesting = Nesting.of(piece);
  }

  /** Whether an item is fitted, taken off for the finish, and put back. */
  public static boolean asksFor(Piece piece, String item) {
    return piece.description().finish().isPresent() && hangs(piece.kind(item));
  }

  private static boolean hangs(ItemKind kind) {
    return switch (kind) {
      case SLIDE, UNDER_SLIDE, CONCEALED_HINGE, BUTT_HINGE -> true;
      case PULL, KNOB, CATCH, ANTI_TIP_STRAP, SHELF_PIN, FOOT, LEVELLING_FOOT, OTHER -> false;
      case WOOD_SCREW, POCKET_SCREW, BRAD, TOP_FASTENER, ROTATING_FASTENER -> false;
      case DOWEL, BISCUIT, LOOSE_TENON, PLUG, WASHER, BUTTON -> false;
    };
  }

  /** The names of all parts of doors and drawers. */
  public Set<String> movable() {
    return piece.description().hardware().stream()
        .map(entry -> entry.item().value())
        .distinct()
        .filter(item -> hangs(piece.kind(item)))
        .flatMap(item -> partsHung(item).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** What an item takes when it is fitted, its screws included. */
  public static List<ItemCount> hardware(Piece piece, String item) {
    return Operations.used(
        piece.description().hardware().stream()
            .filter(entry -> entry.item().value().equals(item))
            .toList());
  }

  /** What an item takes on trial: without the screws that wait until it is fitted for good. */
  public static List<ItemCount> onTrial(Piece piece, String item) {
    List<PlacedItem> waiting =
        PlacedHardware.of(piece).stream()
            .filter(each -> each.origin().waits())
            .filter(
                each ->
                    each.origin().entry().stream()
                        .anyMatch(entry -> entry.item().value().equals(item)))
            .toList();
    return hardware(piece, item).stream()
        .map(each -> new ItemCount(each.item(), each.count() - count(waiting, each.item())))
        .filter(each -> each.count() > 0)
        .toList();
  }

  private static int count(List<PlacedItem> placed, String item) {
    return Math.toIntExact(placed.stream().filter(each -> each.item().equals(item)).count());
  }

  /** The full names of the doors and drawers that an item hangs. */
  public List<String> hung(String item) {
    return piece.description().hardware().stream()
        .filter(entry -> entry.item().value().equals(item))
        .map(HardwareEntry::parts)
        .flatMap(parts -> nesting.hungBy(parts.stream().map(Located::value).toList()).stream())
        .distinct()
        .toList();
  }

  /** The full names of the parts in whose grooves some parts slide, stops included. */
  public List<String> runsIn(List<String> sliding) {
    return piece.joints().stream()
        .filter(joint -> !joint.glued() && sliding.contains(joint.first()))
        .map(Joint::second)
        .distinct()
        .toList();
  }

  /**
   * The full names of all parts of what an item hangs, fronts included; of a lid that slides, its
   * own.
   */
  public List<String> partsHung(String target) {
    List<String> hung = piece.item(target).isPresent() ? hung(target) : List.of(target);
    return hung.stream().flatMap(unit -> nesting.parts(unit).stream()).map(Part::name).toList();
  }
}
