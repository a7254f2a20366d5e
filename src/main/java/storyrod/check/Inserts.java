package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slots;

/**
 * A row of dowels, biscuits or loose tenons of one joint, with its holes or slots in both parts.
 *
 * @param along the axis of the row
 * @param centres the middles of the holes or slots of the first part
 */
record Inserts(
    Joint joint, ItemEntry item, Part first, Part second, Axis along, List<Point> centres) {

  /** All rows of one kind in a piece. */
  static Stream<Inserts> in(Piece piece, ItemKind kind) {
    return piece.joints().stream()
        .flatMap(
            joint ->
                joint.fasteners().stream()
                    .map(each -> piece.description().items().get(each.item()))
                    .filter(item -> item.kind() == kind)
                    .flatMap(item -> of(piece, joint, item).stream()));
  }

  private static Optional<Inserts> of(Piece piece, Joint joint, ItemEntry item) {
    return piece.part(joint.first()).cuts().stream()
        .filter(cut -> cut.at().equals(joint.at()) && cut.isFor(item.name()))
        .filter(cut -> cut.from() == joint.firstFace())
        .flatMap(cut -> row(piece, joint, item, cut).stream())
        .findFirst();
  }

  private static Optional<Inserts> row(Piece piece, Joint joint, ItemEntry item, Cut cut) {
    Part first = piece.part(joint.first());
    Part second = piece.part(joint.second());
    if (cut instanceof Cut.Holes holes) {
      return Optional.of(new Inserts(joint, item, first, second, holes.along(), holes.centres()));
    }
    return cut instanceof Slots slots
        ? Optional.of(new Inserts(joint, item, first, second, slots.along(), slots.centres()))
        : Optional.empty();
  }

  /** How thick the wood is in whose middle the row lies: the narrow side of the contact. */
  Length thickness() {
    return joint.contact().size(Axis.other(along, joint.entry().axis()));
  }

  /** From middle to middle; nothing for a single one. */
  Optional<Length> step() {
    return centres.size() < 2
        ? Optional.empty()
        : Optional.of(centres.get(1).on(along).minus(centres.get(0).on(along)).abs());
  }

  /** From an end of the contact to the nearest middle. */
  Length fromEnd() {
    Range whole = joint.contact().on(along);
    return centres.stream()
        .map(at -> at.on(along).minus(whole.from()).min(whole.to().minus(at.on(along))))
        .reduce(Length::min)
        .orElseThrow();
  }

  /** How long each slot is along the row; nothing for round holes. */
  Length slotLength() {
    return cuts(first)
        .map(cut -> cut instanceof Slots slots ? slots.length() : Length.ZERO)
        .findFirst()
        .orElse(Length.ZERO);
  }

  /** How deep the hole or slot in one of the two parts is. */
  Length depth(Part part) {
    return cuts(part)
        .map(cut -> cut instanceof Cut.Holes holes ? holes.depth() : ((Slots) cut).depth())
        .findFirst()
        .orElse(Length.ZERO);
  }

  private Stream<Cut> cuts(Part part) {
    return part.cuts().stream()
        .filter(cut -> cut.at().equals(joint.at()) && cut.isFor(item.name()));
  }

  /** What is left behind the hole or slot in one of the two parts. */
  Length behind(Part part) {
    return part.box().size(joint.entry().axis()).minus(depth(part));
  }

  /** The two parts. */
  List<Part> parts() {
    return List.of(first, second);
  }
}
