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
    Point one = slot.profile().segments().get(0).from();
    Point two = slot.profile().segments().get(1).from();
    boolean fromZero = one.y().isShorterThan(two.y());
    Point face = one.with(Axis.Y, fromZero ? Length.ZERO : flat.size(Axis.Y));
    wanted.stretch(view, Axis.Y, fromZero ? face : one, fromZero ? one : face);
  }

  private Point edge(Face view) {
    Point middle = flat.box().middle();
    return view.axis() == Axis.X ? middle.with(Axis.Z, Length.ZERO) : middle;
  }
}
