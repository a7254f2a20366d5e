package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

/** Two parts that take the same space once all joints and cuts are made. */
final class PartsOverlap implements Check {
  /** Less than this, in mm³, is what arithmetic leaves behind and no fault of the design. */
  private static final double NOTHING_MM3 = 0.01;

  /** How deep slanted faces that lie on each other may overlap, by rounding, in mm. */
  private static final double THIN_MM = 0.03;

  @Override
  public String code() {
    return "parts-overlap";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The solids of all parts, joints and cuts applied, share no space; a tenon in "
            + "its mortise is no overlap.",
        "Follows from the description.",
        "What lies in a bore is taken as clear of it up to half a hundredth of the bore's radius,"
            + " and curved outlines as flat facets, up to 0.1 mm off. Where slanted faces lie on"
            + " each other, what rounding leaves is let through: up to 0.03 mm. Edges that are"
            + " rounded count as sharp. Dowels and other items are no parts: their joint bores as"
            + " deep as they are long.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (int i = 0; i < piece.parts().size(); i++) {
      for (int j = i + 1; j < piece.parts().size(); j++) {
        Part one = piece.parts().get(i);
        Part two = piece.parts().get(j);
        if (one.bounds().overlaps(two.bounds())) {
          double shared = sharedMm3(one, two);
          if (shared > negligibleMm3(one, two)) {
            found.add(overlap(piece, one, two, shared));
          }
        }
      }
    }
    return found;
  }

  /** What two parts share, but for what lies in a bore of the other one. */
  private static double sharedMm3(Part one, Part two) {
    double shared = one.placed().sharedVolumeMm3(two.placed());
    boolean isBored = !one.solid().bores().isEmpty() || !two.solid().bores().isEmpty();
    return shared > NOTHING_MM3 && isBored
        ? one.placed().hollowed().sharedVolumeMm3(two.placed().hollowed())
        : shared;
  }

  /** Where a part leans, what rounding leaves over the broadest side on which the two may lie. */
  private static double negligibleMm3(Part one, Part two) {
    boolean square = one.pose().equals(two.pose()) && !isSloped(one) && !isSloped(two);
    Box both = one.bounds().shared(two.bounds()).orElseThrow();
    double broadest = both.volumeMm3() / Math.max(both.size(leastAxis(both)).toMm(), THIN_MM);
    return square ? NOTHING_MM3 : NOTHING_MM3 + THIN_MM * broadest;
  }

  /** A slope of 45° lies on whole ticks, and so leaves nothing to round. */
  private static boolean isSloped(Part part) {
    return part.cuts().stream()
        .anyMatch(cut -> cut instanceof Slanted.Slope slope && !slope.run().equals(slope.drop()));
  }

  private Diagnostic overlap(Piece piece, Part one, Part two, double sharedMm3) {
    Box both = one.bounds().shared(two.bounds()).orElseThrow();
    Axis least = leastAxis(both);
    Length depth = both.size(least);
    return Diagnostic.error(
            code(),
            two.at(),
            String.format(
                Locale.ROOT,
                "%s and %s take the same space: up to %s on %s, %.1f cm³ in all",
                one.name(),
                two.name(),
                piece.description().format().formatWithUnit(depth),
                least.word(),
                sharedMm3 / 1000))
        .also(one.at(), one.name() + " is defined here")
        .hint(
            "move or shorten one of them, or join them with a joint that cuts room for the other");
  }

  private static Axis leastAxis(Box box) {
    Axis least = Axis.X;
    for (Axis axis : Axis.values()) {
      if (box.size(axis).isShorterThan(box.size(least))) {
        least = axis;
      }
    }
    return least;
  }
}
