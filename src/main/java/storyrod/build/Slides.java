package storyrod.build;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Where drawer slides go: on one line along the middle of the drawer's side, which is set out on
 * the drawer's side and on the part of the case beside it.
 */
final class Slides {
  private static final Face LOWER = Face.BOTTOM;
  private static final Face FRONT = Face.FRONT;

  private final Piece piece;
  private final HardwareEntry entry;
  private final Set<String> hung;

  private Slides(Piece piece, HardwareEntry entry, Set<String> hung) {
    this.piece = piece;
    this.entry = entry;
    this.hung = hung;
  }

  /**
   * Heights of the line, and how far the front of the drawer's side lies from the case's.
   *
   * @param hung the names of the sub-assemblies that hang loose in the piece
   */
  static List<Setting> of(Piece piece, HardwareEntry entry, Set<String> hung) {
    boolean isSlide =
        Optional.ofNullable(piece.description().items().get(entry.item().value()))
            .filter(item -> item.kind() == ItemKind.SLIDE)
            .isPresent();
    return isSlide ? new Slides(piece, entry, hung).settings() : List.of();
  }

  private List<Setting> settings() {
    List<Setting> settings = new ArrayList<>();
    for (Part side : parts(true)) {
      beside(side).ifPresent(wall -> settings.addAll(pair(side, wall)));
    }
    return settings;
  }

  private List<Part> parts(boolean isHung) {
    return entry.parts().stream()
        .map(name -> piece.part(name.value()))
        .filter(part -> part.assembly().filter(hung::contains).isPresent() == isHung)
        .toList();
  }

  private Optional<Part> beside(Part side) {
    Axis across = side.thickness();
    return parts(false).stream()
        .filter(wall -> wall.thickness() == across)
        .min(Comparator.comparing(wall -> middle(wall, across).minus(middle(side, across)).abs()));
  }

  private static Length middle(Part part, Axis axis) {
    return part.box().on(axis).from().plus(part.box().on(axis).to());
  }

  private List<Setting> pair(Part side, Part wall) {
    Length half = side.box().size(LOWER.axis()).dividedBy(2, RoundingMode.HALF_EVEN);
    Length up = side.box().at(LOWER).plus(half).minus(wall.shoulder().at(LOWER));
    Length back = side.box().at(FRONT).minus(wall.shoulder().at(FRONT));
    List<Setting> settings = new ArrayList<>();
    settings.add(new Setting("slide-line-drawer", shown(side), half));
    settings.add(new Setting("slide-line-case", shown(wall), up));
    if (back.isPositive()) {
      settings.add(new Setting("slide-behind", shown(wall), back));
    } else if (back.isNegative()) {
      settings.add(new Setting("slide-before", shown(wall), back.abs()));
    }
    return settings;
  }

  private Optional<String> shown(Part part) {
    return Optional.of(piece.mark(part.mark()).shown().name());
  }
}
