package storyrod.build;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;

/** The hand-built bench for tests of other packages. */
public final class SamplePieces {
  private SamplePieces() {}

  public static Piece bench() {
    return Benches.bench(new TestPiece().inches()).piece();
  }

  public static BuildPlan benchPlan() {
    return Planner.plan(bench(), new Diagnostics()).orElseThrow();
  }

  /** What is wrong with an order for the bench, one {@code VERB TARGET} a line. */
  public static List<Diagnostic> benchFaults(String order) {
    Diagnostics diagnostics = new Diagnostics();
    Planner.plan(Benches.bench(TestPiece.withOrder("Case", order)).piece(), diagnostics);
    return diagnostics.sorted();
  }
}
