package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.rule.Job;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;

/**
 * Finds screws that no driver reaches when they are driven: the line of each, outwards from its
 * hole, is held against the wood of all that stands by then. Holes are drilled while a part lies by
 * itself, and pilot holes in the line of the screws, so what a driver reaches a drill reaches too.
 */
final class DriverReach {
  /** A drill with a bit and its holder (common practice, from memory), in mm. */
  private static final double TOOL_MM = 250;

  /** Half of what the holder and the bit are thick (common practice, from memory), in mm. */
  private static final double HALF_MM = 8;

  /** How far from its hole the line is looked at first, past roundings of the wood, in mm. */
  private static final double FIRST_MM = HALF_MM + 2;

  private final Job job;

  DriverReach(Job job) {
    this.job = job;
  }

  List<Diagnostic> findings() {
    List<Diagnostic> findings = new ArrayList<>();
    for (Placing placing : job.placings()) {
      placing.closes().stream()
          .flatMap(joint -> finding(joint, there(placing)).stream())
          .findFirst()
          .ifPresent(findings::add);
    }
    return findings;
  }

  /** What stands when a unit is fixed, part by part, with the unit itself. */
  private List<Part> there(Placing placing) {
    return Stream.concat(placing.standing().stream(), placing.unit().partNames().stream())
        .map(name -> job.piece().part(name))
        .toList();
  }

  private Optional<Diagnostic> finding(Joint joint, List<Part> there) {
    List<Vector3D[]> lines = lines(joint);
    return there.stream()
        .filter(part -> !part.name().equals(joint.first()) && !part.name().equals(joint.second()))
        .filter(part -> lines.stream().anyMatch(line -> runsInto(line[0], line[1], part)))
        .findFirst()
        .map(part -> told(joint, part));
  }

  private static Diagnostic told(Joint joint, Part inTheWay) {
    String screws = "the screws of `" + joint.first() + "` to `" + joint.second() + "`";
    return Diagnostic.advice(
            "driver-blocked",
            joint.at(),
            screws
                + " cannot be driven: `"
                + inTheWay.name()
                + "` stands in the line of the driver")
        .also(inTheWay.at(), "`" + inTheWay.name() + "` is there by then")
        .hint(
            "fit `"
                + inTheWay.name()
                + "` after them, drive them from the other side, or see that a right-angle driver"
                + " finds room");
  }

  private boolean runsInto(Vector3D mouth, Vector3D out, Part part) {
    Unit unit = new Unit(part.name(), Unit.PIECE, List.of(part));
    return IntStream.iterate((int) FIRST_MM, at -> at < TOOL_MM, at -> at + (int) HALF_MM)
        .mapToObj(at -> around(mouth.add(out.multiply(at))))
        .anyMatch(space -> job.reach().isIn(space, unit));
  }

  private static Box around(Vector3D at) {
    return new Box(around(at.getX()), around(at.getY()), around(at.getZ()));
  }

  private static Range around(double at) {
    return new Range(Length.nearest(at - HALF_MM), Length.nearest(at + HALF_MM));
  }

  /** For each screw, where its head sits and the unit vector from there towards the driver. */
  private List<Vector3D[]> lines(Joint joint) {
    return joint.driven().map(driven -> job.piece().part(driven.part())).stream()
        .filter(part -> !part.pose().isTurned())
        .flatMap(part -> part.cuts().stream().filter(cut -> cut.at().equals(joint.at())))
        .flatMap(cut -> lines(cut, joint))
        .toList();
  }

  private static Stream<Vector3D[]> lines(Cut cut, Joint joint) {
    if (cut instanceof PocketHoles pockets) {
      return pockets.centres().stream().map(centre -> pocket(pockets, centre));
    }
    boolean isDriven =
        cut instanceof Cut.Holes holes
            && holes.through()
            && joint.driven().filter(driven -> driven.face() == holes.from()).isPresent();
    return isDriven
        ? ((Cut.Holes) cut)
            .centres().stream().map(at -> new Vector3D[] {at.toMm(), cut.from().normal()})
        : Stream.empty();
  }

  /** A pocket hole runs from the end back to the face, flat over it. */
  private static Vector3D[] pocket(PocketHoles pockets, Point centre) {
    double angle = StrictMath.toRadians(pockets.angleDegrees());
    Vector3D out =
        pockets
            .end()
            .opposite()
            .normal()
            .multiply(StrictMath.cos(angle))
            .add(pockets.from().normal().multiply(StrictMath.sin(angle)));
    return new Vector3D[] {centre.toMm(), out};
  }
}
