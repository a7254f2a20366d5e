package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.geometry.Ring;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Dots on which what lifts off rests, and what lies loose on a bottom. */
record RestItems(Piece piece, Nesting nesting, HardwareShapes shapes) {
  /** How thick a dot of felt is (from memory). */
  private static final Length DOT = Length.inch(1, 16);

  private static final double LEVEL = 0.999;
  private static final Length TOUCHING = Length.micrometres(10);

  List<PlacedItem> of(HardwareEntry entry, ItemEntry item) {
    return Sticking.is(item)
        ? item.diameter().map(round -> dots(entry, item, round)).orElse(List.of())
        : Lining.of(piece, entry).map(lining -> lying(entry, lining)).stream().toList();
  }

  private PlacedItem lying(HardwareEntry entry, Lining lining) {
    Length top = lining.host().bounds().at(Face.TOP);
    Box box =
        new Box(
            HardwareShapes.about(lining.across().length()),
            HardwareShapes.about(lining.along().length()),
            new Range(Length.ZERO, lining.thick()));
    Point middle = new Point(lining.across().middle(), lining.along().middle(), top);
    return placed(entry, lining.host(), Face.TOP, middle, shapes.boxes(Pose.NONE, box));
  }

  /** As many on each part; none where they cannot be shared alike. */
  private List<PlacedItem> dots(HardwareEntry entry, ItemEntry item, Length round) {
    List<Part> hosts = entry.parts().stream().map(name -> piece.part(name.value())).toList();
    if (hosts.isEmpty() || entry.count() % hosts.size() != 0) {
      return List.of();
    }
    Length thick = item.sizes().thickness().orElse(DOT);
    int each = entry.count() / hosts.size();
    return hosts.stream()
        .flatMap(
            host ->
                places(host, each).stream()
                    .map(at -> placed(entry, host, at.out(), at.point(), dot(at, round, thick))))
        .toList();
  }

  private Solid dot(Place at, Length round, Length thick) {
    double radius = round.toMm() / 2;
    return shapes.turned(
        at.out().normal(), List.of(new Ring(0, radius), new Ring(thick.toMm(), radius)));
  }

  private PlacedItem placed(HardwareEntry entry, Part host, Face out, Point at, Solid body) {
    return new PlacedItem(
        entry.item().value(), Origin.of(entry), host.name(), at.toMm(), out.normal(), body);
  }

  /** A point of a part and the face from which a dot stands out there. */
  private record Place(Face out, Point point) {}

  /** Where a part touches, below or above it, what it can be lifted off, by length and width. */
  private record Patch(Face out, Length height, Range x, Range y) {
    Place at(Length x, Length y) {
      return new Place(out, new Point(x, y, height));
    }

    double areaMm2() {
      return x.length().toMm() * y.length().toMm();
    }

    List<Place> spread(int count) {
      return x.length().isLongerThan(y.length())
          ? Spread.over(x, count).stream().map(each -> at(each, y.middle())).toList()
          : Spread.over(y, count).stream().map(each -> at(x.middle(), each)).toList();
    }
  }

  /** One on each place where it rests if there are so many; else along the largest of them. */
  private List<Place> places(Part host, int count) {
    List<Patch> patches =
        piece.parts().stream()
            .filter(other -> isLiftedOff(host, other))
            .flatMap(other -> patches(host, other))
            .toList();
    return patches.size() == count
        ? patches.stream().flatMap(patch -> patch.spread(1).stream()).toList()
        : patches.stream()
            .max(Comparator.comparingDouble(Patch::areaMm2))
            .map(patch -> patch.spread(count))
            .orElse(List.of());
  }

  private boolean isLiftedOff(Part host, Part other) {
    return !nesting.looseUnit(host.name()).equals(nesting.looseUnit(other.name()));
  }

  private static Stream<Patch> patches(Part host, Part other) {
    return Stream.of(Face.BOTTOM, Face.TOP)
        .flatMap(
            out ->
                faces(host, out)
                    .flatMap(
                        mine ->
                            faces(other, out.opposite())
                                .flatMap(theirs -> patch(out, mine, theirs).stream())));
  }

  private static Stream<Box> faces(Part part, Face out) {
    return part.placed().faces().stream()
        .filter(face -> face.normal().dot(out.normal()) > LEVEL)
        .map(RestItems::around);
  }

  private static Optional<Patch> patch(Face out, Box mine, Box theirs) {
    boolean touches =
        !mine.z().from().minus(theirs.z().from()).abs().isLongerThan(TOUCHING)
            && mine.x().overlaps(theirs.x())
            && mine.y().overlaps(theirs.y());
    return touches
        ? Optional.of(
            new Patch(
                out, mine.z().from(), mine.x().shared(theirs.x()), mine.y().shared(theirs.y())))
        : Optional.empty();
  }

  private static Box around(FlatFace face) {
    return new Box(on(face, Axis.X), on(face, Axis.Y), on(face, Axis.Z));
  }

  private static Range on(FlatFace face, Axis axis) {
    List<Double> all =
        face.outer().stream().map(Vector3D::toArray).map(at -> at[axis.ordinal()]).toList();
    return new Range(
        Length.nearest(all.stream().min(Double::compare).orElseThrow()),
        Length.nearest(all.stream().max(Double::compare).orElseThrow()));
  }
}
