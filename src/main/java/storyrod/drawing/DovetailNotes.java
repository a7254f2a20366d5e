package storyrod.drawing;

import java.util.List;
import java.util.Locale;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.LengthFormat;
import storyrod.piece.Dovetails;
import storyrod.piece.Dovetails.Tail;
import storyrod.words.Words;

/** Where dovetails are shown and what a note says of them. */
record DovetailNotes(LengthFormat format, Words words) {
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

  /**
   * In brackets what the slope comes to: how far the blade leans, and the tails at the baseline.
   */
  String said(Dovetails row, String forWhat) {
    int count = row.tails().size();
    String tails = words.say(count == 1 ? "part.tail" : "part.tails", count);
    return words.say(
        row.isTails() ? "part.dovetail-tails" : "part.dovetail-pins",
        tails,
        forWhat,
        words.figures(row.slopeWord()),
        words.figures(degrees(row)),
        format.told(row.tails().getFirst().narrow().length()));
  }

  /** How the sides of tails lean. */
  static String slope(Dovetails row, Words words) {
    return words.say(
        "part.dovetail-slope", words.figures(row.slopeWord()), words.figures(degrees(row)));
  }

  /** To a tenth, as a bevel or a table saw is set. */
  private static String degrees(Dovetails row) {
    return String.format(Locale.ROOT, "%.1f", Math.toDegrees(row.angle().toRadians()));
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
