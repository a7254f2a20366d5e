package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;

/**
 * What is shown of a joint's part where the joint is taken apart, from wherever it is looked at.
 *
 * @param broken the faces at which it is broken off, in mm of the piece
 */
record JointWood(Scene.Item item, List<FlatFace> broken) {
  private static final double ON_PLANE_MM = 1e-3;

  JointWood {
    broken = List.copyOf(broken);
  }

  /** The two parts, the first of them moved out of the other. */
  static List<JointWood> of(JointPlace place) {
    Vector3D offset = place.joint().entry().opposite().normal().multiply(place.apart().toMm());
    return List.of(of(place, place.first(), offset), of(place, place.second(), Vector3D.ZERO));
  }

  private static JointWood of(JointPlace place, JointPart part, Vector3D offset) {
    Solid solid = part.part().placed();
    List<Face> cut = Stream.of(Face.values()).filter(face -> isBroken(place, part, face)).toList();
    for (Face face : cut) {
      solid = solid.trimmed(corner(place, face), face.normal());
    }
    List<FlatFace> broken = new ArrayList<>();
    for (Face face : cut) {
      solid.faces().stream().filter(each -> lies(place, each, face)).forEach(broken::add);
    }
    return new JointWood(new Scene.Item(part.part().name(), solid, offset), broken);
  }

  private static boolean isBroken(JointPlace place, JointPart part, Face face) {
    double end = part.part().bounds().at(face).toMm();
    double cut = place.window().at(face).toMm();
    return face.sign() * (end - cut) > ON_PLANE_MM;
  }

  /** A point of the window's side. */
  private static Vector3D corner(JointPlace place, Face face) {
    return place.window().middle().with(face.axis(), place.window().at(face)).toMm();
  }

  private static boolean lies(JointPlace place, FlatFace each, Face face) {
    return each.normal().dot(face.normal()) > 1 - 1e-9
        && Math.abs(each.outer().getFirst().subtract(corner(place, face)).dot(face.normal()))
            < ON_PLANE_MM;
  }

  /** No more of it can be seen in a view, in mm². */
  double facingMm2(View view) {
    return item.solid().faces().stream()
        .mapToDouble(each -> each.areaMm2() * Math.max(0, each.normal().dot(view.toViewer())))
        .sum();
  }

  /** The rings of the faces at which it is broken off, as they are seen. */
  List<JointApart.Broken> broken(View view) {
    return broken.stream()
        .map(face -> new JointApart.Broken(face.normal(), rings(face, view)))
        .toList();
  }

  private List<List<Drawing.At>> rings(FlatFace face, View view) {
    return Stream.concat(Stream.of(face.outer()), face.openings().stream())
        .map(ring -> ring.stream().map(item.offset()::add).map(view::project).toList())
        .toList();
  }
}
