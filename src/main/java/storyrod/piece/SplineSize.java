package storyrod.piece;

import java.math.RoundingMode;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.ItemEntry;
import storyrod.measure.Length;
import storyrod.measure.Unit;

/**
 * How large a spline is cut. It is as wide as both its slots are deep, less room for the glue; and
 * long enough to fill them to their ends and to stand out there until it is trimmed (common
 * practice; the amounts from memory).
 *
 * @param across the mitre: the way its grain runs
 * @param along the mitre
 */
record SplineSize(Length across, Length along) {
  /** The sizes of an item for a slot; what the item says itself goes before. */
  static SplineSize of(ItemEntry item, Part part, SplineSlot slot, Unit unit) {
    boolean isInch = unit == Unit.INCH;
    Length room = isInch ? Length.inch(1, 16) : Length.micrometres(1500);
    Length over = isInch ? Length.inch(1, 8) : Length.mm(3);
    Length step = isInch ? Length.inch(1, 16) : Length.mm(1);
    return new SplineSize(
        item.sizes().width().orElseGet(() -> bothDepths(slot).minus(room)),
        item.length().orElseGet(() -> roundedUp(filling(part, slot).plus(over), step)));
  }

  private static Length bothDepths(SplineSlot slot) {
    return slot.depth().times(2);
  }

  /**
   * How long it has to be to fill both slots. A frame's run out at 45° to it, and it lies with its
   * middle on that of the mitre: then each end has to reach as much farther as the slot is deep.
   */
  private static Length filling(Part part, SplineSlot slot) {
    if (!slot.isInFrame(part)) {
      return slot.run().length();
    }
    Vector3D outer = slot.onMitre().getFirst().toMm();
    Vector3D inner = slot.onMitre().getLast().toMm();
    return Length.nearest(outer.distance(inner)).plus(bothDepths(slot));
  }

  private static Length roundedUp(Length length, Length step) {
    return step.times(length.dividedBy(step.ticks(), RoundingMode.CEILING).ticks());
  }
}
