package storyrod.build;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.description.Description.ItemKind;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Finds the fronts of drawers: parts of a sub-assembly on slides that are only screwed to one other
 * part of it and carry no slide. They are fixed when the box hangs, so that their gaps can be seen.
 */
public final class Fronts {
  private final Piece piece;

  private Fronts(Piece piece) {
    this.piece = piece;
  }

  /** The full names of all fronts. */
  public static Set<String> of(Piece piece) {
    Fronts fronts = new Fronts(piece);
    Set<String> names = new TreeSet<>();
    piece.parts().stream().filter(fronts::isFront).forEach(part -> names.add(part.name()));
    return names;
  }

  private boolean isFront(Part part) {
    List<Joint> joints =
        piece.joints().stream()
            .filter(each -> each.first().equals(part.name()) || each.second().equals(part.name()))
            .toList();
    return part.assembly().filter(this::hangsOnSlides).isPresent()
        && !isOnSlide(part)
        && !joints.isEmpty()
        && joints.stream()
            .allMatch(
                joint ->
                    isScrewed(joint) && other(joint, part).equals(other(joints.getFirst(), part)))
        && piece.part(other(joints.getFirst(), part)).assembly().equals(part.assembly());
  }

  private static String other(Joint joint, Part part) {
    return joint.first().equals(part.name()) ? joint.second() : joint.first();
  }

  private boolean hangsOnSlides(String assembly) {
    return slides().stream()
        .flatMap(entry -> entry.parts().stream())
        .anyMatch(part -> piece.part(part.value()).assembly().filter(assembly::equals).isPresent());
  }

  private boolean isOnSlide(Part part) {
    return slides().stream()
        .flatMap(entry -> entry.parts().stream())
        .anyMatch(each -> each.value().equals(part.name()));
  }

  private List<HardwareEntry> slides() {
    return piece.description().hardware().stream()
        .filter(entry -> isA(ItemKind.SLIDE, entry.item().value()))
        .toList();
  }

  private boolean isScrewed(Joint joint) {
    return !joint.glued()
        && joint.holding()
        && !joint.fasteners().isEmpty()
        && joint.fasteners().stream().allMatch(each -> isA(ItemKind.WOOD_SCREW, each.item()));
  }

  private boolean isA(ItemKind kind, String item) {
    ItemEntry entry = piece.description().items().get(item);
    return entry != null && entry.kind() == kind;
  }
}
