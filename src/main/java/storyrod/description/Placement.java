package storyrod.description;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.geometry.Turn;
import storyrod.measure.Length;

/**
 * How a sub-assembly's own frame lies in the frame of the piece.
 *
 * @param shift what is added on each axis of the piece, after the turn
 */
record Placement(Turn turn, Map<Axis, Length> shift) {
  static final Placement NONE = of(Turn.NONE, Map.of());

  static Placement of(Turn turn, Map<Axis, Length> shift) {
    Map<Axis, Length> all = new EnumMap<>(Axis.class);
    for (Axis axis : Axis.values()) {
      all.put(axis, shift.getOrDefault(axis, Length.ZERO));
    }
    return new Placement(turn, all);
  }

  boolean isNone() {
    return equals(NONE);
  }

  /** Where a place on one of the frame's own axes lies on the axis that it becomes. */
  Length of(Axis own, Length at) {
    Face image = turn.of(own);
    return at.times(image.sign()).plus(shift.get(image.axis()));
  }

  Range of(Axis own, Range range) {
    Length one = of(own, range.from());
    Length two = of(own, range.to());
    return new Range(one.min(two), one.max(two));
  }

  PointAt of(PointAt point) {
    Map<Axis, Length> placed = new EnumMap<>(Axis.class);
    for (Axis own : Axis.values()) {
      point.on(own).ifPresent(at -> placed.put(turn.of(own).axis(), of(own, at)));
    }
    return new PointAt(
        Optional.ofNullable(placed.get(Axis.X)),
        Optional.ofNullable(placed.get(Axis.Y)),
        Optional.ofNullable(placed.get(Axis.Z)));
  }

  /** This placement inside a frame that is itself placed. */
  Placement in(Placement outer) {
    Map<Axis, Length> placed = new EnumMap<>(Axis.class);
    shift.forEach((axis, at) -> placed.put(outer.turn.of(axis).axis(), outer.of(axis, at)));
    return of(turn.then(outer.turn), placed);
  }
}
