package storyrod.piece;

import java.util.List;
import java.util.stream.IntStream;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/**
 * The rectangle as which a part begins, on the face on which it is set out.
 *
 * @param face the face on which the part is set out
 */
record Rectangle(Blank blank, Face face) {
  static Rectangle of(Blank blank) {
    return new Rectangle(blank, PathReader.face(blank));
  }

  /** Its four sides, counter-clockwise on the axes of its plane. */
  List<Face> sides() {
    Axis across = face.axis() == Axis.X ? Axis.Y : Axis.X;
    Axis up = Axis.other(face.axis(), across);
    return List.of(Face.of(up, -1), Face.of(across, 1), Face.of(up, 1), Face.of(across, -1));
  }

  /** Its four corners, each at the end of the side in the same place of {@link #sides}. */
  List<Edge> corners() {
    List<Face> sides = sides();
    return IntStream.range(0, sides.size())
        .mapToObj(i -> new Edge(sides.get(i), sides.get((i + 1) % sides.size())))
        .toList();
  }

  /** The axis on which a side runs. */
  Axis along(Face side) {
    return Axis.other(face.axis(), side.axis());
  }

  /** Where a line lies that runs along a side, so far inside it. */
  Length inwards(Face side, Length by) {
    return blank.box().at(side).minus(by.times(side.sign()));
  }

  /** The start of a line that runs along a side. */
  Point on(Face side, Length at) {
    return blank.box().low().with(face.axis(), blank.box().at(face)).with(side.axis(), at);
  }
}
