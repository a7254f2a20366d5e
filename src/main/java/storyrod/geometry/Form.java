package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * What is known of a body beyond its faces.
 *
 * @param square whether all its faces lie square to the axes
 * @param seams the lines between facets of one curved face
 */
record Form(boolean square, List<Seam> seams) {
  static final Form SQUARE = new Form(true, List.of());

  Form {
    seams = List.copyOf(seams);
  }

  Form with(Form other) {
    List<Seam> all = new ArrayList<>(seams);
    all.addAll(other.seams);
    return new Form(square && other.square, all);
  }

  Form moved(Vector3D byMm) {
    return new Form(square, seams.stream().map(seam -> seam.moved(byMm)).toList());
  }

  Form posed(Pose pose) {
    return new Form(false, seams.stream().map(seam -> seam.posed(pose)).toList());
  }
}
