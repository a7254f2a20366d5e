package storyrod.drawing;

import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Dovetails;
import storyrod.piece.Dovetails.Tail;

/** The dimensions of a row of tails or of the sockets for them, but for the chain along the row. */
record DovetailMeasures(FlatPart flat, WantedDimensions wanted) {
  /** Where the row is measured: the end at which the tails are wide, on the side of the figures. */
  static Point base(DimensionSides sides, Face view, Dovetails row) {
    return sides.corner(view, row.end()).with(row.wide().axis(), row.end().at(row.wide()));
  }

  /** The first half pin and a tail where they are wide, the baseline, and how deep a socket is. */
  void add(Face view, Dovetails row) {
    DimensionSides sides = new DimensionSides(flat);
    Axis across = row.across();
    Point base = base(sides, view, row);
    Tail first = row.tails().getFirst();
    Point from = base.with(across, first.wide().from());
    wanted.stretch(view, across, base.with(across, Length.ZERO), from);
    wanted.stretch(view, across, from, base.with(across, first.wide().to()));
    stretch(sides, Face.FRONT, row, row.from().axis());
    if (!row.isTails() && !flat.full(row.end().y(), Axis.Y)) {
      stretch(sides, view, row, Axis.Y);
    }
  }

  private void stretch(DimensionSides sides, Face view, Dovetails row, Axis axis) {
    Point corner = sides.corner(view, row.end());
    wanted.stretch(
        view,
        axis,
        corner.with(axis, row.end().on(axis).from()),
        corner.with(axis, row.end().on(axis).to()));
  }
}
