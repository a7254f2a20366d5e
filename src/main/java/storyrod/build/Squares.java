package storyrod.build;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.rule.Job;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/**
 * Finds where a level's first rectangle of four units closes: there its diagonals are compared. A
 * level in which none closes may have two posts with four outer corners.
 */
final class Squares {
  private final Job job;
  private final Map<String, Setting> byOperation = new LinkedHashMap<>();
  private final List<String> closed = new ArrayList<>();

  Squares(Job job) {
    this.job = job;
    tell(this::rectangle);
    tell(this::posts);
  }

  /** Tells each level that has no diagonal yet the first that is found. */
  private void tell(Function<Placing, Optional<Setting>> finder) {
    for (Placing placing : job.placings()) {
      String level = placing.unit().level();
      if (!closed.contains(level)) {
        finder
            .apply(placing)
            .ifPresent(
                setting -> {
                  byOperation.put(placing.name(), setting);
                  closed.add(level);
                });
      }
    }
  }

  private Optional<Setting> posts(Placing placing) {
    List<Unit> together = new ArrayList<>(job.before(placing));
    together.add(placing.unit());
    return new Posts(together, this::meet).diagonal();
  }

  /** Whether a setting is for the tape, from corner to corner. */
  static boolean isDiagonal(Setting setting) {
    return setting.key().startsWith("diagonal");
  }

  Optional<Setting> diagonal(Operation operation) {
    return Optional.ofNullable(byOperation.get(operation.name()));
  }

  private Optional<Setting> rectangle(Placing placing) {
    Unit last = placing.unit();
    if (last.isTurned()) {
      return Optional.empty();
    }
    List<Unit> standing = job.before(placing).stream().filter(unit -> !unit.isTurned()).toList();
    List<Unit> arms = standing.stream().filter(unit -> meet(last, unit)).toList();
    for (Unit one : arms) {
      for (Unit two : arms.subList(arms.indexOf(one) + 1, arms.size())) {
        Optional<Setting> found =
            standing.stream()
                .filter(far -> far != one && far != two && meet(one, far) && meet(two, far))
                .flatMap(far -> diagonal(last, far, one, two).stream())
                .findFirst();
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Setting> diagonal(Unit last, Unit far, Unit one, Unit two) {
    List<Box> flat = List.of(shoulder(last), shoulder(far));
    List<Box> upright = List.of(shoulder(one), shoulder(two));
    return apart(flat.getFirst(), flat.getLast())
        .flatMap(
            high ->
                apart(upright.getFirst(), upright.getLast())
                    .filter(wide -> wide != high)
                    .filter(wide -> hasCorners(flat, upright, wide, high))
                    .map(wide -> setting(joined(flat, upright), wide, high)));
  }

  /** Whether two opposite sides reach from corner to corner, so that a tape can be held there. */
  private static boolean hasCorners(List<Box> flat, List<Box> upright, Axis wide, Axis high) {
    List<Box> all = joined(flat, upright);
    return reachCorners(flat, all, wide, high) || reachCorners(upright, all, high, wide);
  }

  /** Whether two sides are the outermost, and as long as the whole; those of a grid are not. */
  private static boolean reachCorners(List<Box> sides, List<Box> all, Axis along, Axis apart) {
    return sides.stream().allMatch(box -> box.size(along).equals(span(all, along)))
        && span(sides, apart).equals(span(all, apart));
  }

  private static List<Box> joined(List<Box> flat, List<Box> upright) {
    return Stream.concat(flat.stream(), upright.stream()).toList();
  }

  private static Setting setting(List<Box> all, Axis wide, Axis high) {
    return new Setting("diagonal", Optional.empty(), diagonal(span(all, wide), span(all, high)));
  }

  /** The box round a unit, without what goes into other parts. */
  private static Box shoulder(Unit unit) {
    List<Box> all = unit.parts().stream().map(Part::shoulder).toList();
    return new Box(range(all, Axis.X), range(all, Axis.Y), range(all, Axis.Z));
  }

  private static Range range(List<Box> all, Axis axis) {
    Length from = all.stream().map(box -> box.on(axis).from()).reduce(Length::min).orElseThrow();
    Length to = all.stream().map(box -> box.on(axis).to()).reduce(Length::max).orElseThrow();
    return new Range(from, to);
  }

  private static Length span(List<Box> all, Axis axis) {
    return range(all, axis).length();
  }

  private static Optional<Axis> apart(Box one, Box other) {
    return Arrays.stream(Axis.values())
        .filter(axis -> !one.on(axis).overlaps(other.on(axis)))
        .findFirst();
  }

  private boolean meet(Unit one, Unit other) {
    return job.piece().joints().stream()
        .filter(Joint::holding)
        .anyMatch(
            joint ->
                one.has(joint.first()) && other.has(joint.second())
                    || one.has(joint.second()) && other.has(joint.first()));
  }

  /** The diagonal of a rectangle, to the nearest tick. */
  static Length diagonal(Length width, Length height) {
    BigInteger square =
        BigInteger.valueOf(width.ticks()).pow(2).add(BigInteger.valueOf(height.ticks()).pow(2));
    BigInteger root = square.sqrt();
    boolean isUp = square.subtract(root.multiply(root)).compareTo(root) > 0;
    return new Length(root.longValueExact() + (isUp ? 1 : 0));
  }
}
