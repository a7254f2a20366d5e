package storyrod.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.piece.Joint;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Finds the fronts of drawers: units of a sub-assembly that hangs on slides which are only screwed
 * to one other part of it and carry no slide. They are fixed when the box hangs, so that their gaps
 * can be seen.
 */
public final class Fronts {
  private final Piece piece;
  private final Nesting nesting;
  private final Set<String> onSlides = new TreeSet<>();

  private Fronts(Piece piece, Nesting nesting) {
    this.piece = piece;
    this.nesting = nesting;
    piece.description().hardware().stream()
        .filter(entry -> piece.kind(entry.item().value()).isSlide())
        .flatMap(entry -> entry.parts().stream())
        .map(Located::value)
        .forEach(onSlides::add);
  }

  /** The full names of all fronts, which are parts or sub-assemblies. */
  public static Set<String> of(Piece piece) {
    return byDrawer(piece, Nesting.of(piece)).keySet();
  }

  /** For each front, the drawer that it is the front of; both by full name. */
  public static Map<String, String> drawers(Piece piece) {
    return byDrawer(piece, Nesting.of(piece));
  }

  static Map<String, String> byDrawer(Piece piece, Nesting nesting) {
    Fronts fronts = new Fronts(piece, nesting);
    Map<String, String> drawers = new LinkedHashMap<>();
    nesting.loose().stream()
        .filter(unit -> nesting.isAssembly(unit) && fronts.isOnSlide(unit))
        .forEach(
            drawer ->
                nesting.units().get(drawer).stream()
                    .filter(fronts::isFront)
                    .forEach(front -> drawers.put(front, drawer)));
    return drawers;
  }

  private boolean isFront(String unit) {
    List<Joint> joints =
        piece.joints().stream()
            .filter(each -> isOf(each.first(), unit) != isOf(each.second(), unit))
            .toList();
    return !isOnSlide(unit)
        && !joints.isEmpty()
        && joints.stream().allMatch(this::isScrewed)
        && joints.stream().map(joint -> other(joint, unit)).distinct().count() == 1;
  }

  private boolean isOf(String part, String unit) {
    return nesting.isIn(part, unit);
  }

  private String other(Joint joint, String unit) {
    return isOf(joint.first(), unit) ? joint.second() : joint.first();
  }

  private boolean isOnSlide(String unit) {
    return nesting.parts(unit).stream().map(Part::name).anyMatch(onSlides::contains);
  }

  private boolean isScrewed(Joint joint) {
    return !joint.glued()
        && joint.holding()
        && !joint.fasteners().isEmpty()
        && joint.fasteners().stream()
            .allMatch(each -> piece.kind(each.item()) == ItemKind.WOOD_SCREW);
  }
}
