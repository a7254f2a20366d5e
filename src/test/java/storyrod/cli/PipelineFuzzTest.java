package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.PlanSet;
import storyrod.planset.PlanSetWriter;
import storyrod.words.Words;

/** Whatever a hand slips on in a whole description, it ends in a plan set or in an error. */
class PipelineFuzzTest {
  private static final Path CRASHES = Path.of("src/test/resources/cases/crash");
  private static final int TRIES = 200;
  private static final int WRITE_EACH = 25;
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.#/-])\\d+(?: \\d+/\\d+|/\\d+)?(?![\\w./])");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{3,}");
  private static final List<String> VALUES =
      List.of("0", "1/64", "1", "3", "7 1/2", "11", "40", "600", "-2", "1 mm", "18 mm", "1/3");

  @Test
  void slipsEndInAPlanOrInAnError() {
    Random random = new Random(20261125);
    String bench = Shell.read(Shell.BENCH.resolve("project.yaml"));
    int planned = 0;
    for (int i = 0; i < TRIES; i++) {
      planned += goesWell(slipped(bench, random), planned % WRITE_EACH == 0) ? 1 : 0;
    }
    assertTrue(planned > TRIES / 20, "only " + planned + " slips were harmless: too rough a test");
  }

  private static String slipped(String text, Random random) {
    return switch (random.nextInt(6)) {
      case 0, 1, 2 -> exchanged(text, NUMBER, VALUES.get(random.nextInt(VALUES.size())), random);
      case 3 -> exchanged(text, NAME, one(text, NAME, random).group(), random);
      case 4 -> lines(text, random);
      default ->
          exchanged(text, Pattern.compile("left|right|top|bottom|front|back"), "back", random);
    };
  }

  private static MatchResult one(String text, Pattern pattern, Random random) {
    List<MatchResult> found = pattern.matcher(text).results().toList();
    return found.get(random.nextInt(found.size()));
  }

  private static String exchanged(String text, Pattern pattern, String by, Random random) {
    MatchResult at = one(text, pattern, random);
    return text.substring(0, at.start()) + by + text.substring(at.end());
  }

  /** A line left out, written twice, or moved. */
  private static String lines(String text, Random random) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n")));
    String line = lines.get(random.nextInt(lines.size()));
    if (random.nextBoolean()) {
      lines.remove(line);
    }
    if (random.nextBoolean()) {
      lines.add(random.nextInt(lines.size()), line);
    }
    return String.join("\n", lines) + "\n";
  }

  static Stream<Path> crashes() throws IOException {
    try (Stream<Path> files = Files.list(CRASHES)) {
      return files.sorted().toList().stream();
    }
  }

  /** Each of these once ended in an exception. */
  @ParameterizedTest
  @MethodSource("crashes")
  void formerCrashEndsInAPlanOrInAnError(Path file) {
    goesWell(Shell.read(file), true);
  }

  private static boolean goesWell(String text, boolean write) {
    Diagnostics diagnostics = new Diagnostics();
    try {
      SourceText source = new SourceText("project.yaml", text);
      return write ? written(source, diagnostics) : planned(source, diagnostics);
    } catch (RuntimeException | StackOverflowError failure) {
      return fail("this text broke the pipeline:\n" + text, failure);
    }
  }

  private static boolean planned(SourceText source, Diagnostics diagnostics) {
    boolean planned = Pipeline.plan(source, diagnostics).isPresent();
    assertEquals(planned, !diagnostics.hasErrors(), source.text());
    DiagnosticPrinter.print(diagnostics.bySeverity());
    return planned;
  }

  private static boolean written(SourceText source, Diagnostics diagnostics) {
    Optional<PlanSet> set = Pipeline.planSet(source, diagnostics);
    assertEquals(set.isPresent(), !diagnostics.hasErrors(), source.text());
    set.ifPresent(each -> assertTrue(new PlanSetWriter(Words.ENGLISH).write(each).size() > 5));
    return set.isPresent();
  }
}
