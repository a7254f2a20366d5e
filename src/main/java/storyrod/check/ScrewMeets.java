package storyrod.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import storyrod.check.Hollow.Use;
import storyrod.check.Hollows.Pair;
import storyrod.description.Diagnostic;
import storyrod.piece.Piece;

/** A screw that runs into what another joint or hole puts in the same place. */
final class ScrewMeets implements Check {
  private static final Set<Use> IN_THE_WAY =
      EnumSet.of(Use.SCREW, Use.THREAD, Use.LET_IN, Use.PEG, Use.INSERT, Use.PLAIN);

  @Override
  public String code() {
    return "screw-meets";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Screws, their holes and the ways of pocket screws stay clear of tenons, of ends in dadoes,"
            + " of dowels, biscuits and loose tenons, of other screws and of other holes: steel"
            + " there stops a drill, a saw or a chisel, or splits what lies there.",
        "Follows from the description; what runs less than 1/64 in into each other is let through.",
        "A screw may go through the part that its own joint holds. Screws of hardware whose holes"
            + " are not described are unknown, dovetails and leaning slots are not looked at;"
            + " holes along one axis are the matter of hole-edge.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return new Hollows(piece)
        .meeting(ScrewMeets::concerns, Hollows.LEAST)
        .map(pair -> told(piece, pair))
        .toList();
  }

  private static boolean concerns(Hollow screw, Hollow other) {
    if (!screw.isScrew() || screw.isOneWith(other) || screw.isBeside(other)) {
      return false;
    }
    boolean startsInIt = screw.use() == Use.SCREW && other.isOpenAtMouthOf(screw);
    boolean isPlace = other.use() == Use.HOUSED && !startsInIt;
    return IN_THE_WAY.contains(other.use())
        || (isPlace || other.use() == Use.TENON) && !other.isMeantBy(screw);
  }

  private Diagnostic told(Piece piece, Pair pair) {
    return pair.told(Diagnostic.error(code(), pair.at(), pair.message(piece)))
        .hint("move the screw to where it meets solid wood only, or take a shorter one");
  }
}
