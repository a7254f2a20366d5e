package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.FlatFace;

/** The edges of the faces at which a part is sawn off because wood that goes on is left out. */
final class SawnEdges {
  private static final double ON_PLANE_MM = 1e-3;

  private final List<RoundedEdges.Stretch> edges;
  private final View view;

  SawnEdges(Taken taken, View view) {
    this.view = view;
    this.edges =
        Stream.of(taken.left(), taken.waste())
            .flatMap(solid -> solid.faces().stream())
            .filter(face -> taken.sawnAtMm().stream().anyMatch(at -> isAt(face, at)))
            .flatMap(face -> RoundedEdges.sides(face.outer()))
            .toList();
  }

  private static boolean isAt(FlatFace face, double at) {
    return face.outer().stream().allMatch(each -> Math.abs(each.getX() - at) < ON_PLANE_MM);
  }

  /** Whether a line of the view lies on one of them. */
  boolean have(Stroke stroke) {
    return edges.stream().anyMatch(each -> each.has(stroke, view));
  }
}
