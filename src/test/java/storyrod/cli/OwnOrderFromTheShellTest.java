package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench's broken twin, whose left side is glued in before its holes are drilled. */
class OwnOrderFromTheShellTest {
  private static final Path TWIN = Shell.PROJECTS.resolve("window-bench-glued-too-early");
  private static final String ORDER =
      """

      # The maker's own order, in which the left side is glued in before its shelf-pin holes are drilled.
      build:
        - stage: Case
          order:
            - fit left-side
            - drill left-side
      """;

  @Test
  void twinIsTheBenchAndAnOrder() {
    assertEquals(
        Shell.read(Shell.BENCH.resolve("project.yaml"))
                .replaceAll("(?s)\n#[^\n]*\nbuild:.*|\nbuild:.*", "")
            + ORDER,
        Shell.read(TWIN.resolve("project.yaml")),
        "copy the bench's text up to its order into its twin, above the twin's own order");
  }

  @Test
  void bothStepsAreNamedWithTheirLinesAndNothingIsWritten(@TempDir Path folder) {
    Path out = folder.resolve("out");
    Shell shell = Shell.build(TWIN, out);
    int line = lineOf("- fit left-side");
    assertEquals(1, shell.code());
    assertTrue(shell.err().contains("project.yaml:" + line + ":9: error: "), shell.err());
    assertTrue(shell.err().contains("`fit left-side` comes before `drill left-side`"), shell.err());
    assertTrue(
        shell.err().contains("  " + (line + 1) + " |       - drill left-side "), shell.err());
    assertTrue(shell.err().contains("hint: move `drill left-side` up"), shell.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void orderTheOtherWayRoundIsKept(@TempDir Path folder) {
    String text =
        Shell.read(TWIN.resolve("project.yaml"))
            .replace(
                "- fit left-side\n      - drill left-side",
                "- drill left-side\n      - fit left-side");
    Shell shell = Shell.check(Shell.write(folder.resolve("project.yaml"), text));
    assertEquals(0, shell.code(), shell.out());
  }

  private static int lineOf(String text) {
    return (int)
        Shell.read(TWIN.resolve("project.yaml"))
            .split(java.util.regex.Pattern.quote(text))[0]
            .lines()
            .count();
  }
}
