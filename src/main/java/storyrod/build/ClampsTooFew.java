package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostic;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Finds glue-ups of one thing that take more clamps at once than the shop has: no turns help. A
 * frame that is pressed down on what stands is left out: stiff battens spread the clamps there are.
 */
record ClampsTooFew(Piece piece) {
  /** So many parts in one make a frame. */
  private static final int FRAME = 4;

  List<Diagnostic> findings(List<Step> steps) {
    List<Diagnostic> findings = new ArrayList<>();
    for (Step step : steps) {
      if (PanelClamps.isGlueUp(step)) {
        PanelClamps clamps = new PanelClamps(piece);
        PanelClamps.panels(piece, step).stream()
            .filter(panel -> clamps.count(panel) > shop())
            .map(panel -> panel(panel.first(), clamps.count(panel)))
            .forEach(findings::add);
      } else if (GlueTurns.of(piece, step).each() > shop() && !isPressedDown(step)) {
        findings.add(assembly(step, GlueTurns.of(piece, step).each()));
      }
    }
    return findings;
  }

  private static boolean isPressedDown(Step step) {
    return step.newParts().size() >= FRAME
        && !step.standing().isEmpty()
        && step.operations().stream()
                .flatMap(each -> each.joints().stream())
                .filter(Joint::glued)
                .map(joint -> joint.entry().axis())
                .distinct()
                .count()
            == 1;
  }

  private int shop() {
    return piece.description().shop().clamps();
  }

  private Diagnostic panel(Part part, int wanted) {
    return finding(part, wanted)
        .hint(
            borrow(wanted)
                + "; or draw the boards together with cauls and wedges against a stop where a clamp"
                + " is missing");
  }

  private Diagnostic assembly(Step step, int wanted) {
    return finding(piece.part(step.targets().getFirst()), wanted)
        .hint(
            borrow(wanted)
                + "; let screws or brads hold some joints while the glue sets; or put its parts on in"
                + " steps of their own, in `build`");
  }

  private Diagnostic finding(Part part, int wanted) {
    return Diagnostic.advice(
        "clamps-too-few",
        part.at(),
        "gluing up `%s` takes %d clamps at once, and the shop has %d"
            .formatted(part.name(), wanted, shop()));
  }

  private String borrow(int wanted) {
    return "borrow %d more, or count them in `clamps` of the shop".formatted(wanted - shop());
  }
}
