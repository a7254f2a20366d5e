package storyrod.build;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Column.End;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

/**
 * Where clamps go in a step that glues parts: for each joint, a line through it along which it
 * closes, from the outermost face on one side to that on the other, through wood without a gap. A
 * face will do where it is square to the line and as large as a pad, and has room for the jaw, and
 * the bar must find room beside the line ({@link BarRoom}).
 *
 * <p>Joints whose faces meet at an angle, lap, or lock into each other are pressed in other ways
 * and left out, and so are those that fasteners hold while the glue sets.
 */
public final class Clamping {
  /** Half of the least face that a pad bears on well (common practice), in mm. */
  private static final double HALF_PAD_MM = 4;

  /** What the jaw of a bar clamp takes behind a face (common practice, from memory), in mm. */
  private static final double JAW_MM = 40;

  /** Half of the column of wood that carries the pressure, in mm. */
  private static final double HALF_LINE_MM = 1;

  private static final double[] SHARES = {0.5, 0.25, 0.75, 0.1, 0.9};

  private final List<Part> parts;
  private final Map<Part, List<Box>> wood = new IdentityHashMap<>();
  private final BarRoom bars;

  private Clamping(List<Part> parts) {
    this.parts = parts;
    parts.forEach(part -> wood.put(part, Reach.woodOf(part)));
    bars = new BarRoom(wood.values().stream().flatMap(List::stream).toList(), JAW_MM);
  }

  /**
   * Equal clamps on the same two parts.
   *
   * @param low the full name of the part under the jaw on the axis's lower side
   * @param high that under the other jaw
   * @param opening between the two faces; where one is curved, at its widest
   * @param curved whether some of them open less, on a curved face
   */
  public record Clamps(
      Axis axis, String low, String high, int count, Length opening, boolean curved) {
    Clamps(Axis axis, String low, String high, int count, Length opening) {
      this(axis, low, high, count, opening, false);
    }

    Clamps and(int more) {
      return new Clamps(axis, low, high, count + more, opening, curved);
    }
  }

  /**
   * What a step needs.
   *
   * @param bare the joints on which no two faces take a clamp
   * @param cauled of these, the ones that a stiff caul presses, clamped at both its ends
   * @param through the jaws that press on through a part which none of the joints holds
   */
  public record Found(
      List<Clamps> clamps, List<Joint> bare, List<Joint> cauled, List<Through> through) {}

  /** The clamps of a step; none where it glues nothing that clamps press along a line. */
  public static Found of(Piece piece, Step step) {
    List<Part> parts =
        Stream.concat(step.newParts().stream(), step.standing().stream())
            .distinct()
            .map(piece::part)
            .toList();
    List<Joint> glued =
        step.operations().stream()
            .filter(operation -> operation.verb() == Verb.FIT)
            .flatMap(operation -> operation.joints().stream())
            .filter(joint -> isPressed(piece, joint))
            .toList();
    return of(parts, glued, step.newParts());
  }

  /** The clamps for glued joints among parts, some of which come now, by full name. */
  static Found of(List<Part> parts, List<Joint> glued, List<String> comes) {
    return new Clamping(parts).found(glued, comes);
  }

  /** The clamps that draw home what pegs hold without glue, until the pegs are in. */
  public static List<Clamps> drawing(Piece piece, Step step) {
    List<Part> parts =
        Stream.concat(step.newParts().stream(), step.standing().stream())
            .distinct()
            .map(piece::part)
            .toList();
    List<Joint> pegged =
        step.operations().stream()
            .flatMap(operation -> operation.joints().stream())
            .filter(joint -> Traits.isPegged(piece, joint))
            .toList();
    return new Clamping(parts).found(pegged, step.newParts()).clamps();
  }

  /** Whether only clamps across its faces hold a joint while the glue sets. */
  static boolean isPressed(Piece piece, Joint joint) {
    return piece.isClamped(joint)
        && Stream.of(joint.first(), joint.second())
            .flatMap(part -> piece.part(part).cuts().stream())
            .filter(cut -> cut.at().equals(joint.at()))
            .noneMatch(Clamping::isPressedElse);
  }

  private static boolean isPressedElse(Cut cut) {
    return cut instanceof Slanted.Slope
        || cut instanceof Dovetails
        || cut instanceof Comb
        || List.of("half-lap", "cross-lap", "bridle cheek", "box joint").contains(cut.term());
  }

  /** A line of pressure, from face to face. */
  record Line(Joint joint, String low, String high, Length opening, boolean curved) {
    Axis axis() {
      return joint.entry().axis();
    }

    boolean isLike(Clamps clamps) {
      return clamps.axis() == axis()
          && clamps.low().equals(low)
          && clamps.high().equals(high)
          && clamps.opening().equals(opening);
    }
  }

  private Found found(List<Joint> joints, List<String> comes) {
    List<Joint> bare = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    for (Joint joint : joints) {
      Optional<Line> line = line(joint);
      line.filter(each -> lines.stream().noneMatch(other -> isBehind(other, each)))
          .ifPresent(lines::add);
      if (line.isEmpty()) {
        bare.add(joint);
      }
    }
    List<Clamps> clamps = new ArrayList<>();
    lines.forEach(line -> add(line, clamps));
    List<Joint> cauled = bare.stream().filter(cauls(comes, lines)::press).toList();
    bare.removeAll(cauled);
    List<Through> through = Through.of(lines, parts, joints);
    return new Found(List.copyOf(clamps), List.copyOf(bare), cauled, through);
  }

  private Cauls cauls(List<String> comes, List<Line> lines) {
    return new Cauls(
        parts.stream().filter(part -> comes.contains(part.name())).toList(), List.copyOf(lines));
  }

  private static boolean isBehind(Line line, Line next) {
    return line.axis() == next.axis()
        && line.low().equals(next.low())
        && line.high().equals(next.high())
        && GlueUps.isBehind(line.joint().contact(), next.joint().contact(), line.axis());
  }

  private static void add(Line line, List<Clamps> clamps) {
    int count = GlueUps.clampsFor(line.joint().contact(), line.axis());
    for (int i = 0; i < clamps.size(); i++) {
      Clamps there = clamps.get(i);
      if (line.isLike(there)) {
        clamps.set(i, there.and(count));
        return;
      }
    }
    clamps.add(
        new Clamps(line.axis(), line.low(), line.high(), count, line.opening(), line.curved()));
  }

  private Optional<Line> line(Joint joint) {
    Axis axis = joint.entry().axis();
    return spots(joint.contact(), axis).stream()
        .flatMap(spot -> line(joint, spot).stream())
        .findFirst();
  }

  /** Points of the contact, from its middle to its ends and edges. */
  private static List<Point> spots(Box contact, Axis axis) {
    List<Axis> across = Stream.of(Axis.values()).filter(each -> each != axis).toList();
    boolean isFirstLong = contact.size(across.get(0)).isLongerThan(contact.size(across.get(1)));
    Axis along = across.get(isFirstLong ? 0 : 1);
    Axis over = across.get(isFirstLong ? 1 : 0);
    Point corner = new Point(contact.x().from(), contact.y().from(), contact.z().from());
    List<Point> spots = new ArrayList<>();
    for (double aside : SHARES) {
      for (double share : SHARES) {
        spots.add(
            corner
                .with(along, middle(contact.on(along), share))
                .with(over, middle(contact.on(over), aside)));
      }
    }
    return spots;
  }

  private static Length middle(Range range, double share) {
    return Length.nearest(range.from().toMm() + share * range.length().toMm());
  }

  private Optional<Line> line(Joint joint, Point spot) {
    Axis axis = joint.entry().axis();
    Optional<End> low = end(spot, Face.of(axis, -1));
    Optional<End> high = end(spot, Face.of(axis, 1));
    return low.flatMap(
        one ->
            high.filter(other -> bars.isRound(spot, axis, new Range(one.at(), other.at())))
                .map(other -> line(joint, one, other)));
  }

  /** Several clamps beside each other on a curved face open as far as its widest place asks. */
  private static Line line(Joint joint, End low, End high) {
    Axis axis = joint.entry().axis();
    boolean isOne = GlueUps.clampsFor(joint.contact(), axis) == 1;
    Length from = isOne ? low.at() : widest(low, Face.of(axis, -1));
    Length to = isOne ? high.at() : widest(high, Face.of(axis, 1));
    boolean curved = !from.equals(low.at()) || !to.equals(high.at());
    return new Line(joint, low.part().name(), high.part().name(), to.minus(from), curved);
  }

  /** How far a part reaches whose outline is shaped across the line. */
  private static Length widest(End end, Face way) {
    return end.part().cuts(Cut.Shaped.class).stream()
            .anyMatch(shaped -> !shaped.inside() && shaped.from().axis() != way.axis())
        ? end.part().bounds().at(way)
        : end.at();
  }

  private Optional<End> end(Point spot, Face way) {
    return new Column(around(spot, HALF_LINE_MM), way, parts, wood)
        .last(spot.on(way.axis()))
        .filter(end -> bears(end.part(), spot.with(way.axis(), end.at()), way));
  }

  /** Whether a part's face is square to the line, large enough for a pad, and free for a jaw. */
  private boolean bears(Part part, Point spot, Face way) {
    Box pad = around(spot, HALF_PAD_MM);
    Box jaw = pad.with(way.axis(), outside(spot.on(way.axis()), way));
    List<Box> reaching =
        wood.get(part).stream().filter(box -> box.at(way).equals(spot.on(way.axis()))).toList();
    return !part.pose().isTurned()
        && corners(pad, way.axis()).allMatch(at -> isOver(reaching, at, way.axis()))
        && part.cuts(Slanted.Slope.class).stream().noneMatch(slope -> isSloped(slope, spot, way))
        && parts.stream()
            .filter(other -> other.bounds().overlaps(jaw))
            .flatMap(other -> wood.get(other).stream())
            .noneMatch(jaw::overlaps);
  }

  private static Range outside(Length at, Face way) {
    return new Range(at, at).extended(way.sign(), Length.nearest(JAW_MM));
  }

  private static Stream<Point> corners(Box pad, Axis axis) {
    List<Axis> across = Stream.of(Axis.values()).filter(each -> each != axis).toList();
    Point corner = new Point(pad.x().from(), pad.y().from(), pad.z().from());
    return Stream.of(-1, 1)
        .flatMap(
            one ->
                Stream.of(-1, 1)
                    .map(
                        other ->
                            corner
                                .with(across.get(0), pad.on(across.get(0)).end(one))
                                .with(across.get(1), pad.on(across.get(1)).end(other))));
  }

  private static boolean isOver(List<Box> wood, Point at, Axis axis) {
    return wood.stream()
        .anyMatch(
            box ->
                Stream.of(Axis.values())
                    .filter(each -> each != axis)
                    .allMatch(each -> box.on(each).contains(at.on(each))));
  }

  /** Whether a place on a face lies where a slanted cut takes that face away. */
  private static boolean isSloped(Slanted.Slope slope, Point spot, Face way) {
    if (slope.from() != way && slope.towards() != way) {
      return false;
    }
    Face across = slope.from() == way ? slope.towards() : slope.from();
    Point edge = slope.from() == way ? slope.first() : slope.second();
    return spot.on(across.axis()).minus(edge.on(across.axis())).times(across.sign()).isPositive();
  }

  private static Box around(Point at, double halfMm) {
    return new Box(around(at.x(), halfMm), around(at.y(), halfMm), around(at.z(), halfMm));
  }

  private static Range around(Length at, double halfMm) {
    return new Range(Length.nearest(at.toMm() - halfMm), Length.nearest(at.toMm() + halfMm));
  }
}
