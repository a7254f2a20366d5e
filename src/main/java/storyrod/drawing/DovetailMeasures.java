package storyrod.drawing;

import java.math.RoundingMode;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Dovetails;
import storyrod.piece.Dovetails.Tail;

/** The dimensions of a row of tails or of the sockets for them. */
record DovetailMeasures(Measures measures, FlatPart flat) {
  /**
   * Tails on the face, sockets on the end, both where they are wide: the first half pin, a tail,
   * from tail to tail, and how long they are.
   */
  void add(Face view, Dovetails row) {
    Axis across = row.across();
    Point base = measures.corner(view, row.end()).with(row.wide().axis(), row.end().at(row.wide()));
    Tail first = row.tails().getFirst();
    measures.want(
        view, across, base.with(across, Length.ZERO), base.with(across, first.wide().from()));
    measures.want(
        view, across, base.with(across, first.wide().from()), base.with(across, first.wide().to()));
    addChain(view, row, base);
    Axis run = row.from().axis();
    Point corner = measures.corner(Face.FRONT, row.end());
    measures.want(
        Face.FRONT,
        run,
        corner.with(run, row.end().on(run).from()),
        corner.with(run, row.end().on(run).to()));
    if (!row.isTails() && !flat.full(row.end().y(), Axis.Y)) {
      Point socket = measures.corner(view, row.end());
      measures.want(
          view,
          Axis.Y,
          socket.with(Axis.Y, row.end().y().from()),
          socket.with(Axis.Y, row.end().y().to()));
    }
  }

  private void addChain(Face view, Dovetails row, Point base) {
    Axis across = row.across();
    Length first = row.tails().getFirst().wide().from();
    Length last = row.tails().getLast().wide().from();
    int steps = row.tails().size() - 1;
    if (steps > 0) {
      Length step = last.minus(first).dividedBy(steps, RoundingMode.HALF_EVEN);
      measures.wantText(
          view,
          across,
          base.with(across, first),
          base.with(across, last),
          measures.chain(steps, step, last.minus(first)));
    }
  }
}
