package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Face;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/**
 * Who stands in whose way where parts lean, or are cut at an angle, so near to each other that
 * their boxes overlap: one is moved step by step and its wood compared with the other's. A part
 * that leans may also leave along its own axis.
 */
public final class Passing {
  /** A step this long runs into whatever is in the way, and is short beside any part, in mm. */
  private static final double FIRST_STEP_MM = 4;

  private static final double NEXT_STEP = 1.4;

  /** What rounding leaves where slanted faces slide on each other, in mm³. */
  private static final double NOTHING_MM3 = 50;

  private Passing() {}

  /** Whether boxes cannot tell who blocks whom. */
  static boolean isNeeded(Part one, Part other) {
    return (isSlanted(one) || isSlanted(other)) && one.bounds().overlaps(other.bounds());
  }

  private static boolean isSlanted(Part part) {
    return part.pose().isTurned() || part.cuts().stream().anyMatch(Passing::leans);
  }

  private static boolean leans(Cut cut) {
    return switch (cut) {
      case Slanted.Slope slope -> slope.kind() != Slanted.Slope.Kind.CHAMFER;
      case Slanted.Housing housing -> true;
      case Cut.Trench trench -> false;
      case Cut.Tenon tenon -> false;
      case Comb comb -> false;
      case Cut.Shaped shaped -> false;
      case Cut.Roundover roundover -> false;
      case Cut.Holes holes -> false;
      case PocketHoles pockets -> false;
      case Slots slots -> false;
      case Dovetails dovetails -> false;
      case SplineSlot slot -> false;
      case InPlace inPlace -> false;
    };
  }

  /**
   * The unit vector along which parts that move as one leave others towards a face: along a lean
   * where a leaning part leaves them no other way, else straight.
   */
  public static Vector3D direction(List<Part> moving, List<Part> others, Face leave) {
    return moving.stream()
        .flatMap(
            mover ->
                others.stream()
                    .filter(other -> isNeeded(mover, other))
                    .flatMap(other -> way(mover, other, leave).stream()))
        .filter(way -> !way.equals(leave.normal()))
        .findFirst()
        .orElse(leave.normal());
  }

  /** How a part can leave another towards a face: straight, or along the lean of one of them. */
  static Optional<Vector3D> way(Part mover, Part other, Face leave) {
    return Stream.of(leave.normal(), leaning(mover, leave), leaning(other, leave))
        .distinct()
        .filter(way -> !hits(mover, other, way))
        .findFirst();
  }

  private static Vector3D leaning(Part part, Face leave) {
    Face own = Face.nearest(part.pose().inverse().direction(leave.normal()));
    return part.pose().normal(own);
  }

  private static boolean hits(Part mover, Part other, Vector3D way) {
    double step = FIRST_STEP_MM;
    for (double at = step;
        mover.bounds().moved(way.multiply(at)).overlaps(other.bounds());
        at += step) {
      if (other.placed().sharedVolumeMm3(mover.placed(), way.multiply(at)) > NOTHING_MM3) {
        return true;
      }
      step *= NEXT_STEP;
    }
    return false;
  }
}
