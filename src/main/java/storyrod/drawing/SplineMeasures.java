package storyrod.drawing;

import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.SplineSlot;

/** The dimensions of the slot for a spline; its depth stands in the note. */
record SplineMeasures(FlatPart flat, WantedDimensions wanted) {
  void add(SplineSlot slot) {
    Face view = SplineNotes.home(flat, slot);
    if (slot.along() == Axis.Y) {
      inTheThickness(view, slot);
    } else {
      onTheMitre(view, slot);
    }
  }

  /** In a frame: how far from the face, and how wide. */
  private void inTheThickness(Face view, SplineSlot slot) {
    Point at = edge(view).with(Axis.Y, slot.run().from());
    wanted.stretch(view, Axis.Y, at.with(Axis.Y, Length.ZERO), at);
    wanted.stretch(view, Axis.Y, at, at.with(Axis.Y, slot.run().to()));
  }

  /** In a case: from the inner face to the slot's nearer corner on the mitre. */
  private void onTheMitre(Face view, SplineSlot slot) {
    Point corner = slot.onMitre().getFirst();
    wanted.between(view, Axis.Y, corner.with(Axis.Y, inside(flat, slot)), corner);
  }

  /** Where a case's inner face lies: on the side of the corner that the slot is drawn from. */
  private static Length inside(FlatPart flat, SplineSlot slot) {
    boolean fromZero = slot.onMitre().getFirst().y().isShorterThan(slot.onMitre().getLast().y());
    return fromZero ? Length.ZERO : flat.size(Axis.Y);
  }

  /** From a case's inner face to the nearer corner of the slot, square to the face. */
  static Length fromInside(FlatPart flat, SplineSlot slot) {
    return slot.onMitre().getFirst().y().minus(inside(flat, slot)).abs();
  }

  private Point edge(Face view) {
    Point middle = flat.box().middle();
    return view.axis() == Axis.X ? middle.with(Axis.Z, Length.ZERO) : middle;
  }
}
