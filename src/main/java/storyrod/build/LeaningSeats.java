package storyrod.build;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.Seat.How;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.Touch;

/**
 * Where a part is set on one that leans: marked on its face, along it, from its ends; not from one
 * that is let into another part, where no rule reaches it.
 */
record LeaningSeats(Part part, Part leaning, List<Face> letIn) {
  /** The seats of two parts of which one leans; none where both do, each its own way. */
  static List<Seat> of(Piece piece, Part moving, Part other) {
    if (moving.pose().isTurned() && other.pose().isTurned()) {
      return List.of();
    }
    return other.pose().isTurned()
        ? of(moving, other, piece).all()
        : of(other, moving, piece).all();
  }

  private static LeaningSeats of(Part part, Part leaning, Piece piece) {
    List<Face> letIn =
        piece.joints().stream()
            .filter(joint -> joint.first().equals(leaning.name()))
            .filter(joint -> takesIn(piece.part(joint.second()), leaning))
            .map(joint -> leaning.pose().inverse().direction(joint.firstFace().normal()))
            .map(Face::nearest)
            .toList();
    return new LeaningSeats(part, leaning, letIn);
  }

  private static boolean takesIn(Part other, Part leaning) {
    return other.cuts().stream().anyMatch(cut -> cut.takesIn() && cut.isFor(leaning.name()));
  }

  private List<Seat> all() {
    Optional<FlatFace> touched = Touch.between(leaning, part);
    return touched.stream()
        .flatMap(
            shared -> {
              Face on = Face.nearest(leaning.pose().inverse().direction(shared.normal()));
              return Arrays.stream(Axis.values())
                  .filter(axis -> axis != on.axis())
                  .map(axis -> seat(on, axis, along(shared, axis)));
            })
        .toList();
  }

  private Range along(FlatFace shared, Axis axis) {
    Vector3D way = Face.of(axis, 1).normal();
    double[] at =
        shared.outer().stream()
            .mapToDouble(point -> leaning.pose().inverse().point(point).dot(way))
            .sorted()
            .toArray();
    return new Range(Length.nearest(at[0]), Length.nearest(at[at.length - 1]));
  }

  private Seat seat(Face on, Axis axis, Range range) {
    Length low = range.from().minus(end(Face.of(axis, -1), on));
    Length high = end(Face.of(axis, 1), on).minus(range.to());
    boolean fromHigh =
        letIn.contains(Face.of(axis, -1))
            || !letIn.contains(Face.of(axis, 1)) && high.isShorterThan(low);
    Length distance = (fromHigh ? high : low).max(Length.ZERO);
    Face face = Face.of(axis, fromHigh ? 1 : -1);
    How how = distance.isZero() ? How.FLUSH : How.FROM;
    return new Seat(how, part.name(), leaning.name(), face, distance);
  }

  /** Where the leaning part ends on the face that is touched, which a slanted cut may shorten. */
  private Length end(Face end, Face on) {
    return leaning.cuts(Slanted.Slope.class).stream()
        .filter(slope -> slope.from() == end && slope.towards() == on)
        .map(slope -> slope.second().on(end.axis()))
        .findFirst()
        .orElse(leaning.box().at(end));
  }
}
