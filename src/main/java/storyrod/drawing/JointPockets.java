package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Drilling;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/** The pocket holes of a joint with their screws, of which a section shows the whole length. */
final class JointPockets {
  private JointPockets() {}

  /** Both steps of each hole, and the way of its screw beyond the end; none of a turned part. */
  static List<Cylinder> of(JointPart part, Piece piece) {
    return part.isSquare()
        ? Cut.only(PocketHoles.class, part.cuts()).stream()
            .flatMap(pockets -> bores(pockets, part, piece))
            .toList()
        : List.of();
  }

  private static Stream<Cylinder> bores(PocketHoles pockets, JointPart part, Piece piece) {
    Stream<Cylinder> screws =
        pockets.forWhat().flatMap(piece::item).flatMap(ItemEntry::length).stream()
            .flatMap(length -> Drilling.beyond(pockets, length).stream());
    return Stream.concat(Drilling.of(pockets, part.part().box()).stream(), screws);
  }

  /** From the middle of its mouth to the middle of its far end. */
  static Range along(Axis axis, Cylinder bore) {
    Vector3D direction = Point.ORIGIN.with(axis, Length.mm(1)).toMm();
    Length mouth = Length.nearest(bore.mouth().dot(direction));
    Length end = Length.nearest(bore.end().dot(direction));
    return new Range(mouth.min(end), mouth.max(end));
  }
}
