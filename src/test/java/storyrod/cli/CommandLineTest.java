package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
        Shell.bench(", tried-on: white ash and birch plywood offcuts}", "}")
            .replace("count: 5, brad: brad", "count: 5, brad: long-screw")
            .replace("from: bottom, count: 2", "from: top, count: 2")
            .replace("slot-from-top: 3/8", "slot-from-top: 33");
    Shell shell = Shell.check(Shell.write(folder.resolve("project.yaml"), faulty));
    assertEquals(1, shell.code());
    String order = shell.out().replaceAll("(?s).*?: (error|warning|advice): .*?(?=\\n\\n|$)", "$1 ");
    assertTrue(order.matches("(error )+(warning )*(advice )*(?s:.*)"), shell.out());
  }
}
