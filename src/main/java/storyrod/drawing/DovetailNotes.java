package storyrod.drawing;

import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.piece.Dovetails;
import storyrod.piece.Dovetails.Tail;
import storyrod.words.Words;

/** Where dovetails are shown and what a note says of them. */
record DovetailNotes(Words words) {
  /** Tails are dimensioned on the face of their part, pins on the end. */
  static Face home(FlatPart flat, Dovetails row) {
    if (row.isTails()) {
      return Face.FRONT;
    }
    Face usual = row.from().axis() == Axis.X ? Face.RIGHT : Face.BOTTOM;
    return row.from() == usual || hasTwin(flat, row) ? usual : usual.opposite();
  }

  /** Whether the opposite end has an equal row. */
  private static boolean hasTwin(FlatPart flat, Dovetails row) {
    return flat.cuts().stream()
        .filter(Dovetails.class::isInstance)
        .map(Dovetails.class::cast)
        .filter(other -> other.from() == row.from().opposite() && other.wide() == row.wide())
        .anyMatch(
            other ->
                other.tails().equals(row.tails())
                    && other.end().on(row.wide().axis()).equals(row.end().on(row.wide().axis())));
  }

  String said(Dovetails row, String forWhat) {
    int count = row.tails().size();
    String tails = words.say(count == 1 ? "part.tail" : "part.tails", count);
    return words.say(
        row.isTails() ? "part.dovetail-tails" : "part.dovetail-pins",
        tails,
        forWhat,
        words.figures(row.slopeWord()));
  }

  /** The middle of each tail or socket on the end that is cut, the first one first. */
  static List<Point> tips(Dovetails row) {
    return row.tails().stream().map(tail -> middle(row, tail)).toList();
  }

  private static Point middle(Dovetails row, Tail tail) {
    Point middle = row.end().middle().with(row.across(), tail.wide().middle());
    return row.isTails() ? middle : middle.with(row.from().axis(), row.end().at(row.from()));
  }
}
