package storyrod.drawing;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import storyrod.drawing.Seen.Stroke;

/** A straight line in space together with its picture; its parameter runs from 0 to 1 on both. */
record ScreenLine(Vector3D from, Vector3D to, Stroke picture) {
  static ScreenLine of(Vector3D from, Vector3D to, View view) {
    return new ScreenLine(from, to, new Stroke(view.project(from), view.project(to)));
  }

  double length() {
    return picture.length();
  }

  /** The picture shifted to its own left (or, if negative, right) by a distance in mm. */
  Stroke beside(double shift) {
    double dx = shift * (picture.to().y() - picture.from().y()) / length();
    double dy = -shift * (picture.to().x() - picture.from().x()) / length();
    return new Stroke(picture.from().plus(dx, dy), picture.to().plus(dx, dy));
  }

  Envelope envelope() {
    return new Envelope(
        new Coordinate(picture.from().x(), picture.from().y()),
        new Coordinate(picture.to().x(), picture.to().y()));
  }
}
