package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Piece;

/**
 * What holds a top that can move: fasteners with a tongue in the rail's slot and a plate under the
 * top, or discs let into the rail; and the screws that hold them to the top.
 */
record TopFasteners(Piece piece, HardwareShapes shapes) {
  /** The plate of a slotted fastener beyond its tongue, and its sheet (from memory). */
  private static final Length PLATE = Length.inch(7, 8);

  private static final Length SHEET = Length.mm(2);
  private static final Length WIDTH = Length.inch(5, 8);
  private static final Length TONGUE = Length.inch(3, 8);

  /** A place of a fastener: on the rail's side at its slot, or on its edge at its recess. */
  private record Place(Face side, Length along, Axis axis, Cut cut) {}

  /** The fasteners of a joint, or their screws. */
  List<PlacedItem> of(Joint joint, ItemEntry item) {
    ItemCount fastener =
        joint.fasteners().stream()
            .filter(each -> piece.kind(each.item()).isTopFastener())
            .findFirst()
            .orElseThrow();
    ItemEntry what = piece.item(fastener.item()).orElseThrow();
    return piece.part(joint.second()).cuts().stream()
        .filter(cut -> cut.at().equals(joint.at()) && cut.isFor(fastener.item()))
        .findFirst()
        .stream()
        .flatMap(cut -> places(joint, cut, fastener.count()))
        .flatMap(place -> bodies(joint, what, item, place))
        .toList();
  }

  private static Stream<Place> places(Joint joint, Cut cut, int count) {
    if (cut instanceof Cut.Holes recesses) {
      Face side = Face.of(Axis.other(recesses.along(), recesses.from().axis()), 1);
      return recesses.centres().stream()
          .map(at -> new Place(side, at.on(recesses.along()), recesses.along(), cut));
    }
    Axis along = Axis.other(joint.firstFace().axis(), cut.from().axis());
    return Spread.over(joint.contact().on(along), count).stream()
        .map(at -> new Place(cut.from(), at, along, cut));
  }

  private Stream<PlacedItem> bodies(Joint joint, ItemEntry what, ItemEntry item, Place place) {
    boolean isFastener = item.equals(what);
    return place.cut() instanceof Cut.Holes recesses
        ? rotating(joint, item, recesses, place, isFastener)
        : Stream.of(isFastener ? tongued(joint, item, place) : screw(joint, what, item, place));
  }

  private PlacedItem tongued(Joint joint, ItemEntry item, Place place) {
    Face up = joint.firstFace().opposite();
    Length rail = piece.part(joint.second()).box().at(up);
    Range slot = slot(place.cut(), up.axis());
    Length drop = rail.minus(slot.middle()).abs();
    Vector3D at =
        joint
            .contact()
            .middle()
            .with(up.axis(), slot.middle())
            .with(place.axis(), place.along())
            .with(place.side().axis(), piece.part(joint.second()).box().at(place.side()))
            .toMm();
    Length width = item.sizes().width().orElse(WIDTH);
    Solids solids = new Solids(place, up, width, drop);
    return new PlacedItem(
        item.name(),
        Origin.of(joint),
        joint.second(),
        at,
        place.side().normal(),
        shapes.boxes(
            Pose.NONE, item.kind() == ItemKind.BUTTON ? solids.button(item) : solids.sheet(item)));
  }

  private static Range slot(Cut cut, Axis up) {
    return cut instanceof Cut.Trench trench
        ? trench.removed().on(up)
        : ((storyrod.piece.Slots) cut).around().on(up);
  }

  /**
   * The boxes of a fastener about where its tongue enters the rail.
   *
   * @param drop from the top down to the middle of the slot
   */
  private record Solids(Place place, Face up, Length width, Length drop) {
    Box[] sheet(ItemEntry item) {
      Length tongue = item.sizes().tongue().orElse(TONGUE);
      return new Box[] {
        box(tongue.negated(), SHEET, centred(SHEET)),
        box(Length.ZERO, SHEET, new Range(centred(SHEET).from(), drop)),
        box(Length.ZERO, PLATE, new Range(drop.minus(SHEET), drop))
      };
    }

    Box[] button(ItemEntry item) {
      Length tongue = item.sizes().tongue().orElse(TONGUE);
      Length thick = item.sizes().tongueThickness().orElse(SHEET);
      Length body = item.length().orElse(PLATE).minus(tongue);
      Length all = item.sizes().thickness().orElse(drop);
      return new Box[] {
        box(tongue.negated(), Length.ZERO, centred(thick)),
        box(Length.ZERO, body, new Range(drop.minus(all), drop))
      };
    }

    private static Range centred(Length thick) {
      return HardwareShapes.about(thick);
    }

    private Box box(Length from, Length to, Range high) {
      Range out = place.side().sign() > 0 ? new Range(from, to) : turned(new Range(from, to));
      return HardwareShapes.box(up, high, place.axis(), width, width)
          .with(place.side().axis(), out);
    }

    private static Range turned(Range range) {
      return new Range(range.to().negated(), range.from().negated());
    }
  }

  /** Up through the plate into the top. */
  private PlacedItem screw(Joint joint, ItemEntry what, ItemEntry screw, Place place) {
    Face down = joint.firstFace();
    Length under = what.kind() == ItemKind.BUTTON ? what.sizes().thickness().orElse(SHEET) : SHEET;
    Length out = piece.part(joint.second()).box().at(place.side());
    Length half = Length.nearest(PLATE.toMm() / 2);
    Vector3D at =
        joint
            .contact()
            .middle()
            .with(down.axis(), joint.contact().at(down).plus(under.times(down.sign())))
            .with(place.axis(), place.along())
            .with(place.side().axis(), out.plus(half.times(place.side().sign())))
            .toMm();
    return new PlacedItem(
        screw.name(),
        Origin.of(joint),
        joint.first(),
        at,
        down.normal(),
        shapes.panHead(down.normal(), screw));
  }

  /** Two discs, one let into the rail and one under the top, with a screw through each. */
  private Stream<PlacedItem> rotating(
      Joint joint, ItemEntry item, Cut.Holes recesses, Place place, boolean isFastener) {
    Vector3D out = recesses.from().normal();
    Vector3D in =
        recesses.centres().stream()
            .filter(at -> at.on(place.axis()).equals(place.along()))
            .findFirst()
            .orElseThrow()
            .toMm();
    double swing = recesses.diameter().toMm() * swings(joint, recesses, place);
    Vector3D over = place.side().normal().multiply(swing);
    if (isFastener) {
      Range thick = new Range(recesses.depth().negated(), Length.ZERO);
      var disc = shapes.rod(out, thick, recesses.diameter());
      return Stream.of(
          new PlacedItem(
              item.name(), Origin.of(joint), joint.second(), in, out, disc.with(disc.moved(over))));
    }
    Vector3D down = out.negate();
    return Stream.of(
        new PlacedItem(
            item.name(), Origin.of(joint), joint.second(), in, out, shapes.flatHead(out, item)),
        new PlacedItem(
            item.name(),
            Origin.of(joint),
            joint.first(),
            in.add(over).add(down.multiply(recesses.depth().toMm())),
            down,
            shapes.flatHead(down, item)));
  }

  /** To which side of the rail's middle the recesses lie: there they are open. */
  private int swings(Joint joint, Cut.Holes recesses, Place place) {
    Axis axis = place.side().axis();
    Length middle = piece.part(joint.second()).box().on(axis).middle();
    return recesses.first().on(axis).isShorterThan(middle) ? -1 : 1;
  }
}
