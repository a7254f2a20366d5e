package storyrod.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Holes for shelf pins that are not level with those of the wall across. */
final class PinRows implements Check {
  private static final Length GIVE = Length.micrometres(500);

  @Override
  public String code() {
    return "pin-rows";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Holes for the same shelf pins in two walls that face each other are as many, at the same"
            + " heights, and as far from the front, within 0.5 mm: else a shelf rocks or does not"
            + " go in.",
        "Common practice.",
        "It compares each wall with the nearest one across that is drilled for the same pins.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Wall> walls = piece.parts().stream().flatMap(part -> walls(piece, part).stream()).toList();
    List<Diagnostic> found = new ArrayList<>();
    for (Wall wall : walls) {
      if (wall.from() == Face.RIGHT) {
        across(wall, walls).flatMap(other -> compared(piece, wall, other)).ifPresent(found::add);
      }
    }
    return found;
  }

  /** All holes for one kind of pin in one face of a part. */
  private record Wall(Part part, Face from, String pin, List<Cut.Holes> rows) {
    List<Point> centres() {
      return rows.stream().flatMap(row -> row.centres().stream()).toList();
    }

    /** Where its holes lie on an axis, each place once. */
    List<Length> places(Axis axis) {
      TreeSet<Length> places = new TreeSet<>();
      centres().forEach(centre -> places.add(centre.on(axis)));
      return List.copyOf(places);
    }

    Length at() {
      return part.box().at(from);
    }
  }

  private static List<Wall> walls(Piece piece, Part part) {
    List<Wall> walls = new ArrayList<>();
    List<Cut.Holes> pins =
        part.cuts(Cut.Holes.class).stream()
            .filter(
                holes ->
                    holes.forWhat().map(piece::kind).orElse(ItemKind.OTHER) == ItemKind.SHELF_PIN)
            .filter(holes -> !part.pose().isTurned())
            .toList();
    for (Face from : List.of(Face.LEFT, Face.RIGHT)) {
      pins.stream()
          .filter(
              holes -> holes.from() == from || holes.through() && holes.from() == from.opposite())
          .map(holes -> holes.forWhat().orElseThrow())
          .distinct()
          .forEach(pin -> walls.add(new Wall(part, from, pin, rows(pins, from, pin))));
    }
    return walls;
  }

  private static List<Cut.Holes> rows(List<Cut.Holes> pins, Face from, String pin) {
    return pins.stream()
        .filter(holes -> holes.isFor(pin))
        .filter(holes -> holes.from() == from || holes.through() && holes.from() == from.opposite())
        .toList();
  }

  private static Optional<Wall> across(Wall wall, List<Wall> walls) {
    return walls.stream()
        .filter(other -> other.from() == Face.LEFT && other.pin().equals(wall.pin()))
        .filter(other -> !other.at().isShorterThan(wall.at()))
        .filter(other -> other.part().box().z().overlaps(wall.part().box().z()))
        .filter(other -> other.part().box().y().overlaps(wall.part().box().y()))
        .min(Comparator.comparing(Wall::at));
  }

  private Optional<Diagnostic> compared(Piece piece, Wall left, Wall right) {
    return Stream.<Function<Axis, Optional<Diagnostic>>>of(
            axis -> differing(piece, left, right, axis))
        .flatMap(each -> Stream.of(Axis.Z, Axis.Y).map(each))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Diagnostic> differing(Piece piece, Wall left, Wall right, Axis axis) {
    List<Length> here = left.places(axis);
    List<Length> there = right.places(axis);
    String what = axis == Axis.Z ? "heights" : "rows";
    if (here.size() != there.size()) {
      return Optional.of(
          finding(
              left,
              right,
              "%s has holes for %s at %d %s, but %s across has them at %d"
                  .formatted(
                      left.part().name(),
                      left.pin(),
                      here.size(),
                      what,
                      right.part().name(),
                      there.size())));
    }
    for (int i = 0; i < here.size(); i++) {
      Length off = there.get(i).minus(here.get(i)).abs();
      if (off.isLongerThan(GIVE)) {
        return Optional.of(
            finding(
                left,
                right,
                "the holes for %s in %s and %s across do not agree: %s %s against %s"
                    .formatted(
                        left.pin(),
                        left.part().name(),
                        right.part().name(),
                        axis == Axis.Z ? "z" : "y",
                        print(piece, here.get(i)),
                        print(piece, there.get(i)))));
      }
    }
    return Optional.empty();
  }

  private Diagnostic finding(Wall left, Wall right, String message) {
    return Diagnostic.warning(code(), left.rows().getFirst().at(), message)
        .also(right.rows().getFirst().at(), "the holes across are asked for here")
        .hint(
            "drill both walls by one entry: `in: [%s.right, %s.left]`"
                .formatted(left.part().name(), right.part().name()));
  }

  private static String print(Piece piece, Length length) {
    return piece.description().format().formatWithUnit(length);
  }
}
