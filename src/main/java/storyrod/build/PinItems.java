package storyrod.build;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Ring;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Pins in those holes of their rows that lie next below the shelf. */
record PinItems(Piece piece, HardwareShapes shapes) {
  private static final Length DIAMETER = Length.mm(5);

  /** How far a pin reaches into its hole, and out of it (from memory). */
  private static final Length HALF = Length.mm(8);

  /** How high the collar that stops a pin stands, and how far out all round (from memory). */
  private static final double COLLAR_MM = 0.75;

  /** No shelf ends further from the wall. */
  private static final Length BESIDE = Length.mm(6);

  /** The next hole is no further below a shelf. */
  private static final Length BELOW = Length.mm(40);

  private record Place(Part wall, Cut.Holes row, Point at) {}

  List<PlacedItem> of(HardwareEntry entry) {
    ItemEntry item = piece.item(entry.item().value()).orElseThrow();
    List<Place> holes = holes(item);
    return entry.parts().stream()
        .map(name -> piece.part(name.value()))
        .filter(part -> part.thickness() == Axis.Z && !part.pose().isTurned())
        .flatMap(shelf -> under(shelf, holes))
        .map(place -> placed(entry, item, place))
        .toList();
  }

  private List<Place> holes(ItemEntry item) {
    return piece.parts().stream()
        .filter(wall -> !wall.pose().isTurned())
        .flatMap(
            wall ->
                wall.cuts(Cut.Holes.class).stream()
                    .filter(row -> row.isFor(item.name()) && row.from().axis() != Axis.Z)
                    .flatMap(row -> row.centres().stream().map(at -> new Place(wall, row, at))))
        .toList();
  }

  /** In each upright row beside a shelf, the hole that is next below it. */
  private static Stream<Place> under(Part shelf, List<Place> holes) {
    Map<List<Object>, Place> nearest = new LinkedHashMap<>();
    holes.stream()
        .filter(place -> isBeside(place, shelf.bounds()))
        .sorted(Comparator.comparing((Place place) -> place.at().on(Axis.Z)))
        .forEach(place -> nearest.put(row(place), place));
    return nearest.values().stream();
  }

  private static List<Object> row(Place place) {
    Axis across = Axis.other(place.row().from().axis(), Axis.Z);
    return List.of(place.wall().name(), place.row().from(), place.at().on(across));
  }

  private static boolean isBeside(Place place, Box shelf) {
    Axis out = place.row().from().axis();
    Length end = shelf.at(place.row().from().opposite());
    Length below = shelf.z().from().minus(place.at().on(Axis.Z));
    Length gap = end.minus(place.at().on(out)).times(place.row().from().sign());
    return !gap.abs().isLongerThan(BESIDE)
        && shelf.on(Axis.other(out, Axis.Z)).contains(place.at().on(Axis.other(out, Axis.Z)))
        && !below.isNegative()
        && !below.isLongerThan(BELOW);
  }

  private PlacedItem placed(HardwareEntry entry, ItemEntry item, Place place) {
    Vector3D out = place.row().from().normal();
    Length deep = HALF.min(place.row().depth());
    return new PlacedItem(
        item.name(),
        PlacedItem.Origin.of(entry),
        place.wall().name(),
        place.at().toMm(),
        out,
        pin(out, deep.toMm(), item.diameter().orElse(DIAMETER).toMm() / 2));
  }

  private Solid pin(Vector3D out, double deepMm, double radiusMm) {
    double collar = radiusMm + COLLAR_MM;
    return shapes.turned(
        out,
        List.of(
            new Ring(-deepMm, radiusMm),
            new Ring(0, radiusMm),
            new Ring(0, collar),
            new Ring(COLLAR_MM, collar),
            new Ring(COLLAR_MM, radiusMm),
            new Ring(HALF.toMm(), radiusMm)));
  }
}
