package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.StockKind;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

/** Mitres that glue on end grain alone has to hold. */
final class PlainMitre implements Check {
  @Override
  public String code() {
    return "plain-mitre";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A mitre glued end grain to end grain, without a spline or a fastener, is weak.",
        "Common practice.",
        "Sheet goods and edges with the grain along the joint are left out; so is the load.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.joints().stream()
        .filter(joint -> joint.glued() && joint.fasteners().isEmpty())
        .filter(joint -> isOnEndGrain(piece.part(joint.first()), joint))
        .filter(joint -> isOnEndGrain(piece.part(joint.second()), joint))
        .map(this::weak)
        .toList();
  }

  private static boolean isOnEndGrain(Part part, Joint joint) {
    return part.stock().kind() == StockKind.SOLID
        && part.cuts().stream()
            .filter(cut -> cut instanceof Slanted.Slope && cut.at().equals(joint.at()))
            .anyMatch(cut -> cut.from().axis() == part.length());
  }

  private Diagnostic weak(Joint joint) {
    return Diagnostic.advice(
            code(),
            joint.at(),
            "the mitre of %s and %s is glued on end grain alone, which holds little"
                .formatted(joint.first(), joint.second()))
        .hint(
            "add a spline: `spline:` with its `thickness` and `depth`, and name it under `items`");
  }
}
