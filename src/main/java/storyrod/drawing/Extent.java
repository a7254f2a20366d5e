package storyrod.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.piece.Part;

/** Boxes round parts in their places, and directions in space. */
final class Extent {
  private Extent() {}

  /** The box round some parts, at least one. */
  static Box around(List<Part> parts) {
    return parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
  }

  /** Whether two boxes would meet if one were moved far enough along an axis. */
  static boolean inLine(Box one, Box two, Axis along) {
    Box levelled = one.with(along, two.on(along));
    return levelled.overlaps(two);
  }

  /** The diagonal of a box in mm. */
  static double diagonalMm(Box box) {
    return high(box).distance(low(box));
  }

  static Vector3D middle(Box box) {
    return low(box).lerp(high(box), 0.5);
  }

  /** The middle of a side of a box. */
  static Vector3D side(Box box, Face face) {
    Vector3D out = direction(face);
    double half = box.size(face.axis()).toMm() / 2;
    return middle(box).add(out.multiply(half));
  }

  /** The unit vector along which a face looks. */
  static Vector3D direction(Face face) {
    return switch (face.axis()) {
      case X -> Vector3D.of(face.sign(), 0, 0);
      case Y -> Vector3D.of(0, face.sign(), 0);
      case Z -> Vector3D.of(0, 0, face.sign());
    };
  }

  private static Vector3D low(Box box) {
    return Vector3D.of(box.x().from().toMm(), box.y().from().toMm(), box.z().from().toMm());
  }

  private static Vector3D high(Box box) {
    return Vector3D.of(box.x().to().toMm(), box.y().to().toMm(), box.z().to().toMm());
  }
}
