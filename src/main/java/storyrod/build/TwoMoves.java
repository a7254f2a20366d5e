package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/**
 * Whether boxes of wood leave others in two straight moves: over along one axis, then out along
 * another without end.
 *
 * <p>How far over is exact: on the second move something stands in the way over a stretch of the
 * first and no longer, so the least move that helps ends where such a stretch does, and before the
 * first move meets anything.
 */
final class TwoMoves {
  private final List<Box> mover;
  private final List<Box> rest;

  TwoMoves(List<Box> mover, List<Box> rest) {
    this.mover = mover;
    this.rest = rest;
  }

  /** The moves on which boxes leave: over by a length, then out. */
  record Way(Face over, Length by, Face out) {
    /** The same moves backwards: the first one on the way in. */
    FirstMove firstIn() {
      return new FirstMove(out.opposite(), by);
    }
  }

  /** For each pair of directions the way with the shortest first move, if there is one. */
  List<Way> ways() {
    return Stream.of(Face.values()).flatMap(over -> ways(over).stream()).toList();
  }

  private List<Way> ways(Face over) {
    Optional<Length> most = clear(over);
    if (most.filter(length -> !length.isPositive()).isPresent()) {
      return List.of();
    }
    List<Length> stops =
        ends(over).stream().filter(end -> most.filter(end::isLongerThan).isEmpty()).toList();
    List<Way> ways = new ArrayList<>();
    for (Face out : Face.values()) {
      if (out.axis() != over.axis()) {
        stops.stream()
            .map(stop -> new Way(over, stop, out))
            .filter(this::isOutFree)
            .findFirst()
            .ifPresent(ways::add);
      }
    }
    return ways;
  }

  /** Whether nothing stands in either of two moves. */
  boolean isFree(Way way) {
    return clear(way.over()).filter(way.by()::isLongerThan).isEmpty() && isOutFree(way);
  }

  /** How far the boxes move until they meet something; nothing if they never do. */
  private Optional<Length> clear(Face over) {
    return mover.stream()
        .flatMap(
            box ->
                rest.stream()
                    .filter(other -> Reach.meets(box, other, over))
                    .map(other -> other.at(over.opposite()).minus(box.at(over))))
        .map(gap -> gap.times(over.sign()))
        .reduce(Length::min);
  }

  /** How far over each box has to be to have passed each other one, the shortest first. */
  private List<Length> ends(Face over) {
    return mover.stream()
        .flatMap(box -> rest.stream().map(other -> other.at(over).minus(box.at(over.opposite()))))
        .map(end -> end.times(over.sign()))
        .filter(Length::isPositive)
        .distinct()
        .sorted()
        .toList();
  }

  private boolean isOutFree(Way way) {
    return mover.stream()
        .map(box -> box.moved(way.over().axis(), way.by().times(way.over().sign())))
        .allMatch(box -> rest.stream().noneMatch(other -> Reach.meets(box, other, way.out())));
  }
}
