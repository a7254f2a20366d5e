package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slots;

/** What lies half in one part and half in the other, or is driven across both: dowels, pegs. */
record InsertedItems(Piece piece, HardwareShapes shapes) {
  /** The bodies of one of a joint's items, in the part that takes the other one if it has room. */
  List<PlacedItem> of(Joint joint, ItemEntry item) {
    return Stream.of(joint.second(), joint.first())
        .map(piece::part)
        .map(part -> both(part, joint, item))
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private List<PlacedItem> both(Part part, Joint joint, ItemEntry item) {
    List<PlacedItem> splines = new SplineItems(shapes).in(part, joint, item);
    return splines.isEmpty() ? in(part, joint, item) : splines;
  }

  private List<PlacedItem> in(Part part, Joint joint, ItemEntry item) {
    return JointCuts.of(joint, part)
        .filter(cut -> cut.isFor(item.name()))
        .flatMap(
            cut ->
                switch (cut) {
                  case Cut.Holes holes -> holes.centres().stream().map(at -> new Place(cut, at));
                  case Slots slots -> slots.centres().stream().map(at -> new Place(cut, at));
                  default -> Stream.<Place>empty();
                })
        .map(place -> placed(part, joint, item, place))
        .toList();
  }

  private record Place(Cut cut, Point at) {}

  private PlacedItem placed(Part part, Joint joint, ItemEntry item, Place place) {
    Vector3D out = part.pose().normal(place.cut().from());
    return new PlacedItem(
        item.name(),
        Origin.of(joint),
        part.name(),
        part.pose().point(place.at().toMm()),
        out,
        place.cut() instanceof Slots slots
            ? shapes.boxes(part.pose(), flat(joint, item, slots))
            : shapes.rod(out, along(joint, item, place.cut()), diameter(item, place.cut())));
  }

  private static Length diameter(ItemEntry item, Cut cut) {
    return item.diameter().orElseGet(() -> ((Cut.Holes) cut).diameter());
  }

  private Box flat(Joint joint, ItemEntry item, Slots slots) {
    boolean isBiscuit = item.kind() == ItemKind.BISCUIT;
    Length wide = item.sizes().width().orElse(slots.length());
    Length broad = isBiscuit ? item.length().orElse(slots.length()) : wide;
    Range high = isBiscuit ? HardwareShapes.about(wide) : along(joint, item, slots);
    return HardwareShapes.box(
        slots.from(), high, slots.along(), broad, item.sizes().thickness().orElse(slots.width()));
  }

  /** From the bottom of its place, less the room for glue, to its other end. */
  private Range along(Joint joint, ItemEntry item, Cut cut) {
    Length here = depth(cut);
    if (item.length().isEmpty() || item.kind() == ItemKind.OTHER) {
      return new Range(here.negated(), Length.ZERO);
    }
    Length length = item.length().get();
    Length there =
        Stream.of(joint.first(), joint.second())
            .flatMap(name -> JointCuts.of(joint, piece.part(name)))
            .filter(each -> each.isFor(item.name()))
            .filter(each -> each.from() != cut.from())
            .map(InsertedItems::depth)
            .findFirst()
            .orElse(length.minus(here));
    Length room = Length.nearest((here.plus(there).minus(length)).toMm() / 2);
    Length deep = here.minus(room);
    return new Range(deep.negated(), length.minus(deep));
  }

  private static Length depth(Cut cut) {
    return cut instanceof Slots slots ? slots.depth() : ((Cut.Holes) cut).depth();
  }
}
