package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Intervals.Stretch;

/** Works out the wood that bores take from a flat body. */
final class Bores {
  private static final double TOUCHING_MM = 1e-6;
  private static final double ON_ONE_LINE_MM = 1e-3;

  private final RegionBSPTree3D body;
  private final List<Cylinder> bores;

  Bores(RegionBSPTree3D body, List<Cylinder> bores) {
    this.body = body;
    this.bores = bores;
  }

  /**
   * The volume in mm³: for each bore its cross-section times the length of its axis inside the
   * body, less the stretches where a wider bore, or an equal one that stands earlier, runs on the
   * same axis.
   */
  double volumeMm3() {
    double volume = 0;
    for (int i = 0; i < bores.size(); i++) {
      double radius = bores.get(i).radiusMm();
      volume += Math.PI * radius * radius * ownStretches(i).total();
    }
    return volume;
  }

  private Intervals ownStretches(int index) {
    Cylinder bore = bores.get(index);
    List<Stretch> wood = new ArrayList<>();
    collect(body.getRoot(), bore, new Stretch(0, bore.depthMm()), wood);
    List<Stretch> others = new ArrayList<>();
    for (int i = 0; i < bores.size(); i++) {
      if (takesFirst(i, index) && onOneAxis(bores.get(i), bore)) {
        others.add(along(bore, bores.get(i)));
      }
    }
    Intervals taken = Intervals.union(others, TOUCHING_MM);
    return Intervals.union(wood, TOUCHING_MM).minus(taken);
  }

  private boolean takesFirst(int other, int index) {
    double difference = bores.get(other).radiusMm() - bores.get(index).radiusMm();
    return difference > 0 || difference == 0 && other < index;
  }

  private static boolean onOneAxis(Cylinder one, Cylinder two) {
    return distanceToAxis(one.mouth(), two) < ON_ONE_LINE_MM
        && distanceToAxis(one.end(), two) < ON_ONE_LINE_MM;
  }

  private static double distanceToAxis(Vector3D point, Cylinder bore) {
    return point.subtract(bore.mouth()).cross(bore.direction()).norm();
  }

  private static Stretch along(Cylinder axis, Cylinder other) {
    double start = other.mouth().subtract(axis.mouth()).dot(axis.direction());
    double end = other.end().subtract(axis.mouth()).dot(axis.direction());
    return new Stretch(Math.min(start, end), Math.max(start, end));
  }

  /** Walks down the tree and keeps the stretches of the axis that end up in the wood. */
  private static void collect(
      RegionBSPTree3D.RegionNode3D node, Cylinder bore, Stretch stretch, List<Stretch> wood) {
    if (stretch.length() <= 0) {
      return;
    }
    if (node.isLeaf()) {
      if (node.isInside()) {
        wood.add(stretch);
      }
      return;
    }
    Plane plane = (Plane) node.getCut().getHyperplane();
    double start = plane.offset(bore.mouth());
    double slope = plane.getNormal().dot(bore.direction());
    collect(node.getMinus(), bore, below(stretch, start, slope), wood);
    collect(node.getPlus(), bore, below(stretch, -start, -slope), wood);
  }

  /**
   * The part of a stretch where {@code start + slope * t} is negative; all of it where the axis
   * lies in the plane, for there may be wood on both of its sides.
   */
  private static Stretch below(Stretch stretch, double start, double slope) {
    if (Math.abs(slope) < 1e-12) {
      return start < ON_ONE_LINE_MM ? stretch : new Stretch(0, 0);
    }
    double zero = -start / slope;
    return slope > 0
        ? new Stretch(stretch.from(), Math.min(stretch.to(), zero))
        : new Stretch(Math.max(stretch.from(), zero), stretch.to());
  }
}
