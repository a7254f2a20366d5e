package storyrod.build.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Planner;
import storyrod.build.SamplePieces;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

class RulesTest {
  private static final BuildPlan BENCH = SamplePieces.benchPlan();

  /**
   * For each rule, what it asks of the bench; the other way round is a breach of just that rule.
   */
  @ParameterizedTest
  @CsvSource({
    "size-after-milling, mill front-stretcher, size front-stretcher",
    "glue-cured, mill top, size top",
    "cut-after-sizing, size bottom, cut bottom",
    "drill-after-sizing, size left-side, drill left-side",
    "sand-after-machining, cut bottom, sand bottom",
    "size-before-fitting, size frame.left-stile, fit frame.left-stile",
    "cut-before-fitting, cut bottom, fit bottom",
    "drill-before-fitting, drill left-side, fit left-side",
    "sand-before-fitting, sand left-partition, fit left-partition",
    "assembly-before-fitting, fit drawer.box-back, fit drawer",
    "front-after-hung, fit drawer, fit drawer.face",
    "panel-before-frame-closes, fit drawer.panel, fit drawer.right-side",
    "way-in, fit left-partition, fit front-stretcher",
    "offcut-before-test, mill front-stretcher, test finish",
    "test-before-finishing, test finish, finish piece",
    "glue-before-finish, fit frame, finish piece",
    "machine-before-finish, size top, finish piece",
    "top-after-finish, finish piece, fit top",
    "mount-after-finish, finish piece, mount pull",
    "mount-on-standing-parts, fit left-partition, mount slide",
    "hanger-before-hung, mount slide, fit drawer"
  })
  void ruleAsksForOneBeforeTheOtherAndCatchesTheSwap(String key, String before, String after) {
    Need need = new Need(before, after, key);
    assertTrue(BENCH.needs().contains(need), () -> "no " + need);
    if (key.equals("panel-before-frame-closes") || key.equals("way-in")) {
      return; // another order of fitting has other needs: see OwnOrderTest
    }
    List<Diagnostic> faults = SamplePieces.benchFaults(after + "\n" + before);
    assertEquals(1, faults.size(), faults::toString);
    assertEquals(
        "`"
            + after
            + "` comes before `"
            + before
            + "`, but "
            + Rules.named(key).reason()
            + " (rule "
            + key
            + ")",
        faults.getFirst().message());
  }

  private static final String LID_BOX =
      """
      parts:
        lid: {stock: ply6, x: 18 to 150, y: 0 to 182, z: 70 to 76, grain: y}
        left: {stock: ply18, x: 0 to 18, y: 0 to 200, z: 0 to 90, grain: y}
        right: {stock: ply18, x: 150 to 168, y: 0 to 200, z: 0 to 90, grain: y}
        back: {stock: ply18, x: 18 to 150, y: 182 to 200, z: 0 to 90, grain: x}
      joints:
        - sliding-lid: {end: lid.left, into: left, depth: 6, opens: front}
        - sliding-lid: {end: lid.right, into: right, depth: 6, opens: front}
        - butt: {end: back.left, to: left, glue: yes}
        - butt: {end: back.right, to: right, glue: yes}
      """;

  /** Even where nothing holds the parts that the lid slides in: they are as loose as it is. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void slidingLidWaitsForItsBox(boolean isGlued) {
    Piece box = Pieces.of(isGlued ? LID_BOX : LID_BOX.replaceAll("(?m)^.*butt.*\\n", ""));
    BuildPlan plan = Planner.plan(box, new Diagnostics()).orElseThrow();
    List<String> fitted =
        plan.steps().stream()
            .flatMap(step -> step.operations().stream())
            .map(Operation::name)
            .filter(name -> name.startsWith("fit "))
            .toList();
    assertEquals("fit lid", fitted.getLast());
    for (String part : List.of("left", "right")) {
      assertTrue(plan.needs().contains(new Need("fit " + part, "fit lid", "lid-after-box")), part);
    }
  }

  @Test
  void slidingLidBeforeItsBoxIsABreach() {
    String order =
        """
        build:
          - stage: Box
            order: [fit left, fit lid, fit right]
        """;
    Diagnostics diagnostics = new Diagnostics();
    Planner.plan(Pieces.of(LID_BOX + order), diagnostics);
    assertEquals(
        List.of(
            "`fit lid` comes before `fit right`, but "
                + Rules.named("lid-after-box").reason()
                + " (rule lid-after-box)"),
        diagnostics.sorted().stream().map(Diagnostic::message).toList());
  }

  @Test
  void everyRuleFileIsInTheList() throws IOException {
    Path folder = Path.of("src/main/java/storyrod/build/rule");
    try (Stream<Path> files = Files.list(folder)) {
      List<String> written =
          files
              .filter(file -> read(file).contains(" implements Rule "))
              .map(file -> file.getFileName().toString().replace(".java", ""))
              .sorted()
              .toList();
      List<String> listed =
          Rules.ALL.stream().map(rule -> rule.getClass().getSimpleName()).sorted().toList();
      assertEquals(written, listed);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
