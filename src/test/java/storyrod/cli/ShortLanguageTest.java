package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Severity;
import storyrod.description.SourceText;
import storyrod.planset.PlanSet;

/** A whole table fits on a screen: what a maker writes who knows the reference and nothing else. */
class ShortLanguageTest {
  private static final Path TABLE = Shell.PROJECTS.resolve("coffee-table/project.yaml");
  private static final int MOST_LINES = 80;

  @Test
  void aCoffeeTableTakesFewLinesAndNothingWarnsOfIt() {
    String text = Shell.read(TABLE);
    assertTrue(text.lines().count() < MOST_LINES, () -> text.lines().count() + " lines");
    Diagnostics found = new Diagnostics();
    Optional<PlanSet> plan = Pipeline.planSet(new SourceText(TABLE.toString(), text), found);
    List<Diagnostic> bad =
        found.sorted().stream().filter(each -> each.severity() != Severity.ADVICE).toList();
    assertEquals(List.of(), bad, () -> DiagnosticPrinter.print(bad));
    assertEquals(
        16,
        plan.orElseThrow().piece().parts().size(),
        "4 legs, 4 aprons, 3 stretchers, 4 slats, a top");
  }
}
