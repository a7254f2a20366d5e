package storyrod.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.check.Checks;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Library;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.geometry.Lazy;
import storyrod.measure.Units;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.planset.Kept;
import storyrod.planset.Photo;
import storyrod.planset.PlanSet;
import storyrod.planset.Printable;
import storyrod.planset.Printing;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlanner;
import storyrod.words.Words;

/** The stages in their order. Each goes on past its own faults; the next begins only without. */
public final class Pipeline {
  static final Vocabulary VOCABULARY =
      new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());

  private Pipeline() {}

  static DescriptionReader reader() {
    return reader(ProjectLibrary.usual());
  }

  private static DescriptionReader reader(Library library) {
    return new DescriptionReader(VOCABULARY, Printable::has, library);
  }

  /** The names of a project's options, also where the project itself has a fault. */
  static List<String> options(SourceText source) {
    return DescriptionReader.options(source);
  }

  /**
   * What is planned before anything is drawn.
   *
   * @param shortages what was found while the stock was planned
   */
  record Planned(
      Piece piece, StockPlan stock, BuildPlan build, Kept kept, List<Diagnostic> shortages) {
    Planned {
      shortages = List.copyOf(shortages);
    }

    private Planned from(Kept files) {
      return new Planned(piece, stock, build, files, shortages);
    }

    /**
     * The same for who buys all of its stock; as it is where nothing is on hand, or where a piece
     * on hand gives what none that is bought can.
     */
    Planned asBought() {
      if (piece.description().onHand().isEmpty()) {
        return this;
      }
      Piece bought = piece.asBought();
      Diagnostics found = new Diagnostics();
      return StockPlanner.plan(bought, found)
          .filter(plan -> !found.hasErrors())
          .map(plan -> new Planned(bought, plan, build, kept, found.sorted()))
          .orElse(this);
    }
  }

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
    return plan(source, new Wanted(option, Words.ENGLISH, Units.OWN), diagnostics);
  }

  /** Which option of a description is planned, in which words it is told, in which units. */
  record Wanted(Optional<String> option, Words words, Units units) {}

  /** All stages up to the drawings, with the files that they were made from. */
  static Optional<Planned> plan(SourceText source, Wanted wanted, Diagnostics diagnostics) {
    GatheredFiles files = new GatheredFiles(ProjectLibrary.usual(), source);
    Optional<Description> description =
        reader(files)
            .read(source, wanted.option(), diagnostics)
            .map(found -> found.in(wanted.words(), wanted.units()));
    if (description.isEmpty()) {
      return Optional.empty();
    }
    ProjectPhotos folder = ProjectPhotos.beside(source.file());
    Map<String, Photo> photos = folder.read(description.get().record(), diagnostics);
    return plan(description.get(), diagnostics)
        .map(planned -> planned.from(new Kept(files.texts(), photos)));
  }

  static Optional<Planned> plan(Description description, Diagnostics diagnostics) {
    Optional<Piece> piece = PieceBuilder.build(description, diagnostics);
    if (piece.isEmpty()) {
      return Optional.empty();
    }
    Checks.run(piece.get(), diagnostics);
    return plan(piece.get(), diagnostics);
  }

  /** Stock and order of work know nothing of each other, so they are planned side by side. */
  private static Optional<Planned> plan(Piece piece, Diagnostics diagnostics) {
    Diagnostics ofBuild = new Diagnostics();
    Diagnostics ofStock = new Diagnostics();
    Lazy<Optional<StockPlan>> stock = new Lazy<>(() -> StockPlanner.plan(piece, ofStock));
    Lazy<Optional<BuildPlan>> build = new Lazy<>(() -> Planner.plan(piece, ofBuild));
    boolean sound = !diagnostics.hasErrors();
    (sound ? Stream.of(stock, build) : Stream.of(stock)).parallel().forEach(Lazy::get);
    diagnostics.addAll(ofStock.sorted());
    if (diagnostics.hasErrors()) {
      return Optional.empty();
    }
    diagnostics.addAll(ofBuild.sorted());
    return stock.get().flatMap(s -> build.get().map(b -> planned(piece, s, b, ofStock.sorted())));
  }

  private static Planned planned(
      Piece piece, StockPlan stock, BuildPlan build, List<Diagnostic> shortages) {
    return new Planned(piece, stock, build, Kept.NOTHING, shortages);
  }
}
