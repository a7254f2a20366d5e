package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/**
 * Where the hardware of a piece sits, as simple bodies of its true size: what joints use up, and
 * what is mounted, as far as its kind and the parts it serves tell. Of an item either all of a
 * joint's or a line's are placed, or none.
 */
public final class PlacedHardware {
  private final Piece piece;
  private final HardwareShapes shapes = new HardwareShapes();

  private PlacedHardware(Piece piece) {
    this.piece = piece;
  }

  /** All items that have a place, those of joints first, in the order of the description. */
  public static List<PlacedItem> of(Piece piece) {
    PlacedHardware hardware = new PlacedHardware(piece);
    List<PlacedItem> all = new ArrayList<>();
    piece.joints().forEach(joint -> all.addAll(hardware.of(joint)));
    MountedItems mounted = new MountedItems(piece, Nesting.of(piece), hardware.shapes);
    piece.description().hardware().forEach(entry -> all.addAll(mounted.of(entry)));
    return List.copyOf(all);
  }

  private List<PlacedItem> of(Joint joint) {
    List<PlacedItem> all = new ArrayList<>();
    for (ItemCount each : joint.fasteners()) {
      List<PlacedItem> found =
          piece.item(each.item()).map(item -> of(joint, item, each.count())).orElse(List.of());
      all.addAll(found.size() == each.count() ? found : List.of());
    }
    return all;
  }

  private List<PlacedItem> of(Joint joint, ItemEntry item, int count) {
    boolean holdsTop =
        joint.fasteners().stream().anyMatch(each -> piece.kind(each.item()).isTopFastener());
    if (holdsTop) {
      return new TopFasteners(piece, shapes).of(joint, item);
    }
    return joint.driven().isPresent() && item.kind() != ItemKind.OTHER
        ? new DrivenItems(piece, shapes).of(joint, item, count)
        : new InsertedItems(piece, shapes).of(joint, item);
  }
}
