package storyrod.build;

import java.util.List;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping.Clamps;
import storyrod.piece.Piece;

/**
 * How many of the sub-assemblies that a step glues up alike the shop has clamps for at once.
 *
 * @param units how many there are
 */
public record GlueTurns(int units, int atOnce) {
  /** The turns of a step; one where it glues up one thing only. */
  public static GlueTurns of(Piece piece, Step step) {
    int units = ClampsInUse.isGlueUp(step) ? levels(piece, step).size() : 1;
    int wanted =
        units < 2 ? 0 : Clamping.of(piece, step).clamps().stream().mapToInt(Clamps::count).sum();
    int each = Math.ceilDiv(wanted, units);
    int clamped = each == 0 ? units : piece.description().shop().clamps() / each;
    return new GlueTurns(units, Math.clamp(clamped, 1, units));
  }

  private static List<String> levels(Piece piece, Step step) {
    var levels = Levels.byUnit(piece);
    return step.operations().stream()
        .map(each -> levels.getOrDefault(Groups.first(each.target()), Unit.PIECE))
        .distinct()
        .toList();
  }

  public int turns() {
    return Math.ceilDiv(units, atOnce);
  }
}
