package storyrod.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import storyrod.check.Hollow.Use;
import storyrod.check.Hollows.Pair;
import storyrod.description.Diagnostic;
import storyrod.piece.Piece;

/** Holes for dowels and slots of one part that run into each other, or into a place for a part. */
final class BoresMeet implements Check {
  private static final Set<Use> PLACES = EnumSet.of(Use.HOUSED, Use.TAKEN, Use.TENON);

  @Override
  public String code() {
    return "bores-meet";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Holes for dowels, slots for biscuits and loose tenons stay clear of each other and of the"
            + " mortises, dadoes, grooves and laps for other parts, or what lies in them collides.",
        "Follows from the description; what runs less than 1/64 in into each other is let through.",
        "Two plain mortises are the matter of mortises-meet, holes along one axis that of"
            + " hole-edge. Dovetails and leaning slots are not looked at.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return new Hollows(piece)
        .meeting(BoresMeet::concerns, Hollows.LEAST)
        .map(pair -> told(piece, pair))
        .toList();
  }

  private static boolean concerns(Hollow insert, Hollow other) {
    if (insert.use() != Use.INSERT || insert.isBeside(other)) {
      return false;
    }
    return other.use() == Use.INSERT
        ? insert.cut().from() != other.cut().from()
        : PLACES.contains(other.use())
            && !other.isMeantBy(insert)
            && !other.isOpenAtMouthOf(insert);
  }

  private Diagnostic told(Piece piece, Pair pair) {
    return pair.told(Diagnostic.error(code(), pair.at(), pair.message(piece)))
        .hint("let one of them go less deep, or move it out of the way of the other");
  }
}
