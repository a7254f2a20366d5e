package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
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
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Pulls and knobs on the outside of what they open, at their holes or in its middle. */
record HandleItems(Piece piece, HardwareShapes shapes) {
  private static final Length CENTRES = Length.inches(4);

  /** A bar stands so far off, is so thick and so much longer than its centres (from memory). */
  private static final Length STANDS_OFF = Length.mm(32);

  private static final Length BAR = Length.mm(12);
  private static final Length LONGER = Length.mm(36);

  /** A knob of 1 1/4 in, as high as four fifths of its width, on a neck (from memory). */
  private static final Length KNOB = Length.inch(5, 4);

  private static final double HIGH = 0.8;
  private static final double NECK = 0.45;

  private record Place(Point at, Axis along) {}

  List<PlacedItem> of(HardwareEntry entry) {
    ItemEntry item = piece.item(entry.item().value()).orElseThrow();
    Part host = piece.part(entry.parts().getFirst().value());
    if (host.pose().isTurned()) {
      return List.of();
    }
    Face out = outwards(host);
    return places(host, out, item, entry.count())
        .map(
            place ->
                new PlacedItem(
                    item.name(),
                    PlacedItem.Origin.of(entry),
                    host.name(),
                    place.at().toMm(),
                    out.normal(),
                    item.kind() == ItemKind.KNOB ? knob(item, out) : bar(item, out, place)))
        .toList();
  }

  /** Away from the middle of the piece. */
  private Face outwards(Part host) {
    Box whole = piece.parts().stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    return MountSites.towards(host, whole, host.thickness()).opposite();
  }

  private static Stream<Place> places(Part host, Face out, ItemEntry item, int count) {
    List<Cut.Holes> holes =
        host.cuts(Cut.Holes.class).stream().filter(cut -> cut.isFor(item.name())).toList();
    Length face = host.bounds().at(out);
    if (holes.isEmpty()) {
      Axis along = MountedItems.longer(host.bounds(), out.axis());
      Point middle = host.bounds().middle().with(out.axis(), face);
      return Spread.over(host.bounds().on(along), count).stream()
          .map(at -> new Place(middle.with(along, at), along));
    }
    return item.kind() == ItemKind.KNOB
        ? holes.stream()
            .flatMap(cut -> cut.centres().stream().map(at -> new Place(at, cut.along())))
            .map(place -> new Place(place.at().with(out.axis(), face), place.along()))
        : holes.stream().map(cut -> new Place(between(cut).with(out.axis(), face), cut.along()));
  }

  private static Point between(Cut.Holes cut) {
    Length first = cut.centres().getFirst().on(cut.along());
    Length last = cut.centres().getLast().on(cut.along());
    return cut.first().with(cut.along(), new Range(first.min(last), first.max(last)).middle());
  }

  private Solid knob(ItemEntry item, Face out) {
    double radius = item.diameter().orElse(KNOB).toMm() / 2;
    double high = 2 * HIGH * radius;
    return shapes.turned(
        out.normal(),
        List.of(
            new Ring(0, NECK * radius),
            new Ring(high / 2, NECK * radius),
            new Ring(high / 2, radius),
            new Ring(high, radius)));
  }

  private Solid bar(ItemEntry item, Face out, Place place) {
    Length centres = item.sizes().centres().orElse(CENTRES);
    Length half = Length.nearest(centres.toMm() / 2);
    Range grip = new Range(STANDS_OFF.minus(BAR), STANDS_OFF);
    Range post = new Range(Length.ZERO, grip.from());
    Box foot = HardwareShapes.box(out, post, place.along(), BAR, BAR);
    return shapes.boxes(
        Pose.NONE,
        HardwareShapes.box(out, grip, place.along(), centres.plus(LONGER), BAR),
        foot.moved(place.along(), half.negated()),
        foot.moved(place.along(), half));
  }
}
