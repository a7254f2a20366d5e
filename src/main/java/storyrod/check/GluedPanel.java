package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.piece.FloatingPanel;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** A solid panel in grooves that glue keeps from swelling and shrinking. */
final class GluedPanel implements Check {
  @Override
  public String code() {
    return "glued-panel";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A solid panel with both edges in grooves gets no glue there: not at both edges, and not at"
            + " an end, which runs across its grain.",
        "Common practice; the movement that it needs is that of the Wood Handbook, eq. 13-2 and"
            + " 13-3.",
        "Glue along one edge alone is allowed, for then the panel moves to the other edge. A dab in"
            + " the middle of an end, which some use to keep a panel centred, cannot be"
            + " described.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return FloatingPanel.of(piece).stream()
        .filter(panel -> !panel.heldBy().isEmpty())
        .map(panel -> finding(piece, panel))
        .toList();
  }

  /** Whether a joint is told here, so that no other check need tell it. */
  static boolean tells(Piece piece, Joint joint) {
    return joint.glued()
        && FloatingPanel.of(piece).stream().anyMatch(panel -> panel.heldBy().contains(joint));
  }

  private Diagnostic finding(Piece piece, FloatingPanel floating) {
    List<Joint> held = floating.heldBy();
    String name = floating.panel().name();
    String others = String.join(" and ", held.stream().map(Joint::second).distinct().toList());
    Diagnostic finding =
        Diagnostic.warning(
            code(),
            held.getFirst().at(),
            "%s is glued into %s, but a solid panel in grooves has to be free to swell and shrink"
                .formatted(name, others));
    for (Joint more : held.subList(1, held.size())) {
      finding = finding.also(more.at(), "and here");
    }
    return finding
        .also(floating.panel().at(), name + " is defined here")
        .also(piece.part(held.getFirst().second()).at(), held.getFirst().second() + " is here")
        .hint("leave `glue` out: the groove holds the panel");
  }
}
