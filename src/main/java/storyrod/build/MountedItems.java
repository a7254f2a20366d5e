package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.geometry.Ring;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Hardware that no joint brings, where its kind and the parts it serves tell its place. */
record MountedItems(Piece piece, Nesting nesting, HardwareShapes shapes) {
  /** A glide and the plate of a levelling foot, with its stem (from memory). */
  private static final Length GLIDE = Length.mm(22);

  private static final double GLIDE_HIGH_MM = 5;
  private static final double LEVELLER_HIGH_MM = 15;
  private static final double STEM_MM = 4;
  private static final double STEM_LONG_MM = 25;

  /** A catch, and what ties a piece to the wall: thick, long, wide (from memory). */
  private static final List<Length> CATCH = List.of(Catches.DEEP, Catches.LONG, Catches.WIDE);

  private static final List<Length> STRAP = List.of(Length.mm(3), Length.mm(60), Length.mm(20));

  /** The screws of a strap, in shares of its length. */
  private static final double FROM_MIDDLE = 0.35;

  /** The bodies of an entry's items. */
  List<PlacedItem> of(HardwareEntry entry) {
    ItemEntry item = piece.item(entry.item().value()).orElseThrow();
    List<PlacedItem> found =
        switch (item.kind()) {
          case SLIDE, UNDER_SLIDE -> new SlideItems(piece, nesting, shapes).of(entry);
          case CONCEALED_HINGE, BUTT_HINGE -> new HingeItems(piece, nesting, shapes).of(entry);
          case PULL, KNOB -> new HandleItems(piece, shapes).of(entry);
          case SHELF_PIN -> new PinItems(piece, shapes).of(entry);
          case FOOT, LEVELLING_FOOT -> feet(entry, item);
          case CATCH -> caught(entry);
          case ANTI_TIP_STRAP -> straps(entry).map(this::screwed).toList();
          case OTHER -> new RestItems(piece, nesting, shapes).of(entry, item);
          case WOOD_SCREW, POCKET_SCREW, BRAD, TOP_FASTENER, ROTATING_FASTENER -> List.of();
          case BUTTON, DOWEL, BISCUIT, LOOSE_TENON, PLUG, WASHER -> List.of();
        };
    boolean isAll =
        !found.isEmpty()
            && found.size() == entry.count() * found.getFirst().origin().makeup().bodies();
    return isAll ? with(screws(entry), found) : List.of();
  }

  /** On the door alone where nothing stands beside it to carry the catch. */
  private List<PlacedItem> caught(HardwareEntry entry) {
    List<PlacedItem> found = new CatchItems(new Catches(piece), shapes).of(entry);
    return found.isEmpty() ? plates(entry, CATCH) : found;
  }

  /** The screws of an entry's items, if all of them have a place. */
  private List<PlacedItem> screws(HardwareEntry entry) {
    List<PlacedItem> found = new MountScrews(piece, nesting, shapes).of(entry);
    return found.size() == entry.count() * entry.screwsEach() ? found : List.of();
  }

  private static List<PlacedItem> with(List<PlacedItem> screws, List<PlacedItem> items) {
    return Stream.concat(items.stream(), screws.stream()).toList();
  }

  private PlacedItem placed(HardwareEntry entry, Part host, Face out, Point at, Box box) {
    return new PlacedItem(
        entry.item().value(),
        Origin.of(entry),
        host.name(),
        at.toMm(),
        out.normal(),
        shapes.boxes(Pose.NONE, box));
  }

  /** Under the middle of each part's foot. */
  private List<PlacedItem> feet(HardwareEntry entry, ItemEntry item) {
    double radius = item.diameter().orElse(GLIDE).toMm() / 2;
    List<Ring> glide = List.of(new Ring(0, radius), new Ring(GLIDE_HIGH_MM, radius));
    List<Ring> leveller =
        List.of(
            new Ring(-STEM_LONG_MM, STEM_MM),
            new Ring(0, STEM_MM),
            new Ring(0, radius),
            new Ring(LEVELLER_HIGH_MM, radius));
    Vector3D down = Face.BOTTOM.normal();
    Solid body = shapes.turned(down, item.kind() == ItemKind.FOOT ? glide : leveller);
    return hosts(entry)
        .map(
            part ->
                new PlacedItem(item.name(), Origin.of(entry), part.name(), foot(part), down, body))
        .toList();
  }

  private static Vector3D foot(Part part) {
    return part.placed().faces().stream()
        .filter(face -> face.normal().dot(Face.BOTTOM.normal()) > 0.9)
        .map(
            face ->
                face.outer().stream()
                    .reduce(Vector3D.ZERO, Vector3D::add)
                    .multiply(1.0 / face.outer().size()))
        .min(Comparator.comparingDouble(Vector3D::getZ))
        .orElseGet(() -> part.bounds().middle().toMm());
  }

  private Stream<Part> hosts(HardwareEntry entry) {
    return entry.parts().stream().map(name -> piece.part(name.value()));
  }

  /** On the face of a part that looks into the piece, or of what is not hung to the back. */
  private List<PlacedItem> plates(HardwareEntry entry, List<Length> sizes) {
    return hosts(entry)
        .filter(part -> !part.pose().isTurned())
        .limit(1)
        .flatMap(part -> plates(entry, sizes, part))
        .toList();
  }

  /** With the two screws that a strap brings for the piece, one near each end. */
  private PlacedItem screwed(PlacedItem strap) {
    Box box = strap.solid().bounds().orElseThrow();
    Axis along = Stream.of(Axis.values()).max(Comparator.comparing(box::size)).orElseThrow();
    Vector3D head = strap.out().multiply(STRAP.getFirst().toMm());
    Vector3D aside = Face.of(along, 1).normal().multiply(box.size(along).toMm() * FROM_MIDDLE);
    Solid screw = shapes.panHead(strap.out());
    Solid both = screw.moved(head.add(aside)).with(screw.moved(head.subtract(aside)));
    return new PlacedItem(
        strap.item(),
        strap.origin(),
        strap.host(),
        strap.at(),
        strap.out(),
        strap.solid().with(both));
  }

  private Stream<PlacedItem> plates(HardwareEntry entry, List<Length> sizes, Part part) {
    Axis along = longer(part.bounds(), outOf(part).axis());
    return plates(entry, sizes, part, Spread.over(part.bounds().on(along), entry.count()));
  }

  private Stream<PlacedItem> plates(
      HardwareEntry entry, List<Length> sizes, Part part, List<Length> places) {
    Face out = outOf(part);
    Axis along = longer(part.bounds(), out.axis());
    Range thick = new Range(Length.ZERO, sizes.get(0));
    Box box = HardwareShapes.box(out, thick, along, sizes.get(1), sizes.get(2));
    Point middle = covered(out, part.bounds().middle().with(out.axis(), part.bounds().at(out)));
    return places.stream().map(at -> placed(entry, part, out, middle.with(along, at), box));
  }

  private Face outOf(Part part) {
    return nesting.looseUnit(part.name()).isPresent() ? inwards(part) : Face.BACK;
  }

  /** As many on each part; all on the first one where they cannot be shared alike. */
  private Stream<PlacedItem> straps(HardwareEntry entry) {
    List<Part> hosts = hosts(entry).filter(part -> !part.pose().isTurned()).toList();
    boolean isShared = !hosts.isEmpty() && entry.count() % hosts.size() == 0;
    int each = isShared ? entry.count() / hosts.size() : entry.count();
    return hosts.stream()
        .limit(isShared ? hosts.size() : 1)
        .flatMap(part -> plates(entry, STRAP, part, strapsOn(part, each)));
  }

  /** Spread over a level part; on an upright one near its top, one below the other. */
  private List<Length> strapsOn(Part part, int count) {
    Axis along = longer(part.bounds(), outOf(part).axis());
    Range whole = part.bounds().on(along);
    Length room = STRAP.get(1).times(2 * count);
    return along == Axis.Z && room.isShorterThan(whole.length())
        ? Spread.over(new Range(whole.to().minus(room), whole.to()), count)
        : Spread.over(whole, count);
  }

  /** The same point on what lies against its part there: a strap is screwed on through a back. */
  private Point covered(Face out, Point at) {
    return piece.parts().stream()
        .map(Part::bounds)
        .filter(box -> box.at(out.opposite()).equals(at.on(out.axis())))
        .filter(
            box ->
                Stream.of(Axis.values())
                    .filter(axis -> axis != out.axis())
                    .allMatch(axis -> box.on(axis).contains(at.on(axis))))
        .findFirst()
        .map(box -> at.with(out.axis(), box.at(out)))
        .orElse(at);
  }

  private Face inwards(Part part) {
    Box whole = piece.parts().stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    return MountSites.towards(part, whole, part.thickness());
  }

  static Axis longer(Box box, Axis across) {
    return Stream.of(Axis.values())
        .filter(axis -> axis != across)
        .max(Comparator.comparing(box::size))
        .orElseThrow();
  }
}
