package storyrod.build;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;

/**
 * Whether something that only lies in the piece, such as a shelf, gets out through an opening when
 * it is turned about the line on which it is moved.
 *
 * <p>It is taken as its bounding box; the opening is the widest rectangle round its middle that
 * nothing before it covers; the room in which it turns must be as wide as its diagonal.
 */
final class Tilt {
  private Tilt() {}

  static Optional<Face> way(Reach reach, Unit unit, List<Unit> others) {
    List<Box> wood = others.stream().flatMap(other -> reach.woodOf(other).stream()).toList();
    Box box = bounds(reach.woodOf(unit));
    return Leaving.HANDY.stream().filter(way -> passes(box, wood, way)).findFirst();
  }

  private static boolean passes(Box box, List<Box> wood, Face way) {
    List<Axis> across = Arrays.stream(Axis.values()).filter(axis -> axis != way.axis()).toList();
    return passes(box, wood, way, across.get(0)) || passes(box, wood, way, across.get(1));
  }

  private static boolean passes(Box box, List<Box> wood, Face way, Axis wide) {
    Axis high = Axis.other(way.axis(), wide);
    double width = box.size(wide).toMm();
    double height = box.size(high).toMm();
    List<Box> ahead = wood.stream().filter(each -> isAhead(each, box, way)).toList();
    List<Box> beside =
        wood.stream().filter(each -> each.on(way.axis()).overlaps(box.on(way.axis()))).toList();
    double open = clear(box, ahead, wide, high, false);
    double tall = clear(box, ahead, high, wide, true);
    double room = clear(box, beside, wide, high, false);
    return StrictMath.hypot(width, height) <= room
        && IntStream.rangeClosed(1, 89)
            .mapToDouble(StrictMath::toRadians)
            .anyMatch(
                turn ->
                    width * StrictMath.cos(turn) + height * StrictMath.sin(turn) <= open
                        && width * StrictMath.sin(turn) + height * StrictMath.cos(turn) <= tall);
  }

  /** The clear measure along one axis, in mm, past wood at the box's place on the other axis. */
  private static double clear(Box box, List<Box> wood, Axis along, Axis across, boolean inMiddle) {
    double middle = middle(box.on(along));
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    for (Box each : wood) {
      if (!(inMiddle ? covers(each, box, across) : each.on(across).overlaps(box.on(across)))) {
        continue;
      }
      if (middle(each.on(along)) < middle) {
        from = Math.max(from, each.on(along).to().toMm());
      } else {
        to = Math.min(to, each.on(along).from().toMm());
      }
    }
    return to - from;
  }

  private static boolean covers(Box each, Box box, Axis axis) {
    double middle = middle(box.on(axis));
    return each.on(axis).from().toMm() < middle && middle < each.on(axis).to().toMm();
  }

  private static boolean isAhead(Box other, Box box, Face way) {
    return way.sign() > 0
        ? other.at(way).isLongerThan(box.at(way.opposite()))
        : other.at(way).isShorterThan(box.at(way.opposite()));
  }

  private static double middle(Range range) {
    return (range.from().toMm() + range.to().toMm()) / 2;
  }

  private static Box bounds(List<Box> boxes) {
    return boxes.stream().reduce(Box::around).orElseThrow();
  }
}
