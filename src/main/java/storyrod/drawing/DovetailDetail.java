package storyrod.drawing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Dovetails;
import storyrod.piece.Dovetails.Tail;

/**
 * What an enlarged detail shows of a row of dovetails: its first tail, or the socket for it, with
 * the pins on both sides; the others stand at equal steps.
 */
record DovetailDetail(Dovetails row) {
  /** From the edge of the part to where the second tail begins, at its wide end. */
  Box box() {
    List<Tail> tails = row.tails();
    Range all = row.end().on(row.across());
    Length to = tails.size() > 1 ? tails.get(1).wide().from() : all.to();
    return row.end().with(row.across(), new Range(all.from(), to));
  }

  /** The narrowest of its pins. */
  Length least() {
    return row.pins().stream().min(Length::compareTo).orElseThrow();
  }

  /** Whether another row is set out by the same figures. */
  boolean isLike(DovetailDetail other) {
    return row.tails().getFirst().equals(other.row.tails().getFirst());
  }

  /** A stretch along an axis that is measured on one side of the row. */
  record Stretch(Axis along, Range range, Face side) {}

  /** The baseline, the tail where it is narrow, and from one tail to the next. */
  List<Stretch> repeated() {
    List<Tail> tails = row.tails();
    Axis run = row.from().axis();
    Axis across = row.across();
    List<Stretch> repeated = new ArrayList<>();
    repeated.add(new Stretch(run, row.end().on(run), Face.of(across, -1)));
    repeated.add(new Stretch(across, tails.getFirst().narrow(), row.wide().opposite()));
    if (tails.size() > 1) {
      Range step = new Range(tails.getFirst().wide().from(), tails.get(1).wide().from());
      repeated.add(new Stretch(across, step, row.wide()));
    }
    return repeated;
  }

  /** What is said of the second side of the first tail: how it leans. */
  CutNote slope(DetailView view, Notation notation) {
    Tail first = row.tails().getFirst();
    Axis across = row.across();
    Length middle =
        first.narrow().to().plus(first.wide().to()).dividedBy(2, RoundingMode.HALF_EVEN);
    Point tip =
        row.end()
            .middle()
            .with(across, middle)
            .with(view.face().axis(), view.window().middle().on(view.face().axis()));
    String said = DovetailNotes.slope(row, notation.words());
    return new CutNote(view.face(), said, List.of(tip), 0);
  }
}
