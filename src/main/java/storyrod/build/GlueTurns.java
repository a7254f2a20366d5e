package storyrod.build;

import java.util.List;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/**
 * How many of the things that a step glues up alike, sub-assemblies or panels, the shop has clamps
 * for at once.
 *
 * @param units how many there are
 * @param turns in how many turns they are glued up, as the shop's clamps allow
 * @param each how many clamps one takes
 */
public record GlueTurns(int units, int atOnce, int turns, int each) {
  /** The turns of a step; one where it glues up one thing only. */
  public static GlueTurns of(Piece piece, Step step) {
    int units = Math.max(1, units(piece, step));
    int each = Math.ceilDiv(new ClampsInUse(piece).by(step), units);
    int clamped = each == 0 ? units : piece.description().shop().clamps() / each;
    int atOnce = Math.clamp(clamped, 1, units);
    return PanelClamps.isGlueUp(step)
        ? ofPanels(new PanelClamps(piece).rounds(step), each)
        : new GlueTurns(units, atOnce, Math.ceilDiv(units, atOnce), each);
  }

  private static GlueTurns ofPanels(List<List<GluedPanel>> rounds, int each) {
    int most = rounds.stream().mapToInt(List::size).max().orElse(1);
    int units = rounds.stream().mapToInt(List::size).sum();
    return new GlueTurns(Math.max(1, units), most, Math.max(1, rounds.size()), each);
  }

  private static int units(Piece piece, Step step) {
    if (PanelClamps.isGlueUp(step)) {
      return PanelClamps.panels(piece, step).size();
    }
    return ClampsInUse.isGlueUp(step) ? levels(piece, step).size() : 1;
  }

  private static List<String> levels(Piece piece, Step step) {
    var levels = Levels.byUnit(piece);
    return step.operations().stream()
        .map(each -> levels.getOrDefault(Groups.first(each.target()), Unit.PIECE))
        .distinct()
        .toList();
  }
}
