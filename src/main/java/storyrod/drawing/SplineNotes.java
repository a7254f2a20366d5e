package storyrod.drawing;

import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/** Where slots for splines are shown and what a note says of them. */
record SplineNotes(LengthFormat format, Words words) {
  private static final double DIAGONAL = StrictMath.sqrt(2);

  /** In a frame the end shows where the slot lies in the thickness; in a case the edge does. */
  static Face home(FlatPart flat, SplineSlot slot) {
    return switch (slot.along()) {
      case X -> Face.RIGHT;
      case Y -> end(flat, slot);
      case Z -> Face.BOTTOM;
    };
  }

  private static Face end(FlatPart flat, SplineSlot slot) {
    Face usual = slot.from().axis() == Axis.X ? Face.RIGHT : Face.BOTTOM;
    boolean hasTwin =
        flat.cuts().stream()
            .anyMatch(
                cut ->
                    cut instanceof SplineSlot other
                        && other.from() == slot.from().opposite()
                        && other.run().equals(slot.run()));
    return hasTwin ? usual : slot.from();
  }

  String said(SplineSlot slot) {
    return words.say(
        "part.spline-slot", format.format(slot.thickness()), format.format(slot.depth()));
  }

  /**
   * In a case also how far along the mitre, which is how a fence is set; its dimension is level.
   */
  String said(FlatPart flat, SplineSlot slot) {
    if (slot.along() == Axis.Y) {
      return said(slot);
    }
    Length along = Length.nearest(SplineMeasures.fromInside(flat, slot).toMm() * DIAGONAL);
    return words.say("part.spline-slot-along", said(slot), format.told(along));
  }

  static List<Point> tips(SplineSlot slot) {
    Point one = slot.profile().segments().get(0).from();
    Point two = slot.profile().segments().get(1).from();
    Point middle = one;
    for (Axis axis : slot.profile().axes()) {
      middle =
          middle.with(
              axis, one.on(axis).plus(two.on(axis)).dividedBy(2, java.math.RoundingMode.FLOOR));
    }
    return List.of(middle.with(slot.along(), slot.run().middle()));
  }
}
