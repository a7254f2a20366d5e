package storyrod.build;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.ItemKind;
import storyrod.geometry.Box;
import storyrod.geometry.Solid;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The hardware of a piece as bodies where they are, as far as their places and sizes are true. */
record HardwareBodies(Piece piece, List<Body> all) {
  /** An item with its solid where it is, and the least box round that. */
  record Body(PlacedItem item, ItemKind kind, Solid solid, Box bounds) {
    boolean isMounted() {
      return isOfLine(item);
    }

    boolean isScrew() {
      return HardwareBodies.isScrew(kind);
    }

    /** Whether a line of the hardware list brings both: members run in each other. */
    boolean isOfOneLine(Body other) {
      return isMounted() && item.origin().entry().equals(other.item().origin().entry());
    }

    double sharedMm3(Part part) {
      return bounds.overlaps(part.bounds()) ? part.placed().hollowed().sharedVolumeMm3(solid) : 0;
    }

    double sharedMm3(Body other) {
      return bounds.overlaps(other.bounds()) ? solid.sharedVolumeMm3(other.solid()) : 0;
    }
  }

  static HardwareBodies of(Piece piece) {
    return new HardwareBodies(
        piece,
        PlacedHardware.of(piece).stream()
            .filter(item -> isTrue(piece.kind(item.item())))
            .flatMap(item -> body(piece, item).stream())
            .toList());
  }

  private static Optional<Body> body(Piece piece, PlacedItem item) {
    ItemKind kind = piece.kind(item.item());
    Solid whole = item.solid().moved(item.at());
    Solid solid = isOfLine(item) && isScrew(kind) ? inWood(item, whole) : whole;
    return solid.bounds().map(bounds -> new Body(item, kind, solid, bounds));
  }

  private static boolean isOfLine(PlacedItem item) {
    return item.origin().entry().isPresent();
  }

  private static boolean isScrew(ItemKind kind) {
    return kind == ItemKind.WOOD_SCREW || kind == ItemKind.POCKET_SCREW;
  }

  /** A screw without its head, which lies in the metal that it holds. */
  private static Solid inWood(PlacedItem screw, Solid whole) {
    Vector3D face = screw.at().subtract(screw.out().multiply(MountHoles.METAL.toMm()));
    return whole.trimmed(face, screw.out());
  }

  /**
   * Whether it is drawn where and as large as it is. Hinges are let in by hand; the arms of hinges,
   * the breadth of slides under a drawer, catches and straps are of a usual size and place, from
   * memory.
   */
  private static boolean isTrue(ItemKind kind) {
    return switch (kind) {
      case SLIDE, PULL, KNOB, SHELF_PIN, FOOT, LEVELLING_FOOT -> true;
      case WOOD_SCREW, POCKET_SCREW, BRAD, DOWEL, BISCUIT, LOOSE_TENON -> true;
      case TOP_FASTENER, ROTATING_FASTENER, BUTTON, PLUG, WASHER, OTHER -> false;
      case UNDER_SLIDE, CONCEALED_HINGE, BUTT_HINGE, CATCH, ANTI_TIP_STRAP -> false;
    };
  }

  /** The outermost point of a screw in its part, in mm. */
  static Vector3D tip(PlacedItem screw) {
    return screw.at().subtract(screw.out().multiply(screw.deepMm()));
  }
}
