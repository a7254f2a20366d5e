package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.CutKind;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Point;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Cut;

/**
 * Where a straight cut lies in its part.
 *
 * @param from the face from which the tool enters
 * @param edge the side from which it is set out
 * @param box what is measured, in the frame of the flat part
 * @param part the part's own box
 */
record CutPlace(Face from, Face edge, Box box, Box part) {
  /** Empty where a cut has no walls to measure. */
  static Optional<CutPlace> of(FlatPart flat, Cut cut) {
    if (cut instanceof Cut.Trench trench) {
      Face edge = CutKind.edge(flat.box(), trench);
      return Optional.of(new CutPlace(trench.from(), edge, trench.removed(), flat.box()));
    }
    if (cut instanceof Cut.Tenon tenon && tenon.from().axis() != Axis.Y) {
      return Optional.of(new CutPlace(tenon.from(), Face.FRONT, tenon.tenon(), flat.box()));
    }
    return Optional.empty();
  }

  Length distance() {
    return part.at(edge).minus(box.at(edge)).abs();
  }

  Length width() {
    return box.size(edge.axis());
  }

  Length depth() {
    return box.size(from.axis());
  }

  boolean isThrough() {
    return depth().equals(part.size(from.axis()));
  }

  Axis run() {
    return Axis.other(from.axis(), edge.axis());
  }

  /** A point of the part by its distance from the edge and from the face, in mm. */
  At at(Vector3D point) {
    return new At(
        -edge.normal().dot(point) + edge.sign() * part.at(edge).toMm(),
        -from.normal().dot(point) + from.sign() * part.at(from).toMm());
  }

  /** The faces of a solid that a plane across the middle of the cut lays open. */
  List<FlatFace> sawn(Solid solid) {
    Point middle = box().middle();
    Vector3D at = Vector3D.of(middle.x().toMm(), middle.y().toMm(), middle.z().toMm());
    return solid.sawn(at, Face.of(run(), 1).normal());
  }
}
