package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.HardwareEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Where concealed hinges are let into their door, and where their plates lie on what carries it.
 */
record CupHinges(Piece piece, Nesting nesting) {
  /** The screws of a cup: apart, and behind the middle of the cup (usual, from memory). */
  private static final Length CUP_SCREWS = Length.mm(45);

  private static final Length CUP_BEHIND = Length.micrometres(9500);

  /** The screws of a plate, in a row of holes 32 mm apart (usual, from memory). */
  private static final Length PLATE_SCREWS = Length.mm(32);

  /**
   * A cup in its door, or a plate.
   *
   * @param at its middle on the face of its part
   * @param along the line of the hinges
   */
  record Seat(Part host, Face out, Vector3D at, Axis along) {
    private Seat moved(Vector3D by) {
      return new Seat(host, out, at.add(by), along);
    }

    private Stream<Seat> apart(Length distance) {
      Vector3D half = Face.of(along, 1).normal().multiply(distance.toMm() / 2);
      return Stream.of(moved(half.negate()), moved(half));
    }
  }

  List<Seat> cups(HardwareEntry entry) {
    return entry.parts().stream()
        .map(name -> piece.part(name.value()))
        .filter(part -> !part.pose().isTurned())
        .flatMap(part -> holes(part, entry).flatMap(cut -> cups(part, cut)))
        .toList();
  }

  private static Stream<Cut.Holes> holes(Part part, HardwareEntry entry) {
    return part.cuts(Cut.Holes.class).stream().filter(cut -> cut.isFor(entry.item().value()));
  }

  private static Stream<Seat> cups(Part door, Cut.Holes cut) {
    return cut.centres().stream().map(at -> new Seat(door, cut.from(), at.toMm(), cut.along()));
  }

  /** As high as the cups. */
  List<Seat> plates(HardwareEntry entry) {
    List<Seat> cups = cups(entry);
    if (cups.isEmpty()) {
      return List.of();
    }
    return new MountSites(piece, nesting)
        .of(entry).stream()
            .flatMap(
                site ->
                    site.choices().getFirst().stream()
                        .map(
                            line ->
                                new Seat(
                                    site.part(),
                                    Face.nearest(line.out()),
                                    line.from(),
                                    cups.getFirst().along())))
            .toList();
  }

  /** Where the screws of the cups go in, then those of the plates: two of each. */
  List<Seat> screws(HardwareEntry entry) {
    return Stream.concat(
            cups(entry).stream().flatMap(cup -> cup.moved(behind(cup)).apart(CUP_SCREWS)),
            plates(entry).stream().flatMap(plate -> plate.apart(PLATE_SCREWS)))
        .toList();
  }

  /** Away from the edge of the door. */
  private static Vector3D behind(Seat cup) {
    Axis across = Axis.other(cup.out().axis(), cup.along());
    Vector3D middle = cup.host().bounds().middle().toMm();
    Vector3D inwards = Face.of(across, 1).normal();
    double sign = Math.signum(inwards.dot(middle.subtract(cup.at())));
    return inwards.multiply(sign * CUP_BEHIND.toMm());
  }
}
