package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slots;

/** Solid wood that is held fast across its grain by something that does not move with it. */
final class CrossGrain implements Check {
  private static final Set<ItemKind> RIGID =
      Set.of(ItemKind.WOOD_SCREW, ItemKind.POCKET_SCREW, ItemKind.BRAD);

  /** A part shorter than this along the axis keeps nothing apart. */
  private static final Length LEAST_STIFF = Length.mm(50);

  @Override
  public String code() {
    return "cross-grain";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Solid wood that is glued, screwed or nailed across its grain to what does not move with"
            + " it, over more than the shop's `widest-fixed` (5 in if not said), cracks or bends;"
            + " also where two joints hold it to two parts that one part along them keeps apart.",
        "The width is common practice; the movement told is that of the Wood Handbook, eq. 13-2 and"
            + " 13-3, for the room under `climate`.",
        "Turned parts are left out. A chain of more than one part between two joints is not"
            + " followed. A panel glued into its grooves is a finding of `glued-panel`.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Held> held =
        piece.joints().stream()
            .filter(joint -> isRigid(piece, joint) && !GluedPanel.tells(piece, joint))
            .flatMap(joint -> held(piece, joint))
            .toList();
    List<Diagnostic> found = new ArrayList<>();
    Set<String> told = new TreeSet<>();
    for (Held each : held) {
      if (!Seasons.moves(each.other(), each.axis())
          && check(piece, each, each.at(), each.other(), found)) {
        told.add(each.part().name());
      }
    }
    apart(piece, held, told, found);
    return found;
  }

  /** The widest stretch in mm over which a part is held to what does not move with it; else 0. */
  static double widest(Piece piece, Part part) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()) || joint.second().equals(part.name()))
        .filter(joint -> isRigid(piece, joint))
        .flatMap(joint -> held(piece, joint))
        .filter(held -> held.part().equals(part) && !Seasons.moves(held.other(), held.axis()))
        .mapToDouble(held -> held.at().length().toMm())
        .max()
        .orElse(0);
  }

  /** Whether glue, screws or nails hold a part to any other, along or across its grain. */
  static boolean isRigidlyJoined(Piece piece, Part part) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()) || joint.second().equals(part.name()))
        .anyMatch(joint -> isRigid(piece, joint));
  }

  /** Whether top fasteners hold a part. */
  static boolean isFastened(Piece piece, Part part) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()))
        .flatMap(joint -> joint.fasteners().stream())
        .anyMatch(each -> piece.kind(each.item()).isTopFastener());
  }

  /** Glue, screws and nails hold fast; whatever else a top is fastened with lets it move. */
  private static boolean isRigid(Piece piece, Joint joint) {
    List<ItemKind> kinds = joint.fasteners().stream().map(each -> piece.kind(each.item())).toList();
    return joint.glued()
        || kinds.stream().anyMatch(RIGID::contains)
            && kinds.stream().noneMatch(ItemKind::isTopFastener)
            && !isSlotted(piece, joint);
  }

  private static boolean isSlotted(Piece piece, Joint joint) {
    return Stream.of(joint.first(), joint.second())
        .flatMap(part -> piece.part(part).cuts(Slots.class).stream())
        .anyMatch(slots -> slots.at().equals(joint.at()));
  }

  /** A part, held by a joint to another over a range of an axis across its grain. */
  private record Held(Part part, Axis axis, Range at, Part other, Joint joint) {}

  private static Stream<Held> held(Piece piece, Joint joint) {
    Part one = piece.part(joint.first());
    Part two = piece.part(joint.second());
    if (one.pose().isTurned() || two.pose().isTurned()) {
      return Stream.empty();
    }
    return Stream.of(Axis.values())
        .filter(axis -> axis != joint.firstFace().axis())
        .flatMap(
            axis -> {
              Range at = at(joint, axis, one, two);
              return Stream.of(held(joint, one, two, axis, at), held(joint, two, one, axis, at));
            })
        .flatMap(Optional::stream);
  }

  /**
   * Where a joint holds along an axis: all that is glued, else from the first screw to the last.
   */
  private static Range at(Joint joint, Axis axis, Part one, Part two) {
    Range contact = joint.contact().on(axis);
    List<Length> screws =
        Stream.of(one, two)
            .flatMap(part -> part.cuts().stream())
            .filter(cut -> cut.at().equals(joint.at()))
            .flatMap(cut -> centres(cut).stream())
            .filter(centre -> lies(centre, joint))
            .map(centre -> centre.on(axis))
            .sorted()
            .toList();
    boolean isEndGrain = joint.firstFace().axis() == one.length();
    return screws.isEmpty() || joint.glued() && !isEndGrain
        ? contact
        : new Range(screws.getFirst(), screws.getLast());
  }

  /**
   * Joints of repeated parts share a line; only screws where the two parts touch are this one's.
   */
  private static boolean lies(Point centre, Joint joint) {
    return Stream.of(Axis.values())
        .filter(axis -> axis != joint.firstFace().axis())
        .allMatch(axis -> joint.contact().on(axis).contains(centre.on(axis)));
  }

  private static List<Point> centres(Cut cut) {
    return switch (cut) {
      case Cut.Holes holes -> holes.centres();
      case PocketHoles holes -> holes.centres();
      case Slots slots -> slots.centres();
      default -> List.of();
    };
  }

  private static Optional<Held> held(Joint joint, Part part, Part other, Axis axis, Range at) {
    return Seasons.moves(part, axis) && axis == part.width()
        ? Optional.of(new Held(part, axis, at, other, joint))
        : Optional.empty();
  }

  /** Two joints far apart on one part, to two others that a third one along them keeps apart. */
  private void apart(Piece piece, List<Held> held, Set<String> told, List<Diagnostic> found) {
    for (Held one : held) {
      for (Held two : held) {
        if (one.part().equals(two.part())
            && one.axis() == two.axis()
            && one.at().from().isShorterThan(two.at().from())
            && !told.contains(one.part().name())) {
          stiff(piece, one, two)
              .filter(stiff -> check(piece, one, one.at().around(two.at()), stiff, found))
              .ifPresent(stiff -> told.add(one.part().name()));
        }
      }
    }
  }

  /** What keeps two parts apart along an axis: one of the two, or a third that both are held to. */
  private static Optional<Part> stiff(Piece piece, Held one, Held two) {
    return piece.parts().stream()
        .filter(part -> !part.equals(one.part()) && !Seasons.moves(part, one.axis()))
        .filter(part -> !part.pose().isTurned())
        .filter(part -> part.box().size(one.axis()).isLongerThan(LEAST_STIFF))
        .filter(part -> isJoined(piece, part, one.other()) && isJoined(piece, part, two.other()))
        .findFirst();
  }

  private static boolean isJoined(Piece piece, Part one, Part two) {
    return one.equals(two)
        || piece.joints().stream()
            .filter(Joint::holding)
            .anyMatch(
                joint ->
                    joint.first().equals(one.name()) && joint.second().equals(two.name())
                        || joint.first().equals(two.name()) && joint.second().equals(one.name()));
  }

  private boolean check(Piece piece, Held held, Range over, Part stiff, List<Diagnostic> found) {
    Length limit = piece.description().shop().widestFixed();
    if (!over.length().isLongerThan(limit)) {
      return false;
    }
    Seasons seasons = new Seasons(piece);
    OptionalDouble change = seasons.wholeYear(held.part(), over.length());
    String moves =
        change.isPresent()
            ? ", over which it moves %s (%s)"
                .formatted(seasons.print(change.getAsDouble()), seasons.span())
            : "";
    found.add(
        Diagnostic.warning(
                code(),
                held.joint().at(),
                "%s is held across its grain by %s over %s%s"
                    .formatted(
                        held.part().name(),
                        stiff.name(),
                        piece.description().format().formatWithUnit(over.length()),
                        moves))
            .also(held.part().at(), held.part().name() + " is defined here")
            .hint(
                "let it move: fasten it in the middle only, by top fasteners, in a groove without"
                    + " glue, or make it of a sheet"));
    return true;
  }
}
