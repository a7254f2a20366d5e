package storyrod.build;

import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
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
public final class Slides {
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

  /**
   * How the two members of a slide are set out on one side of a drawer.
   *
   * @param floor on what a rule stands beside the wall; without it the wall's lower end counts
   * @param onSide how far the line lies above the lower edge of the drawer's side
   * @param onWall how far it lies above the floor, or the lower end of the wall
   * @param front the part from whose front the case member is set back
   * @param behind how far its front end lies behind that; before it where this is negative
   * @param seam whether the wall begins there, behind what is glued over its edge
   */
  public record Row(
      Part side,
      Part wall,
      Optional<Part> floor,
      Length onSide,
      Length onWall,
      Part front,
      Length behind,
      boolean seam) {
    /** The same from the wall's own ends, for one that still lies on the bench. */
    public Row onBench() {
      Length down = floor.map(part -> part.box().at(UPPER)).orElse(wall.shoulder().at(LOWER));
      Length up = onWall.plus(down).minus(wall.box().at(LOWER));
      Length behindEdge = side.box().at(FRONT).minus(wall.box().at(FRONT));
      return new Row(side, wall, Optional.empty(), onSide, up, wall, behindEdge, false);
    }
  }

  /** A row for each side of each drawer that an entry's slides carry; none for other hardware. */
  public static List<Row> of(Piece piece, HardwareEntry entry) {
    if (!piece.kind(entry.item().value()).isSlide()) {
      return List.of();
    }
    Slides slides = new Slides(piece, Nesting.of(piece), entry);
    return slides.beside().stream().map(slides::row).toList();
  }

  /** The rows that a step sets out in the case; none where it puts back what was on trial. */
  public static List<Row> setOutIn(Piece piece, Step step) {
    return step.operations().stream()
        .filter(operation -> isSetOut(piece, operation))
        .flatMap(operation -> Traits.mounted(piece, operation))
        .flatMap(entry -> of(piece, entry).stream())
        .distinct()
        .toList();
  }

  private static boolean isSetOut(Piece piece, Operation operation) {
    return operation.verb() == Verb.TRIAL_FIT
        || operation.verb() == Verb.MOUNT && !Trials.asksFor(piece, operation.target());
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

  private Row row(Beside beside) {
    Part side = beside.side();
    Part wall = beside.wall();
    Optional<Part> floor = floor(side, wall);
    Length from = floor.map(part -> part.box().at(UPPER)).orElse(wall.shoulder().at(LOWER));
    Length low = side.box().at(LOWER).minus(from);
    Length up = up(side);
    Optional<Part> strip = strip(side, wall);
    Length front = side.box().at(FRONT);
    return new Row(
        side,
        wall,
        floor,
        up.max(Length.ZERO),
        low.plus(up),
        strip.orElse(wall),
        front.minus(strip.map(Part::box).orElse(wall.shoulder()).at(FRONT)),
        strip.isPresent() && front.equals(wall.shoulder().at(FRONT)));
  }

  /** From the lower edge of a drawer's side up to the line; down to the runner under a drawer. */
  private Length up(Part side) {
    return item.kind() == ItemKind.UNDER_SLIDE
        ? item.sizes().bottomClearance().orElse(Length.ZERO).negated()
        : side.box().size(LOWER.axis()).dividedBy(2, RoundingMode.HALF_EVEN);
  }

  /**
   * What lies over the front edge of a wall at the height of a drawer, and hides it from a rule.
   */
  private Optional<Part> strip(Part side, Part wall) {
    return piece.parts().stream()
        .filter(part -> !part.pose().isTurned())
        .filter(part -> nesting.looseUnit(part.name()).isEmpty())
        .filter(part -> part.box().at(FRONT.opposite()).equals(wall.shoulder().at(FRONT)))
        .filter(part -> part.box().x().overlaps(wall.box().x()))
        .filter(part -> part.box().z().contains(side.box().z().middle()))
        .filter(part -> part.box().at(FRONT).isShorterThan(side.box().at(FRONT)))
        .findFirst();
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
}
