package storyrod.planset;

import java.util.List;
import storyrod.build.BuildPlan;
import storyrod.build.Schedule;
import storyrod.description.Diagnostic;
import storyrod.description.Severity;
import storyrod.drawing.Drawings;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;

/**
 * Everything that was computed for a piece.
 *
 * @param findings none of them an error
 * @param figures what is known beyond the stages, such as the weight
 * @param kept the files that it was made from
 */
public record PlanSet(
    Piece piece,
    List<Diagnostic> findings,
    StockPlan stock,
    BuildPlan build,
    Drawings drawings,
    Figures figures,
    Kept kept) {
  public PlanSet {
    findings = List.copyOf(findings);
    if (findings.stream().anyMatch(each -> each.severity() == Severity.ERROR)) {
      throw new IllegalArgumentException("bug: a plan set of a piece with errors");
    }
  }

  /** When each step is done, in the shop of the piece. */
  public Schedule schedule() {
    return Schedule.of(build, piece.description().shop());
  }

  /** A plan set of which no file is known. */
  public PlanSet(
      Piece piece,
      List<Diagnostic> findings,
      StockPlan stock,
      BuildPlan build,
      Drawings drawings,
      Figures figures) {
    this(piece, findings, stock, build, drawings, figures, Kept.NOTHING);
  }

  public PlanSet(
      Piece piece, List<Diagnostic> findings, StockPlan stock, BuildPlan build, Drawings drawings) {
    this(piece, findings, stock, build, drawings, Figures.NONE);
  }
}
