package storyrod.build;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The screws of slides and of hinges: as many in each member or leaf as in every other, in a row
 * along it; two in each cup and two in each plate of concealed hinges.
 */
record MountScrews(Piece piece, Nesting nesting, HardwareShapes shapes) {
  List<PlacedItem> of(HardwareEntry entry) {
    return entry.screw().flatMap(piece::item).stream()
        .flatMap(screw -> of(entry, screw).stream())
        .toList();
  }

  private List<PlacedItem> of(HardwareEntry entry, ItemEntry screw) {
    return switch (piece.kind(entry.item().value())) {
      case SLIDE, UNDER_SLIDE -> ofSlides(entry, screw);
      case BUTT_HINGE -> ofHinges(entry, screw);
      case CONCEALED_HINGE -> ofCups(entry, screw);
      case PULL, KNOB, CATCH, ANTI_TIP_STRAP, SHELF_PIN, FOOT -> List.of();
      case LEVELLING_FOOT, OTHER, WOOD_SCREW, POCKET_SCREW, BRAD, TOP_FASTENER -> List.of();
      case ROTATING_FASTENER, BUTTON, DOWEL, BISCUIT, LOOSE_TENON, PLUG, WASHER -> List.of();
    };
  }

  /** Those of the case's members with these, those of the drawer's with the drawer. */
  private List<PlacedItem> ofSlides(HardwareEntry entry, ItemEntry screw) {
    SlideItems slides = new SlideItems(piece, nesting, shapes);
    List<SlideItems.Member> members = slides.members(entry);
    if (members.isEmpty()) {
      return List.of();
    }
    int each = entry.count() * entry.screwsEach() / members.size();
    return members.stream().flatMap(member -> row(member, screw, each)).toList();
  }

  /** On trial a member hangs on its first and its last screw; those between wait. */
  private Stream<PlacedItem> row(SlideItems.Member member, ItemEntry screw, int count) {
    Length half = Length.nearest(member.length().toMm() / 2);
    Length middle = member.at().on(member.run());
    Origin origin =
        Origin.of(member.entry(), List.of(member.host().name()), PlacedItem.Makeup.WHOLE);
    List<Length> places = Spread.over(new Range(middle.minus(half), middle.plus(half)), count);
    return IntStream.range(0, count)
        .mapToObj(
            i -> {
              Point at = member.at().with(member.run(), places.get(i));
              boolean isEnd = i == 0 || i == count - 1;
              Seat seat = new Seat(at.toMm(), member.out());
              return placed(screw, isEnd ? origin : origin.waiting(), member.host(), seat);
            });
  }

  private record Seat(Vector3D at, Face out) {}

  private PlacedItem placed(ItemEntry screw, Origin origin, Part host, Seat seat) {
    Vector3D out = seat.out().normal();
    Vector3D under = seat.at().add(out.multiply(MountHoles.METAL.toMm()));
    return new PlacedItem(
        screw.name(), origin, host.name(), under, out, shapes.panHead(out, screw));
  }

  /** An odd screw goes into the door; those of the other leaf go in when it is hung. */
  private List<PlacedItem> ofHinges(HardwareEntry entry, ItemEntry screw) {
    HingeItems hinges = new HingeItems(piece, nesting, shapes);
    int later = entry.screwsEach() / 2;
    return hinges.leaves(entry).stream()
        .flatMap(
            leaf ->
                Stream.concat(
                    row(leaf, leaf.door(), screw, entry.screwsEach() - later),
                    row(leaf, leaf.post(), screw, later)))
        .toList();
  }

  private List<PlacedItem> ofCups(HardwareEntry entry, ItemEntry screw) {
    Origin origin = Origin.of(entry);
    return new CupHinges(piece, nesting)
        .screws(entry).stream()
            .map(seat -> placed(screw, origin, seat.host(), new Seat(seat.at(), seat.out())))
            .toList();
  }

  private Stream<PlacedItem> row(HingeItems.Leaf leaf, Part host, ItemEntry screw, int count) {
    boolean isDoor = host.equals(leaf.door());
    Face out = isDoor ? leaf.out() : leaf.out().opposite();
    Origin plain = Origin.of(leaf.entry());
    Origin origin =
        nesting
            .looseUnit(leaf.door().name())
            .filter(unit -> !isDoor)
            .map(plain::with)
            .orElse(plain);
    Axis along = leaf.along();
    return Spread.over(leaf.at(), count).stream()
        .map(at -> leaf.middle().with(along, at).with(out.axis(), host.bounds().at(out)))
        .map(at -> placed(screw, origin, host, new Seat(at.toMm(), out)));
  }
}
