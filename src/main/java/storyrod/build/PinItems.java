package storyrod.build;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Pins in those holes of their rows that lie next below the shelf. */
record PinItems(Piece piece, HardwareShapes shapes) {
  private static final Length DIAMETER = Length.mm(5);

  /** How far a pin reaches into its hole, and out of it (from memory). */
  private static final Length HALF = Length.mm(8);

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
    var out = place.row().from().normal();
    Length deep = HALF.min(place.row().depth());
    return new PlacedItem(
        item.name(),
        PlacedItem.Origin.of(entry),
        place.wall().name(),
        place.at().toMm(),
        out,
        shapes.rod(out, new Range(deep.negated(), HALF), item.diameter().orElse(DIAMETER)));
  }
}
