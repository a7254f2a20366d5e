package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Severity;
import storyrod.description.SourceText;

class StartTest {
  @TempDir Path folder;

  static Stream<Arguments> starters() {
    return Starter.names().stream()
        .flatMap(name -> Starter.UNITS.stream().map(unit -> Arguments.of(name, unit)));
  }

  @ParameterizedTest
  @MethodSource("starters")
  void everyStarterIsPlannedWithoutErrorOrWarning(String name, String unit) {
    String text = Starter.named(name).description("my-piece", unit);
    Diagnostics diagnostics = new Diagnostics();
    assertTrue(
        Pipeline.plan(new SourceText(name, text), diagnostics).isPresent(),
        () -> DiagnosticPrinter.print(diagnostics.sorted()));
    assertEquals(
        List.of(),
        diagnostics.sorted().stream()
            .filter(each -> each.severity() != Severity.ADVICE)
            .map(DiagnosticPrinter::print)
            .toList());
  }

  @ParameterizedTest
  @MethodSource("starters")
  void everyStarterIsShortAndExplained(String name, String unit) {
    List<String> lines = Starter.named(name).description("my-piece", unit).lines().toList();
    assertTrue(lines.size() <= 60, () -> name + " has " + lines.size() + " lines");
    assertTrue(lines.stream().filter(line -> line.contains("#")).count() >= 8, name);
    assertTrue(lines.contains("project: My piece"), name);
    assertTrue(lines.stream().noneMatch(line -> line.contains("| ")), name);
  }

  @Test
  void thereAreFive() {
    assertEquals(List.of("bookcase", "box", "cabinet", "stool", "table"), Starter.names());
  }

  @Test
  void whatIsStartedCanBeBuilt() {
    Shell started = start("coffee-table", "--from", "table", "--units", "mm");
    assertEquals(0, started.code(), started.err());
    Path project = folder.resolve("coffee-table");
    assertTrue(started.out().contains("storyrod build " + project), started.out());
    assertTrue(Shell.read(project.resolve("project.yaml")).contains("project: Coffee table\n"));
    assertEquals(0, Shell.build(project, folder.resolve("out")).code());
  }

  @Test
  void whatIsThereStaysAsItWas() {
    Shell.write(folder.resolve("stool/notes.txt"), "mine");
    Map<String, byte[]> before = Shell.files(folder);
    assertRefused(start("stool"), "is there already", "--in");
    Same.assertSame(before, Shell.files(folder));
  }

  @Test
  void badNameIsRefusedWithABetterOne() {
    assertRefused(start("Coffee Table"), "'Coffee Table' cannot be", "`coffee-table`");
    assertRefused(start("../stool"), "'../stool' cannot be", "`stool`");
    assertRefused(start(""), "'' cannot be", "lower-case words");
    assertFalse(Files.exists(folder.resolve("coffee-table")));
  }

  @Test
  void unknownStarterAndUnitAreRefusedWithThoseThereAre() {
    assertRefused(start("x", "--from", "sofa"), "no starter 'sofa'", "bookcase, box, cabinet");
    assertRefused(start("x", "--units", "cm"), "no unit 'cm'", "inch, mm");
  }

  private Shell start(String... args) {
    String[] all =
        Stream.concat(
                Stream.of("start"),
                Stream.concat(Stream.of(args), Stream.of("--in", folder.toString())))
            .toArray(String[]::new);
    return Shell.run(all);
  }

  private static void assertRefused(Shell shell, String message, String hint) {
    assertEquals(1, shell.code());
    assertTrue(shell.err().startsWith("error: "), shell.err());
    assertTrue(shell.err().contains(message), shell.err());
    assertTrue(shell.err().lines().toList().get(1).startsWith("  hint: "), shell.err());
    assertTrue(shell.err().contains(hint), shell.err());
  }
}
