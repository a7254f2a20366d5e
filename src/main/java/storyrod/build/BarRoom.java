package storyrod.build;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * Whether a bar clamp closes on a line of pressure: its bar runs beside that line, no farther away
 * than its jaws reach, past all wood there is, and the jaws reach in from it to both faces.
 */
final class BarRoom {
  /** How far a bar clamp's jaws reach from the bar (common practice, from memory), in mm. */
  private static final int THROAT_MM = 90;

  /** From the line to the nearest place of the bar, and between the places tried, in mm. */
  private static final int STEP_MM = 6;

  /** Half of what the bar and its jaws take across the plane of the clamp, in mm. */
  private static final double HALF_BAR_MM = 5;

  /** What the bar takes away from the line, in mm. */
  private static final int BAR_MM = 20;

  private final List<Box> wood;
  private final double jawMm;

  /**
   * @param wood all that stands round the joint
   * @param jawMm what a jaw takes behind a face, in mm
   */
  BarRoom(List<Box> wood, double jawMm) {
    this.wood = wood;
    this.jawMm = jawMm;
  }

  /** Whether there is room for a clamp whose jaws close on a place along an axis. */
  boolean isRound(Point spot, Axis axis, Range pressed) {
    return Stream.of(Axis.values())
        .filter(each -> each != axis)
        .anyMatch(aside -> isBeside(spot, axis, pressed, aside));
  }

  private boolean isBeside(Point spot, Axis axis, Range pressed, Axis aside) {
    return IntStream.of(-1, 1)
        .anyMatch(
            side ->
                IntStream.rangeClosed(1, THROAT_MM / STEP_MM)
                    .map(place -> side * place * STEP_MM)
                    .anyMatch(at -> isFree(new Clamp(spot, axis, pressed, aside), at)));
  }

  /** A clamp by the line it presses on and the way to its bar. */
  private record Clamp(Point spot, Axis axis, Range pressed, Axis aside) {
    /** The bar at a distance in mm, over which the jaws stand out. */
    Box bar(int at, double jawMm) {
      Length out = Length.nearest(jawMm);
      Range along = new Range(pressed.from().minus(out), pressed.to().plus(out));
      return reaching(at, at + Integer.signum(at) * BAR_MM).with(axis, along);
    }

    /** The jaw behind an end of the line. */
    Box jaw(int at, int end, double jawMm) {
      Range along =
          new Range(pressed.end(end), pressed.end(end)).extended(end, Length.nearest(jawMm));
      return reaching(0, at).with(axis, along);
    }

    private Box reaching(double from, double to) {
      double middle = spot.on(aside).toMm();
      return new Box(around(Axis.X), around(Axis.Y), around(Axis.Z))
          .with(
              aside,
              new Range(
                  Length.nearest(middle + Math.min(from, to)),
                  Length.nearest(middle + Math.max(from, to))));
    }

    private Range around(Axis each) {
      double middle = spot.on(each).toMm();
      return new Range(Length.nearest(middle - HALF_BAR_MM), Length.nearest(middle + HALF_BAR_MM));
    }
  }

  private boolean isFree(Clamp clamp, int at) {
    return Stream.of(clamp.bar(at, jawMm), clamp.jaw(at, -1, jawMm), clamp.jaw(at, 1, jawMm))
        .noneMatch(box -> wood.stream().anyMatch(box::overlaps));
  }
}
