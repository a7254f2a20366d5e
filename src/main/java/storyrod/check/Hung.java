package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * A drawer or a door and the hardware that hangs it.
 *
 * @param unit its name: that of a sub-assembly or of a part
 */
record Hung(String unit, List<Part> parts, HardwareEntry by) {
  static List<Hung> doors(Piece piece) {
    return hung(piece, ItemKind::isHinge).stream().filter(Hung::isUpright).toList();
  }

  static List<Hung> drawers(Piece piece) {
    return hung(piece, ItemKind::isSlide);
  }

  private static List<Hung> hung(Piece piece, Predicate<ItemKind> which) {
    Nesting nesting = Nesting.of(piece);
    Map<String, Hung> hung = new LinkedHashMap<>();
    for (HardwareEntry entry : piece.description().hardware()) {
      if (which.test(piece.kind(entry.item().value()))) {
        List<String> served = entry.parts().stream().map(Located::value).toList();
        nesting
            .hungBy(served)
            .forEach(unit -> hung.putIfAbsent(unit, new Hung(unit, nesting.parts(unit), entry)));
      }
    }
    return new ArrayList<>(hung.values());
  }

  /** The box round it where it stands in the piece. */
  Box box() {
    return parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
  }

  boolean has(Part part) {
    return parts.contains(part);
  }

  /** Whether it closes the front as a door does; a lid does not. */
  private boolean isUpright() {
    Box box = box();
    return box.size(Axis.Y).isShorterThan(box.size(Axis.Z))
        && box.size(Axis.Y).isShorterThan(box.size(Axis.X));
  }
}
