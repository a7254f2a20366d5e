package storyrod.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import storyrod.check.Hollow.Use;
import storyrod.check.Hollows.Pair;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.piece.Piece;

/** A hole that takes wood from another joint's place, or has none round it there. */
final class HoleMeets implements Check {
  /** A rim that opens less weakens nothing, as no less wood does in {@link HoleEdge}. */
  static final Length LEAST = Length.inch(1, 16);

  private static final Set<Use> PLACES = EnumSet.of(Use.HOUSED, Use.TAKEN, Use.TENON, Use.OPEN);
  private static final Set<Use> FILLED = EnumSet.of(Use.LET_IN, Use.PEG, Use.INSERT);

  @Override
  public String code() {
    return "hole-meets";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Holes for cups, pins, plugs and pocket screws stay clear of mortises, tenons, dadoes,"
            + " grooves, dowels and each other, and screws stay clear of the edges of panels in"
            + " their grooves, which they would pin.",
        "Common practice; what runs less than 1/16 in into each other is let through.",
        "A hole for a peg may go through a tenon, and a hole that is for no item may go through"
            + " anything but a dowel, a biscuit or a loose tenon. A hole that starts in a slot"
            + " and holes along one axis are the matter of hole-edge, steel that hits something"
            + " is that of screw-meets. Dovetails and leaning slots are not looked at.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return new Hollows(piece)
        .meeting(HoleMeets::concerns, LEAST)
        .map(pair -> told(piece, pair))
        .toList();
  }

  private static boolean concerns(Hollow hole, Hollow other) {
    if (hole.isOneWith(other) || hole.isBeside(other)) {
      return false;
    }
    boolean isFree = !other.isMeantBy(hole) && !other.isOpenAtAnEndOf(hole);
    return switch (hole.use()) {
      case SCREW -> isFree && (other.use() == Use.TAKEN || other.use() == Use.OPEN);
      case THREAD -> isFree && other.use() == Use.TAKEN;
      case BRAD -> other.isScrew() || isFree && other.use() == Use.TAKEN;
      case LET_IN -> FILLED.contains(other.use()) || isFree && PLACES.contains(other.use());
      case PEG, PLAIN -> other.use() == Use.INSERT;
      case INSERT -> isFree && other.use() == Use.OPEN;
      default -> false;
    };
  }

  private Diagnostic told(Piece piece, Pair pair) {
    return pair.told(Diagnostic.warning(code(), pair.at(), pair.message(piece)))
        .hint("move one of them, or make it less deep: each takes from the other's wood");
  }
}
