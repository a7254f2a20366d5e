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

/** Two parts that take the same space once all joints and cuts are made. */
final class PartsOverlap implements Check {
  /** Less than this, in mm³, is what arithmetic leaves behind and no fault of the design. */
  private static final double NOTHING_MM3 = 0.01;

  @Override
  public String code() {
    return "parts-overlap";
  }

  @Override
  public String explanation() {
    return "Compares the solids of all parts, joints and cuts applied, pair by pair; a tenon in its"
        + " mortise is no overlap. Round bores are left out.";
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (int i = 0; i < piece.parts().size(); i++) {
      for (int j = i + 1; j < piece.parts().size(); j++) {
        Part one = piece.parts().get(i);
        Part two = piece.parts().get(j);
        if (one.box().overlaps(two.box())) {
          double shared = one.solid().sharedVolumeMm3(two.solid());
          if (shared > NOTHING_MM3) {
            found.add(overlap(piece, one, two, shared));
          }
        }
      }
    }
    return found;
  }

  private Diagnostic overlap(Piece piece, Part one, Part two, double sharedMm3) {
    Box both = one.box().shared(two.box()).orElseThrow();
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
