package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/** The bores that holes and pocket holes leave in the wood. */
public final class Drilling {
  /** How much of a pocket hole's axis the narrow step drills, in mm (common practice). */
  private static final double NARROW_STEP_MM = 14;

  /** The narrow step runs on past the end, so that its whole round breaks through. */
  private static final double PAST_THE_END_MM = 2;

  private Drilling() {}

  /** The bores of a row of holes, in the frame in which the part is made. */
  public static List<Cylinder> of(Cut.Holes holes) {
    Vector3D inwards = inwards(holes.from());
    return holes.centres().stream()
        .map(
            centre ->
                new Cylinder(
                    centre.toMm(), inwards, holes.diameter().toMm() / 2, holes.depth().toMm()))
        .toList();
  }

  /**
   * For each pocket hole the wide step from the face and the narrow one out through the end.
   *
   * @param box the part's box, of which the mouths lie on one face
   */
  public static List<Cylinder> of(PocketHoles pockets, Box box) {
    List<Cylinder> bores = new ArrayList<>();
    for (Point exit : pockets.centres()) {
      bores.addAll(pocket(pockets, exit, box.at(pockets.from())));
    }
    return bores;
  }

  /** The bores that are made in place, in the frame in which the part is made. */
  public static List<Cylinder> of(InPlace cut) {
    double radius = cut.diameter().toMm() / 2;
    return cut.bores().stream()
        .map(
            bore -> {
              Vector3D way = bore.end().toMm().subtract(bore.mouth().toMm());
              return new Cylinder(bore.mouth().toMm(), way.normalize(), radius, way.norm());
            })
        .toList();
  }

  /** The ways that pocket screws of some length take beyond the end, as thick as their shanks. */
  public static List<Cylinder> beyond(PocketHoles pockets, Length screw) {
    double reach = Math.max(0, screw.toMm() - NARROW_STEP_MM);
    return pockets.centres().stream()
        .map(exit -> new Cylinder(exit.toMm(), along(pockets), pockets.pilot().toMm() / 2, reach))
        .toList();
  }

  /** The direction in which a pocket screw is driven. */
  private static Vector3D along(PocketHoles pockets) {
    double angle = StrictMath.toRadians(pockets.angleDegrees());
    Vector3D towardsEnd = unit(pockets.end().axis()).multiply(pockets.end().sign());
    return towardsEnd
        .multiply(StrictMath.cos(angle))
        .add(inwards(pockets.from()).multiply(StrictMath.sin(angle)));
  }

  private static List<Cylinder> pocket(PocketHoles pockets, Point exit, Length surface) {
    double angle = StrictMath.toRadians(pockets.angleDegrees());
    Vector3D along = along(pockets);
    double down = exit.on(pockets.from().axis()).minus(surface).abs().toMm();
    double run = down / StrictMath.sin(angle);
    double wide = Math.max(run - NARROW_STEP_MM, run / 2);
    Vector3D mouth = exit.toMm().subtract(along.multiply(run));
    Cylinder wideStep = new Cylinder(mouth, along, pockets.diameter().toMm() / 2, wide);
    Cylinder narrowStep =
        new Cylinder(
            wideStep.end(), along, pockets.pilot().toMm() / 2, run - wide + PAST_THE_END_MM);
    return List.of(wideStep, narrowStep);
  }

  private static Vector3D inwards(Face face) {
    return unit(face.axis()).multiply(-face.sign());
  }

  static Vector3D unit(Axis axis) {
    return switch (axis) {
      case X -> Vector3D.of(1, 0, 0);
      case Y -> Vector3D.of(0, 1, 0);
      case Z -> Vector3D.of(0, 0, 1);
    };
  }
}
