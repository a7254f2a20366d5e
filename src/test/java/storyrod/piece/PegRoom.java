package storyrod.piece;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;

/**
 * Whether a square peg has room in the holes of other parts. Overlaps of solids leave round bores
 * out, so it is asked at points of the peg, at most {@value #STEP_MM} mm apart.
 */
final class PegRoom {
  private static final double STEP_MM = 0.5;

  /** How far inside the peg its outermost points lie, in mm. */
  private static final double INSIDE_MM = 0.001;

  private PegRoom() {}

  static boolean isInWood(Part peg, Part part) {
    return peg.box().overlaps(part.bounds())
        && points(peg.box()).anyMatch(point -> isWood(part.solid(), point));
  }

  private static boolean isWood(Solid solid, Vector3D point) {
    return solid.holds(point) && solid.bores().stream().noneMatch(bore -> isIn(bore, point));
  }

  private static boolean isIn(Cylinder bore, Vector3D point) {
    Vector3D from = point.subtract(bore.mouth());
    double down = from.dot(bore.direction());
    double out = from.subtract(bore.direction().multiply(down)).norm();
    return down >= 0 && down <= bore.depthMm() && out <= bore.radiusMm();
  }

  private static Stream<Vector3D> points(Box box) {
    return places(box.on(Axis.X))
        .boxed()
        .flatMap(
            x ->
                places(box.on(Axis.Y))
                    .boxed()
                    .flatMap(y -> places(box.on(Axis.Z)).mapToObj(z -> Vector3D.of(x, y, z))));
  }

  private static DoubleStream places(Range range) {
    double from = range.from().toMm() + INSIDE_MM;
    double length = range.to().toMm() - INSIDE_MM - from;
    int steps = (int) Math.ceil(length / STEP_MM);
    return IntStream.rangeClosed(0, steps).mapToDouble(i -> from + length * i / steps);
  }
}
