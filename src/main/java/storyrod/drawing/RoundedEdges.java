package storyrod.drawing;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;
import storyrod.piece.Cut;

/** The edges of a part that a step rounds, on its solid, which keeps them sharp. */
final class RoundedEdges {
  private static final double ON_PLANE_MM = 1e-3;

  /** A side of an outline belongs to the face to which it looks within 45 degrees. */
  private static final double LOOKS_AT = Math.sqrt(0.5) - 1e-9;

  private static final double NEAR_MM = 0.02;

  private final Solid solid;

  RoundedEdges(Solid solid) {
    this.solid = solid;
  }

  /** A straight stretch of an edge, in the frame of the solid, in mm. */
  record Stretch(Vector3D from, Vector3D to) {
    /** Whether a line of a view lies on it. */
    boolean has(Stroke stroke, View view) {
      At a = view.project(from);
      At b = view.project(to);
      return isOn(stroke.from(), a, b) && isOn(stroke.to(), a, b);
    }

    private static boolean isOn(At at, At a, At b) {
      return Math.abs(a.distance(at) + at.distance(b) - a.distance(b)) < NEAR_MM;
    }
  }

  /** All of a cut, along curved outlines too. */
  List<Stretch> of(Cut.Roundover cut) {
    return cut.around()
        ? onFace(cut.from()).toList()
        : cut.edges().stream().flatMap(this::along).toList();
  }

  private Stream<Stretch> along(Edge edge) {
    return outer(edge.one())
        .flatMap(
            face ->
                sides(face.outer())
                    .filter(each -> outwards(each, face).dot(edge.other().normal()) >= LOOKS_AT));
  }

  private Stream<Stretch> onFace(Face face) {
    return outer(face).flatMap(each -> sides(each.outer()));
  }

  /** The faces of the solid that lie farthest out on one side. */
  private Stream<FlatFace> outer(Face side) {
    List<FlatFace> faces =
        solid.faces().stream().filter(f -> f.normal().dot(side.normal()) > 1 - 1e-9).toList();
    double out = faces.stream().mapToDouble(FlatFace::offsetMm).max().orElse(0);
    return faces.stream().filter(face -> out - face.offsetMm() < ON_PLANE_MM);
  }

  static Stream<Stretch> sides(List<Vector3D> ring) {
    return IntStream.range(0, ring.size())
        .mapToObj(i -> new Stretch(ring.get(i), ring.get((i + 1) % ring.size())));
  }

  /** Outer rings run counter-clockwise, so the wood is at the left. */
  private static Vector3D outwards(Stretch side, FlatFace face) {
    return side.to().subtract(side.from()).cross(face.normal()).normalize();
  }
}
