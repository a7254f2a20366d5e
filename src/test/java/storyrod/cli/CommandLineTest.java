package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import storyrod.check.Checks;

class CommandLineTest {
  @Test
  void helpAndVersionAreNoFaults() {
    assertEquals(0, Shell.run("--help").code());
    assertTrue(Shell.run("build", "--help").out().contains("--out"));
    assertTrue(Shell.run("--version").out().startsWith("storyrod "));
  }

  @Test
  void wrongCommandLineIsExitCodeTwo() {
    assertEquals(2, Shell.run().code());
    assertEquals(2, Shell.run("biuld", "x").code());
    assertEquals(2, Shell.run("build").code());
    assertEquals(2, Shell.run("check", "x", "--out", "y").code());
  }

  @Test
  void warningsAndAdviceStopNothing(@TempDir Path folder) {
    Shell shell = Shell.build(Shell.PROJECTS.resolve("step-stool"), folder.resolve("out"));
    assertEquals(0, shell.code(), shell.err());
    assertTrue(shell.err().contains(": warning: "), shell.err());
    assertEquals(0, Shell.check(Shell.PROJECTS.resolve("step-stool")).code());
  }

  @Test
  void errorsComeBeforeWarningsBeforeAdvice(@TempDir Path folder) {
    String faulty =
        Shell.bench(", tried-on: white ash and birch plywood offcuts", "")
            .replaceAll(
                "(?s)\nbuild:.*",
                "\nbuild: [{stage: Case, order: [fit left-side, drill left-side]}]\n");
    Shell shell = Shell.check(Shell.write(folder.resolve("project.yaml"), faulty));
    assertEquals(1, shell.code());
    List<String> severities =
        Pattern.compile(":\\d+: (error|warning|advice): ")
            .matcher(shell.out())
            .results()
            .map(found -> found.group(1))
            .toList();
    List<String> order = List.of("error", "warning", "advice");
    assertEquals(
        severities.stream().sorted(Comparator.comparing(order::indexOf)).toList(), severities);
    assertEquals(order, severities.stream().distinct().toList(), shell.out());
  }

  @Test
  void everyCheckCanBeExplained() {
    for (String code : Checks.codes()) {
      Shell shell = Shell.run("check", "--explain", code);
      assertEquals(0, shell.code(), shell.err());
      for (String line : List.of(code, "rule:", "source:", "limits:")) {
        assertTrue(shell.out().contains(line), shell.out());
      }
    }
  }

  @Test
  void aCodeThatNoCheckHasIsRefusedWithThoseThereAre() {
    Shell shell = Shell.run("check", "--explain", "tiping-over");
    assertEquals(2, shell.code());
    assertTrue(shell.err().contains("tipping-over"), shell.err());
    assertEquals(2, Shell.run("check").code());
  }
}
