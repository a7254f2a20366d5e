package storyrod.cli;

import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.check.Checks;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.planset.PlanSet;
import storyrod.planset.Printable;
import storyrod.planset.Printing;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlanner;

/** The stages in their order. Each goes on past its own faults; the next begins only without. */
public final class Pipeline {
  static final Vocabulary VOCABULARY =
      new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());

  private Pipeline() {}

  static DescriptionReader reader() {
    return new DescriptionReader(VOCABULARY, Printable::has, ProjectLibrary.usual());
  }

  /** The names of a project's options, also where the project itself has a fault. */
  static List<String> options(SourceText source) {
    return DescriptionReader.options(source);
  }

  /** What is planned before anything is drawn. */
  record Planned(Piece piece, StockPlan stock, BuildPlan build) {}

  /** The plan set of a description, or nothing if there are errors among the diagnostics. */
  public static Optional<PlanSet> planSet(SourceText source, Diagnostics diagnostics) {
    return planSet(source, Optional.empty(), diagnostics);
  }

  /** The plan set of a description with one of its options. */
  static Optional<PlanSet> planSet(
      SourceText source, Optional<String> option, Diagnostics diagnostics) {
    return plan(source, option, diagnostics)
        .map(planned -> drawn(planned, printing(planned.piece()), diagnostics));
  }

  private static Printing printing(Piece piece) {
    return Printing.usual(piece.description().words());
  }

  /** What is planned with its drawings, for the pages on which they are to stand. */
  static PlanSet drawn(Planned planned, Printing printing, Diagnostics diagnostics) {
    return new PlanSets(planned, diagnostics).of(printing);
  }

  /** All stages up to the drawings. */
  static Optional<Planned> plan(SourceText source, Diagnostics diagnostics) {
    return plan(source, Optional.empty(), diagnostics);
  }

  /** All stages up to the drawings, with one of the description's options. */
  static Optional<Planned> plan(
      SourceText source, Optional<String> option, Diagnostics diagnostics) {
    return reader()
        .read(source, option, diagnostics)
        .flatMap(description -> plan(description, diagnostics));
  }

  static Optional<Planned> plan(Description description, Diagnostics diagnostics) {
    Optional<Piece> piece = PieceBuilder.build(description, diagnostics);
    if (piece.isEmpty()) {
      return Optional.empty();
    }
    Checks.run(piece.get(), diagnostics);
    Optional<StockPlan> stock = StockPlanner.plan(piece.get(), diagnostics);
    if (diagnostics.hasErrors()) {
      return Optional.empty();
    }
    Optional<BuildPlan> build = Planner.plan(piece.get(), diagnostics);
    return stock.flatMap(s -> build.map(b -> new Planned(piece.get(), s, b)));
  }
}
