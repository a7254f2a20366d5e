package storyrod.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.Edition;
import storyrod.planset.Paper;
import storyrod.planset.PlanSet;
import storyrod.planset.Printing;
import storyrod.planset.Stamp;
import storyrod.planset.StampedCopies;
import storyrod.planset.Templates;
import storyrod.words.Words;

/**
 * Times what further editions, papers and stamped copies of the sideboard cost once the first is
 * there, warm: the processor's time of the thread, which a busy machine hardly changes.
 */
final class EditionBenchmark {
  private static final Path PROJECT = Path.of("projects/sideboard/project.yaml");
  private static final int ROUNDS = 3;
  private static final int COPIES = 50;

  private final Map<String, double[]> millis = new LinkedHashMap<>();

  private EditionBenchmark() {}

  /** Prints the median for each print, the first with all stages before it. */
  static void run() throws IOException {
    EditionBenchmark benchmark = new EditionBenchmark();
    SourceText source = new SourceText(PROJECT.toString(), Files.readString(PROJECT));
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      benchmark.round(source, Math.max(0, round));
    }
    System.out.printf(Locale.ROOT, "%n%-24s %8s%n", "prints of the sideboard", "ms");
    benchmark.millis.forEach(
        (name, times) -> {
          Arrays.sort(times);
          System.out.printf(Locale.ROOT, "%-24s %8.1f%n", name, times[ROUNDS / 2]);
        });
  }

  private void round(SourceText source, int round) {
    Diagnostics diagnostics = new Diagnostics();
    Pipeline.Wanted wanted =
        new Pipeline.Wanted(Optional.empty(), Words.ENGLISH, storyrod.measure.Units.OWN);
    PlanSets[] sets = new PlanSets[1];
    byte[] first =
        timed(
            "first, all stages",
            round,
            () -> {
              sets[0] =
                  new PlanSets(
                      Pipeline.plan(source, wanted, diagnostics).orElseThrow(), diagnostics);
              return pdf(sets[0], Edition.USUAL, Paper.LETTER);
            });
    timed("helper", round, () -> pdf(sets[0], "helper", Paper.LETTER));
    timed("record", round, () -> pdf(sets[0], "record", Paper.LETTER));
    timed("preview", round, () -> pdf(sets[0], "preview", Paper.LETTER));
    timed("publish on a4", round, () -> pdf(sets[0], Edition.USUAL, Paper.A4));
    timed("publish on a3", round, () -> pdf(sets[0], Edition.USUAL, Paper.A3));
    timed(COPIES + " stamped copies", round, () -> copies(first));
  }

  private static byte[] pdf(PlanSets sets, String edition, Paper paper) {
    Printing usual = Printing.usual(Words.ENGLISH);
    Printing printing =
        new Printing(
            usual.templates(),
            usual.words(),
            Edition.named(edition, Templates.SHARED).orElseThrow(),
            Optional.of(paper),
            usual.choice());
    PlanSet set = sets.of(printing);
    return sets.writer(printing).pdf(set);
  }

  private static byte[] copies(byte[] pdf) {
    StampedCopies copies = new StampedCopies(pdf, Words.ENGLISH);
    byte[] last = pdf;
    for (int number = 1; number <= COPIES; number++) {
      last = copies.copy(new Stamp("Ada Miller", number));
    }
    return last;
  }

  private byte[] timed(String name, int round, Supplier<byte[]> work) {
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    byte[] result = work.get();
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
    millis.computeIfAbsent(name, key -> new double[ROUNDS])[round] = took / 1e6;
    return result;
  }
}
