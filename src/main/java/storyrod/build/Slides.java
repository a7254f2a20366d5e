package storyrod.build;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.description.Description.ItemKind;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Where drawer slides go: on one line along the middle of the drawer's side, which is set out on
 * the drawer's side and on the part of the case beside it.
 */
final class Slides {
  private static final Face LOWER = Face.BOTTOM;
  private static final Face UPPER = Face.TOP;
  private static final Face FRONT = Face.FRONT;

  private final Piece piece;
  private final ItemEntry item;
  private final Nesting nesting;
  private final List<String> served;

  private Slides(Piece piece, Nesting nesting, HardwareEntry entry) {
    this.piece = piece;
    this.item = piece.item(entry.item().value()).orElseThrow();
    this.nesting = nesting;
    this.served = entry.parts().stream().map(Located::value).toList();
  }

  /** Heights of the line, and how far the front of the drawer's side lies from the case's. */
  static List<Setting> of(Piece piece, HardwareEntry entry) {
    if (!piece.kind(entry.item().value()).isSlide()) {
      return List.of();
    }
    Slides slides = new Slides(piece, Nesting.of(piece), entry);
    return slides.beside().stream()
        .flatMap(each -> slides.pair(each.side(), each.wall()).stream())
        .toList();
  }

  /** A drawer's side and the part of the case beside it. */
  record Beside(Part side, Part wall) {}

  /** What the slides of an entry are screwed to. */
  static List<Beside> beside(Piece piece, Nesting nesting, HardwareEntry entry) {
    return new Slides(piece, nesting, entry).beside();
  }

  private List<Beside> beside() {
    return parts(true).stream()
        .flatMap(side -> beside(side).map(wall -> new Beside(side, wall)).stream())
        .toList();
  }

  private List<Part> parts(boolean isHung) {
    return served.stream()
        .filter(part -> nesting.isHung(part, served) == isHung)
        .map(piece::part)
        .toList();
  }

  private Optional<Part> beside(Part side) {
    Axis across = side.thickness();
    return parts(false).stream()
        .filter(wall -> wall.thickness() == across)
        .filter(wall -> wall.box().z().overlaps(side.box().z()))
        .min(Comparator.comparing(wall -> middle(wall, across).minus(middle(side, across)).abs()));
  }

  private static Length middle(Part part, Axis axis) {
    return part.box().on(axis).from().plus(part.box().on(axis).to());
  }

  private List<Setting> pair(Part side, Part wall) {
    List<Setting> settings = new ArrayList<>(heights(side, wall));
    Optional<Part> strip = strip(side, wall);
    if (strip.isPresent()) {
      settings.add(behind(side, wall, strip.get()));
      return settings;
    }
    Length back = side.box().at(FRONT).minus(wall.shoulder().at(FRONT));
    if (back.isPositive()) {
      settings.add(new Setting("slide-behind", shown(wall), back));
    } else if (back.isNegative()) {
      settings.add(new Setting("slide-before", shown(wall), back.abs()));
    }
    return settings;
  }

  /** From the front that is seen; the edge below it is a seam by now. */
  private Setting behind(Part side, Part wall, Part strip) {
    Length front = side.box().at(FRONT);
    boolean isAtSeam = front.equals(wall.shoulder().at(FRONT));
    return new Setting(
        isAtSeam ? "slide-seam" : "slide-behind-face",
        shown(strip),
        front.minus(strip.box().at(FRONT)));
  }

  /** What is glued over the front edge of a wall beside a drawer, and reaches back past no side. */
  private Optional<Part> strip(Part side, Part wall) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(wall.name()) || joint.second().equals(wall.name()))
        .map(joint -> joint.first().equals(wall.name()) ? joint.second() : joint.first())
        .map(piece::part)
        .filter(part -> part.box().at(FRONT.opposite()).equals(wall.shoulder().at(FRONT)))
        .filter(part -> part.box().z().overlaps(side.box().z()))
        .filter(part -> part.box().at(FRONT).isShorterThan(side.box().at(FRONT)))
        .findFirst();
  }

  private List<Setting> heights(Part side, Part wall) {
    Optional<Part> floor = floor(side, wall);
    Length from = floor.map(part -> part.box().at(UPPER)).orElse(wall.shoulder().at(LOWER));
    Length low = side.box().at(LOWER).minus(from);
    String where = floor.map(part -> "floor." + part.mark()).orElse("case");
    if (item.kind() == ItemKind.UNDER_SLIDE) {
      Length under = item.sizes().bottomClearance().orElse(Length.ZERO);
      return List.of(new Setting("slide-under-" + where, shown(wall), low.minus(under)));
    }
    Length half = side.box().size(LOWER.axis()).dividedBy(2, RoundingMode.HALF_EVEN);
    return List.of(
        new Setting("slide-line-drawer", shown(side), half),
        new Setting("slide-line-" + where, shown(wall), low.plus(half)));
  }

  /** The part under a drawer on which a rule can be stood against the wall, if they are joined. */
  private Optional<Part> floor(Part side, Part wall) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(wall.name()) || joint.second().equals(wall.name()))
        .map(joint -> joint.first().equals(wall.name()) ? joint.second() : joint.first())
        .map(piece::part)
        .filter(part -> part.thickness() == UPPER.axis())
        .filter(part -> !side.box().at(LOWER).isShorterThan(part.box().at(UPPER)))
        .filter(part -> Stream.of(Axis.X, Axis.Y).allMatch(axis -> isUnder(part, side, axis)))
        .max(Comparator.comparing(part -> part.box().at(UPPER)));
  }

  private static boolean isUnder(Part part, Part side, Axis axis) {
    return part.box().on(axis).overlaps(side.box().on(axis));
  }

  private Optional<String> shown(Part part) {
    return Optional.of(piece.mark(part.mark()).shown().name());
  }
}
