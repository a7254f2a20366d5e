package storyrod.drawing;

import java.math.RoundingMode;
import java.util.List;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Comb;
import storyrod.words.Words;

/** What is said of the fingers at an end, and where the note may point. */
final class CombNotes {
  private CombNotes() {}

  /** How many sockets there are, how wide, how far apart and how long. */
  static String said(String named, Comb comb, Words words, LengthFormat format) {
    return words.say(
        "part.sockets",
        named,
        comb.sockets().size(),
        format.format(comb.finger()),
        format.format(comb.length()));
  }

  /** The middle of each socket. */
  static List<Point> tips(Comb comb) {
    return comb.boxes().stream().map(CombNotes::middle).toList();
  }

  private static Point middle(Box box) {
    return new Point(middle(box.x()), middle(box.y()), middle(box.z()));
  }

  private static Length middle(Range range) {
    return range.from().plus(range.length().dividedBy(2, RoundingMode.FLOOR));
  }
}
