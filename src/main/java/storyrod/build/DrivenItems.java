package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slots;

/**
 * What a joint drives from one part into the other: screws, what lies over and under heads, brads.
 */
record DrivenItems(Piece piece, HardwareShapes shapes) {
  /** How thick a washer is (ISO 7089 for M4 and M5, from memory). */
  private static final Length WASHER = Length.mm(1);

  /** How far the head of a pocket screw is from where its line leaves the end (common practice). */
  private static final double POCKET_HEAD_MM = 14;

  private static final Length BRAD = Length.inch(3, 64);

  /** A head's place in the frame of the part it is driven from. */
  private record Head(Vector3D at, Vector3D out, boolean flat) {}

  /** The bodies of one of a joint's items. */
  List<PlacedItem> of(Joint joint, ItemEntry item, int count) {
    Part part = piece.part(joint.driven().orElseThrow().part());
    return switch (item.kind()) {
      case WOOD_SCREW, POCKET_SCREW ->
          heads(joint, part, item).map(head -> screw(joint, part, item, head)).toList();
      case PLUG -> cuts(joint, part, item).flatMap(cut -> plug(joint, part, item, cut)).toList();
      case WASHER -> slots(joint, part).map(at -> washer(joint, part, item, at)).toList();
      case BRAD -> part.pose().isTurned() ? List.of() : brads(joint, part, item, count);
      case SLIDE, UNDER_SLIDE, TOP_FASTENER, ROTATING_FASTENER, BUTTON, PULL, KNOB -> List.of();
      case CATCH, CONCEALED_HINGE, BUTT_HINGE, SHELF_PIN, DOWEL, BISCUIT -> List.of();
      case LOOSE_TENON, FOOT, LEVELLING_FOOT, ANTI_TIP_STRAP, OTHER -> List.of();
    };
  }

  private static Stream<Cut> cuts(Joint joint, Part part, ItemEntry item) {
    return JointCuts.of(joint, part).filter(cut -> cut.isFor(item.name()));
  }

  private Stream<Head> heads(Joint joint, Part part, ItemEntry screw) {
    return cuts(joint, part, screw).flatMap(cut -> heads(joint, part, cut));
  }

  private Stream<Head> heads(Joint joint, Part part, Cut cut) {
    return switch (cut) {
      case PocketHoles pockets -> pockets.centres().stream().map(at -> pocket(pockets, at));
      case Cut.Holes holes when isDriven(joint, part, holes) ->
          holes.centres().stream().map(at -> head(joint, part, holes, at));
      case Slots slots ->
          slots.centres().stream()
              .map(at -> new Head(lifted(at, slots, under(joint)), slots.from().normal(), false));
      default -> Stream.empty();
    };
  }

  private static boolean isDriven(Joint joint, Part part, Cut.Holes holes) {
    Face from = Face.nearest(part.pose().normal(holes.from()));
    return holes.through() && joint.driven().filter(d -> d.face() == from).isPresent();
  }

  private Head head(Joint joint, Part part, Cut.Holes holes, Point at) {
    Length sunk = sunk(joint, part);
    boolean flat = sunk.isPositive() || holes.countersink().isPositive();
    return new Head(lifted(at, holes, sunk.negated()), holes.from().normal(), flat);
  }

  private static Head pocket(PocketHoles pockets, Point at) {
    Vector3D out = Driving.pocket(pockets, at).out();
    return new Head(at.toMm().add(out.multiply(POCKET_HEAD_MM)), out, false);
  }

  private static Vector3D lifted(Point at, Cut cut, Length by) {
    return at.moved(cut.from().axis(), by.times(cut.from().sign())).toMm();
  }

  /** How deep the heads lie under plugs. */
  private Length sunk(Joint joint, Part part) {
    return Cut.only(Cut.Holes.class, JointCuts.of(joint, part).toList()).stream()
        .filter(cut -> cut.forWhat().filter(it -> piece.kind(it) == ItemKind.PLUG).isPresent())
        .map(Cut.Holes::depth)
        .findFirst()
        .orElse(Length.ZERO);
  }

  private Length under(Joint joint) {
    boolean washed =
        joint.fasteners().stream().anyMatch(each -> piece.kind(each.item()) == ItemKind.WASHER);
    return washed ? WASHER : Length.ZERO;
  }

  private PlacedItem screw(Joint joint, Part part, ItemEntry screw, Head head) {
    Vector3D out = part.pose().direction(head.out());
    return new PlacedItem(
        screw.name(),
        Origin.of(joint),
        part.name(),
        part.pose().point(head.at()),
        out,
        head.flat() ? shapes.flatHead(out, screw) : shapes.panHead(out, screw));
  }

  private Stream<PlacedItem> plug(Joint joint, Part part, ItemEntry plug, Cut cut) {
    return cut instanceof Cut.Holes holes
        ? holes.centres().stream()
            .map(at -> rod(joint, part, plug, new Rod(holes, at, depth(holes), holes.diameter())))
        : Stream.empty();
  }

  private static Range depth(Cut.Holes holes) {
    return new Range(holes.depth().negated(), Length.ZERO);
  }

  private record Place(Slots slots, Point at) {}

  private static Stream<Place> slots(Joint joint, Part part) {
    return Cut.only(Slots.class, JointCuts.of(joint, part).toList()).stream()
        .flatMap(slots -> slots.centres().stream().map(at -> new Place(slots, at)));
  }

  private PlacedItem washer(Joint joint, Part part, ItemEntry washer, Place place) {
    Range thick = new Range(Length.ZERO, WASHER);
    Length wide = washer.diameter().orElseThrow();
    return rod(joint, part, washer, new Rod(place.slots(), place.at(), thick, wide));
  }

  private record Rod(Cut cut, Point at, Range along, Length diameter) {}

  private PlacedItem rod(Joint joint, Part part, ItemEntry item, Rod rod) {
    Vector3D out = part.pose().normal(rod.cut().from());
    return new PlacedItem(
        item.name(),
        Origin.of(joint),
        part.name(),
        part.pose().point(rod.at().toMm()),
        out,
        shapes.rod(out, rod.along(), rod.diameter()));
  }

  /** Brads, spread evenly along the middle of where the parts meet; nothing is drilled for them. */
  private List<PlacedItem> brads(Joint joint, Part part, ItemEntry brad, int count) {
    Face face = joint.driven().orElseThrow().face();
    Vector3D out = face.normal();
    Range along = new Range(brad.length().orElse(Length.inches(1)).negated(), Length.ZERO);
    return Spread.alongContact(joint, face.axis(), count).stream()
        .map(at -> at.with(face.axis(), part.box().at(face)).toMm())
        .map(
            at ->
                new PlacedItem(
                    brad.name(),
                    Origin.of(joint),
                    part.name(),
                    at,
                    out,
                    shapes.rod(out, along, brad.diameter().orElse(BRAD))))
        .toList();
  }
}
