package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.check.Checks;
import storyrod.description.Description;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.drawing.Drawings;
import storyrod.drawing.ExplodedBenchmark;
import storyrod.drawing.HiddenLinesBenchmark;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.planset.Figures;
import storyrod.planset.PageRooms;
import storyrod.planset.PlanSet;
import storyrod.planset.PlanSetWriter;
import storyrod.planset.Printing;
import storyrod.planset.StepTexts;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlanner;
import storyrod.words.Words;

/**
 * Times every stage of a project's plan set, warm, in one process: least, median and most of the
 * counted rounds. Run by {@code mvn -q -Pbenchmark verify}, with the reading of ever larger
 * descriptions, the checks of a large piece, the build order of ever larger ones, and further
 * editions behind it; not a test, so no time ever fails one.
 */
public final class Benchmark {
  private static final Printing PRINTING = Printing.usual(Words.ENGLISH);
  private static final int WARM_UP = 25;
  private static final int ROUNDS = 25;

  private final Map<String, List<Double>> millis = new LinkedHashMap<>();

  private Benchmark() {}

  /** Takes the description's path and, if wanted, how many rounds warm up and how many count. */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    int warmUp = args.length > 1 ? Integer.parseInt(args[1]) : WARM_UP;
    int rounds = args.length > 2 ? Integer.parseInt(args[2]) : ROUNDS;
    SourceText source = new SourceText(args[0], Files.readString(file));
    Benchmark benchmark = new Benchmark();
    for (int i = 0; i < warmUp; i++) {
      benchmark.round(source);
    }
    benchmark.millis.clear();
    for (int i = 0; i < rounds; i++) {
      benchmark.round(source);
    }
    benchmark.print();
    ReadingBenchmark.run();
    CheckBenchmark.run();
    PlanBenchmark.run();
    EditionBenchmark.run();
    HiddenLinesBenchmark.run();
    ExplodedBenchmark.run(
        parts ->
            PieceBuilder.build(
                    CheckBenchmark.description(parts / CheckBenchmark.PARTS_EACH),
                    new Diagnostics())
                .orElseThrow(),
        (piece, build) -> PageRooms.of(piece, build, Words.ENGLISH));
  }

  private void round(SourceText source) {
    long start = System.nanoTime();
    Diagnostics diagnostics = new Diagnostics();
    Description description =
        timed("description", () -> Pipeline.reader().read(source, diagnostics).orElseThrow());
    Piece piece = timed("piece", () -> PieceBuilder.build(description, diagnostics).orElseThrow());
    timed(
        "check",
        () -> {
          Checks.run(piece, diagnostics);
          return piece;
        });
    StockPlan stock = timed("stock", () -> StockPlanner.plan(piece, diagnostics).orElseThrow());
    BuildPlan build = timed("build", () -> Planner.plan(piece, diagnostics).orElseThrow());
    StepTexts texts = new StepTexts(piece, build);
    Drawings drawings =
        timed("drawing", () -> Drawings.of(piece, stock, build, PageRooms.of(texts, PRINTING)));
    PlanSet set =
        new PlanSet(piece, diagnostics.sorted(), stock, build, drawings, Figures.of(piece));
    timed("planset", () -> new PlanSetWriter(PRINTING, texts).write(set));
    record("all", start);
  }

  private <T> T timed(String stage, Supplier<T> work) {
    long start = System.nanoTime();
    T result = work.get();
    record(stage, start);
    return result;
  }

  private void record(String stage, long start) {
    millis.computeIfAbsent(stage, key -> new ArrayList<>()).add((System.nanoTime() - start) / 1e6);
  }

  private void print() {
    System.out.printf(Locale.ROOT, "%-12s %8s %8s %8s   ms%n", "stage", "least", "median", "most");
    millis.forEach(
        (stage, times) -> {
          Collections.sort(times);
          System.out.printf(
              Locale.ROOT,
              "%-12s %8.1f %8.1f %8.1f%n",
              stage,
              times.getFirst(),
              times.get(times.size() / 2),
              times.getLast());
        });
  }
}
