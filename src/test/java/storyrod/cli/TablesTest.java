package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Severity;
import storyrod.description.Shipped;
import storyrod.description.SourceText;
import storyrod.measure.Length;
import storyrod.piece.Part;

/** The frame and the tops that come with the tool, alone and in the projects that use them. */
class TablesTest {
  /** Where the descriptions are looked at from: that with a photo lies there. */
  private static final String FILE = "projects/nightstand/project.yaml";

  private static Pipeline.Planned planned(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Pipeline.Planned> planned = Pipeline.plan(new SourceText(FILE, text), diagnostics);
    List<Diagnostic> found = diagnostics.sorted();
    assertFalse(diagnostics.hasErrors(), () -> DiagnosticPrinter.print(found));
    return planned.orElseThrow();
  }

  private static List<String> warnings(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Pipeline.plan(new SourceText(FILE, text), diagnostics);
    return diagnostics.sorted().stream()
        .filter(each -> each.severity() != Severity.ADVICE)
        .map(Diagnostic::code)
        .toList();
  }

  private static String project(String name) {
    return Shell.read(Path.of("projects", name, "project.yaml"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"leg-and-apron", "slab-top", "breadboard-top"})
  void shippedOneIsBuiltAloneByItsDefaults(String name) {
    assertEquals(List.of(), warnings(Shipped.text(name)));
  }

  @ParameterizedTest
  @CsvSource({
    "'legs: [straight, tapered]', 'legs: [tapered, straight]', leg-and-apron",
    "'stretchers: 0', 'stretchers: 1', leg-and-apron",
    "'stretchers: 0', 'stretchers: 5', leg-and-apron",
    "'edge: [square, rounded', 'edge: [rounded, square', slab-top",
    "'edge: [square, rounded, chamfered]', 'edge: [chamfered, square, rounded]', breadboard-top",
  })
  void otherChoiceIsBuiltToo(String usual, String other, String name) {
    String text = Shipped.text(name);
    assertTrue(text.contains(usual));
    assertEquals(List.of(), warnings(text.replace(usual, other)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"dining-table", "nightstand"})
  void projectsThatUseThemHaveNothingToWarnOf(String name) {
    assertEquals(List.of(), warnings(project(name)));
  }

  @Test
  void taperedLegsStayStraightAtTheirOuterFaces() {
    Part leg = planned(project("dining-table")).piece().part("frame.left-end.front-leg");
    assertEquals(2, leg.cuts().stream().filter(cut -> cut.term().equals("mortise")).count());
    double width = leg.box().size(leg.thickness()).toMmExact().doubleValue();
    // two inner faces lose 7/8 in of 2 1/4 in evenly over the 23 1/4 in below the line: on an end
    // of
    // 1 3/8 in square that leaves the frustum's volume (a² + a b + b²) / 3 times its length
    double above = width * width * 25.4 * (28.5 - 23.25);
    double end = 1.375 * 25.4;
    double below = (width * width + width * end + end * end) / 3 * 23.25 * 25.4;
    double mortises = 2 * (5.0 / 16) * (4.25 - 5.0 / 8 - 1.0 / 4) * (1 + 3.0 / 16) * 16387.064;
    assertEquals(above + below - mortises, leg.solid().volumeMm3(), 1);
  }

  private static int step(Pipeline.Planned planned, String operation) {
    return planned.build().steps().stream()
        .filter(each -> each.operations().stream().anyMatch(o -> o.name().equals(operation)))
        .mapToInt(Step::number)
        .max()
        .orElseThrow(() -> new AssertionError("no " + operation));
  }

  @Test
  void bothLongApronsAndTheEndsAreGluedInOneStepOneAfterTheOther() {
    Pipeline.Planned table = planned(project("dining-table"));
    int aprons = step(table, "fit frame.front-apron");
    assertEquals(aprons, step(table, "fit frame.back-apron"));
    assertEquals(aprons, step(table, "fit frame.right-end"));
    List<List<String>> tiers =
        table.build().steps().get(aprons - 1).tiers().stream()
            .map(tier -> tier.stream().map(Operation::target).toList())
            .toList();
    assertEquals(
        List.of(List.of("frame.front-apron", "frame.back-apron"), List.of("frame.right-end")),
        tiers);
  }

  @Test
  void topIsSetOnTheFrameWhenTheFinishIsOn() {
    Pipeline.Planned table = planned(project("dining-table"));
    Step last = table.build().steps().get(step(table, "fit top") - 1);
    assertTrue(last.number() > step(table, "finish piece"));
    assertTrue(last.movingParts().contains("top.slab"), () -> last.movingParts().toString());
    assertTrue(step(table, "size top.slab") < step(table, "cut top.slab"));
  }

  @Test
  void pegsHoldTheEndsBeforeTheFinish() {
    Pipeline.Planned table = planned(project("dining-table"));
    Step end = table.build().steps().get(step(table, "fit top.right-end") - 1);
    assertTrue(end.number() < step(table, "finish piece"));
    assertTrue(end.newParts().contains("top.left-end"), () -> end.newParts().toString());
    assertEquals(2 * 3, end.hardware().getFirst().count());
  }

  /** A case of three boards gives no opening in which a front's gap could be judged. */
  @Test
  void drawersAreTriedWhenWhatHoldsTheCaseInShapeIsOn() {
    Pipeline.Planned stand = planned(project("nightstand"));
    Step trial =
        stand.build().steps().stream()
            .filter(each -> each.verb() == Verb.TRIAL_FIT)
            .findFirst()
            .orElseThrow();
    for (String part : List.of("back", "front-stretcher", "left-edge")) {
      assertTrue(step(stand, "fit " + part) < trial.number(), part);
    }
  }

  @Test
  void drawersOfTheNightstandAreGraduated() {
    Pipeline.Planned stand = planned(project("nightstand"));
    // 390 mm over the bottom for three, each 24 mm less: 154, 130 and 106 mm, less a gap all round
    List<Length> heights =
        List.of(1, 2, 3).stream()
            .map(n -> stand.piece().part("drawer-" + n + ".face").finishedWidth())
            .toList();
    assertEquals(List.of(Length.mm(151), Length.mm(127), Length.mm(103)), heights);
  }
}
