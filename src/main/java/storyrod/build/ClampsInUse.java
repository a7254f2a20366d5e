package storyrod.build;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping.Clamps;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/** How many clamps a step keeps from its start until its glue has set. */
public record ClampsInUse(Piece piece) {
  static boolean isGlueUp(Step step) {
    return step.verb() == Verb.FIT && step.waitMinutes() > 0;
  }

  /** The full names of the parts that a step moves or works on. */
  public static Set<String> touched(Step step) {
    Set<String> parts = new LinkedHashSet<>(step.targets());
    parts.addAll(step.standing());
    return parts;
  }

  /** What the glue of a step asks for; its clamps are never more than the shop has. */
  GlueUp of(Step step) {
    GlueTimes times = GlueTimes.of(piece.description());
    boolean isPanel = PanelClamps.isGlueUp(step) && !panels(step).isEmpty();
    boolean isSpread = isPanel || glued(step).findAny().isPresent();
    GlueTurns turns = GlueTurns.of(piece, step);
    int clamps = Math.min(turns.each() * turns.atOnce(), piece.description().shop().clamps());
    int clamped = clamps == 0 ? 0 : isPanel ? times.clampMinutes() : step.waitMinutes();
    return isSpread ? new GlueUp(clamps, clamped, times.cured()) : GlueUp.NONE;
  }

  /** The clamps that all a step glues up would want at once, however many the shop has. */
  int by(Step step) {
    if (PanelClamps.isGlueUp(step)) {
      return panels(step).stream().mapToInt(new PanelClamps(piece)::count).sum();
    }
    return isGlueUp(step) && isPressed(step) ? Math.max(1, pressing(step)) : 0;
  }

  /** As many as its sentences set, or what a strap or blocks would want in their place. */
  private int pressing(Step step) {
    int set = Clamping.of(piece, step).clamps().stream().mapToInt(Clamps::count).sum();
    Optional<Axis> axis = step.enters().map(Face::axis);
    List<Joint> pressed = glued(step).filter(piece::isClamped).toList();
    return set > 0 ? set : axis.map(along -> GlueUps.clampsFor(pressed, along)).orElse(0);
  }

  private boolean isPressed(Step step) {
    return glued(step).anyMatch(piece::isClamped)
        && !glued(step).allMatch(joint -> isLappedOnEdge(piece, joint));
  }

  /** Whether thin parts on edge cross, so that their slots hold them and no clamp could. */
  public static boolean isLappedOnEdge(Piece piece, Joint joint) {
    Part first = piece.part(joint.first());
    return first.cuts().stream()
        .filter(cut -> cut.term().equals("cross-lap") && cut.at().equals(joint.at()))
        .anyMatch(cut -> cut.from().axis() != first.thickness());
  }

  private List<GluedPanel> panels(Step step) {
    return PanelClamps.panels(piece, step);
  }

  private static Stream<Joint> glued(Step step) {
    return step.operations().stream()
        .filter(operation -> operation.verb() == Verb.FIT)
        .flatMap(operation -> operation.joints().stream())
        .filter(Joint::glued);
  }
}
