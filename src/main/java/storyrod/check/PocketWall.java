package storyrod.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import storyrod.check.Hollow.Use;
import storyrod.check.Hollows.Pair;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/** A pocket hole that leaves next to no wood before another cut of its part. */
final class PocketWall implements Check {
  private static final Set<Use> CUTS = EnumSet.of(Use.HOUSED, Use.TAKEN, Use.OPEN);

  @Override
  public String code() {
    return "pocket-wall";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Between the wide step of a pocket hole and a groove, a slot, a mortise or a notch of the"
            + " same part at least 1/8 in (3 mm) of wood remains: the screw's head wedges apart"
            + " what is thinner.",
        "Common practice, from memory.",
        "What runs deeper into each other is told by hole-meets; curved and slanted edges are the"
            + " matter of pocket-mouth.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Length wall = PocketMouth.clear(piece.description().format());
    return new Hollows(piece)
        .near(PocketWall::concerns, wall)
        .filter(pair -> !pair.deep().isLongerThan(HoleMeets.LEAST))
        .map(pair -> told(piece, pair, wall))
        .toList();
  }

  private static boolean concerns(Hollow hole, Hollow other) {
    return hole.cut() instanceof PocketHoles
        && hole.use() == Use.LET_IN
        && CUTS.contains(other.use())
        && !other.isMeantBy(hole);
  }

  private Diagnostic told(Piece piece, Pair pair, Length wall) {
    String least = piece.description().format().forBits().formatWithUnit(wall);
    String message =
        "%s lies less than %s from %s inside %s, or runs into it"
            .formatted(pair.one().name(), least, pair.other().name(), pair.one().part().name());
    return pair.told(Diagnostic.warning(code(), pair.at(), message))
        .hint("leave %s of wood or more: move one of them, or take a wider part".formatted(least));
  }
}
