package storyrod.drawing;

import java.util.List;
import storyrod.geometry.Face;

/** The sides from which the fasteners of a step are driven, one for each fastener. */
record DrivenSides(List<Face> faces) {
  DrivenSides {
    faces = List.copyOf(faces);
  }

  static DrivenSides of(List<Hardware> hardware) {
    return new DrivenSides(
        hardware.stream().flatMap(each -> each.placed().drivenFrom().stream()).toList());
  }

  /** The share of the fasteners that come from a side which a view shows; all if there are none. */
  double shown(View view) {
    long shown = faces.stream().filter(face -> face.normal().dot(view.toViewer()) > 0).count();
    return faces.isEmpty() ? 1 : (double) shown / faces.size();
  }
}
