package storyrod.build;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;

/**
 * The lines in which the screws of joints are driven, and the parts that stand in them: outwards
 * from each hole, as long as the tool, which is the drill that bores the pilot hole first. A part
 * that leans is looked at in its own frame.
 */
final class Driving {
  /** A drill with a bit and its holder (common practice, from memory), in mm. */
  static final double TOOL_MM = 250;

  /** Half of what the holder and the bit are thick (common practice, from memory), in mm. */
  private static final double HALF_MM = 8;

  /** How far from its hole the line is looked at first, past roundings of the wood, in mm. */
  private static final double FIRST_MM = HALF_MM + 2;

  /** Half of a drill's chuck, and how far a usual bit stands out of it (from memory), in mm. */
  private static final double HALF_CHUCK_MM = 22;

  private static final double CHUCK_MM = 45;

  private final Map<String, Part> parts;
  private final Map<String, List<Box>> wood = new LinkedHashMap<>();
  private final Map<Joint, List<Line>> known = new LinkedHashMap<>();
  private final Map<Joint, Set<String>> inTheWay = new LinkedHashMap<>();

  Driving(List<Part> parts) {
    this.parts =
        parts.stream()
            .collect(
                Collectors.toMap(
                    Part::name, part -> part, (one, other) -> one, LinkedHashMap::new));
  }

  /** A line outwards from the head of a screw; the direction is a unit vector. */
  record Line(Vector3D from, Vector3D out) {
    Vector3D at(double mm) {
      return from.add(out.multiply(mm));
    }

    /** Where it starts, to the nearest length. */
    Point start() {
      return new Point(
          Length.nearest(from.getX()), Length.nearest(from.getY()), Length.nearest(from.getZ()));
    }

    Line posed(Pose pose) {
      return new Line(pose.point(from), pose.direction(out));
    }
  }

  /**
   * The names of all parts, wherever they are in the order, that stand in the lines of a joint's
   * screws, but for the two that it joins.
   */
  Set<String> inTheWay(Joint joint) {
    return inTheWay.computeIfAbsent(joint, this::find);
  }

  private Set<String> find(Joint joint) {
    List<Line> lines = lines(joint);
    Set<String> found = new LinkedHashSet<>();
    for (Part part : lines.isEmpty() ? List.<Part>of() : parts.values()) {
      boolean isJoined = part.name().equals(joint.first()) || part.name().equals(joint.second());
      if (!isJoined && lines.stream().anyMatch(line -> runsInto(line, part, TOOL_MM))) {
        found.add(part.name());
      }
    }
    return found;
  }

  /** The first part among some that stands in the lines of a tool of some length in mm. */
  Optional<String> inTheWay(List<Line> lines, double mm, Predicate<String> there) {
    return parts.values().stream()
        .filter(part -> lines.stream().anyMatch(line -> isNear(line, part, mm)))
        .filter(part -> there.test(part.name()))
        .filter(part -> lines.stream().anyMatch(line -> runsInto(line, part, mm)))
        .map(Part::name)
        .findFirst();
  }

  /**
   * The names of all parts, wherever they are in the order, whose wood beside the line of a joint's
   * screw leaves the bit its room but not the chuck behind it.
   */
  Set<String> cramping(Joint joint) {
    List<Line> lines = lines(joint);
    return parts.values().stream()
        .filter(part -> joint.driven().stream().noneMatch(at -> at.part().equals(part.name())))
        .filter(part -> lines.stream().anyMatch(line -> cramps(part, line)))
        .map(Part::name)
        .collect(Collectors.toUnmodifiableSet());
  }

  private boolean cramps(Part part, Line line) {
    Line own = line.posed(part.pose().inverse());
    Box whole =
        around(own.at(CHUCK_MM), HALF_CHUCK_MM).around(around(own.at(TOOL_MM), HALF_CHUCK_MM));
    return whole.overlaps(part.box())
        && DoubleStream.iterate(CHUCK_MM, at -> at < TOOL_MM, at -> at + HALF_CHUCK_MM)
            .mapToObj(at -> around(own.at(at), HALF_CHUCK_MM))
            .anyMatch(space -> wood(part).stream().anyMatch(space::overlaps));
  }

  private static boolean isNear(Line line, Part part, double mm) {
    return around(line.at(FIRST_MM)).around(around(line.at(mm))).overlaps(part.bounds());
  }

  private boolean runsInto(Line line, Part part, double mm) {
    Line own = line.posed(part.pose().inverse());
    return around(own.at(FIRST_MM)).around(around(own.at(mm))).overlaps(part.box())
        && DoubleStream.iterate(FIRST_MM, at -> at < mm, at -> at + HALF_MM)
            .mapToObj(at -> around(own.at(at)))
            .anyMatch(space -> wood(part).stream().anyMatch(space::overlaps));
  }

  private List<Box> wood(Part part) {
    return wood.computeIfAbsent(part.name(), name -> Reach.ownWood(part));
  }

  private static Box around(Vector3D at) {
    return around(at, HALF_MM);
  }

  private static Box around(Vector3D at, double half) {
    return new Box(around(at.getX(), half), around(at.getY(), half), around(at.getZ(), half));
  }

  private static Range around(double at, double half) {
    return new Range(Length.nearest(at - half), Length.nearest(at + half));
  }

  /** The line of each screw of a joint; none where no hole tells it. */
  List<Line> lines(Joint joint) {
    return known.computeIfAbsent(joint, this::findLines);
  }

  private List<Line> findLines(Joint joint) {
    return joint.driven().map(driven -> parts.get(driven.part())).stream()
        .flatMap(
            part ->
                part.cuts().stream()
                    .filter(cut -> cut.at().equals(joint.at()))
                    .flatMap(cut -> lines(cut, joint, part))
                    .map(line -> line.posed(part.pose())))
        .toList();
  }

  private static Stream<Line> lines(Cut cut, Joint joint, Part part) {
    if (cut instanceof PocketHoles pockets) {
      return pockets.centres().stream().map(centre -> pocket(pockets, centre));
    }
    boolean isDriven =
        cut instanceof Cut.Holes holes
            && holes.through()
            && joint
                .driven()
                .filter(driven -> driven.face() == Face.nearest(part.pose().normal(holes.from())))
                .isPresent();
    return isDriven
        ? ((Cut.Holes) cut).centres().stream().map(at -> new Line(at.toMm(), cut.from().normal()))
        : Stream.empty();
  }

  /** A pocket hole runs from the end back to the face, flat over it. */
  static Line pocket(PocketHoles pockets, Point centre) {
    double angle = StrictMath.toRadians(pockets.angleDegrees());
    Vector3D out =
        pockets
            .end()
            .opposite()
            .normal()
            .multiply(StrictMath.cos(angle))
            .add(pockets.from().normal().multiply(StrictMath.sin(angle)));
    return new Line(centre.toMm(), out);
  }
}
