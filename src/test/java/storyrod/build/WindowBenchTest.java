package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** The window bench as its project describes it, with its maker's order and without. */
class WindowBenchTest {
  private static final Path FILE = Path.of("projects/window-bench/project.yaml");
  private static final String SECTION = "\nbuild:\n";

  private static String text() {
    try {
      return Files.readString(FILE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Piece piece(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
    return new DescriptionReader(words)
        .read(new SourceText(FILE.toString(), text), diagnostics)
        .flatMap(description -> PieceBuilder.build(description, diagnostics))
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
  }

  private static BuildPlan plan(String text) {
    Diagnostics diagnostics = new Diagnostics();
    return Planner.plan(piece(text), diagnostics)
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
  }

  private static String withoutOrder() {
    return text().substring(0, text().indexOf(SECTION) + 1);
  }

  private static List<Operation> operations(BuildPlan plan) {
    return plan.steps().stream().flatMap(step -> step.operations().stream()).toList();
  }

  /** A flat head is about 2 x shank wide: 0.164 in x 2 for a #8 screw (head row of the chart). */
  @Test
  void stepsThatDrillForScrewsSetTheCountersink() {
    List<storyrod.measure.Length> heads =
        plan(text()).steps().stream()
            .flatMap(step -> step.settings().stream())
            .filter(setting -> setting.key().equals("countersink-diameter"))
            .map(BuildPlan.Setting::value)
            .distinct()
            .toList();
    assertEquals(List.of(storyrod.measure.Length.parse("0.164 in").times(2)), heads);
  }

  @Test
  void makersOrderHoldsAllWorkInItsSevenStages() {
    Set<String> stages = new LinkedHashSet<>();
    plan(text()).steps().forEach(step -> stages.add(step.stage().title().orElse("none")));
    assertEquals(
        List.of(
            "Boards and sheets",
            "Parts and joints",
            "Face frame",
            "Drawer and shelves",
            "Carcase",
            "Finish",
            "Fit out"),
        List.copyOf(stages));
    assertEquals(
        3,
        plan(text()).steps().stream()
            .filter(s -> !s.say().isEmpty())
            .filter(s -> s.verb() == Verb.FIT || s.verb() == Verb.DRILL)
            .count());
  }

  @Test
  void withoutTheMakersOrderTheSameWorkIsDone() {
    assertEquals(
        operations(plan(text())).stream().map(Operation::name).sorted().toList(),
        operations(plan(withoutOrder())).stream().map(Operation::name).sorted().toList());
  }

  @Test
  void everyCutIsMadeOnceByWhichPilotHolesAreMadeWhenTheirPartsMeet() {
    Piece piece = piece(withoutOrder());
    List<Operation> operations = operations(plan(withoutOrder()));
    List<Cut> made = operations.stream().flatMap(each -> each.cuts().stream()).toList();
    List<Cut> asked = piece.parts().stream().map(Part::cuts).flatMap(List::stream).toList();
    assertEquals(asked.size(), made.size());
    assertTrue(made.containsAll(asked));
    assertTrue(
        operations.stream()
            .filter(each -> each.verb() == Verb.DRILL)
            .flatMap(each -> each.cuts().stream())
            .noneMatch(cut -> cut.term().startsWith("pilot")));
  }

  private static List<BuildPlan.Setting> settings(Step step, String key) {
    return step.settings().stream().filter(each -> each.key().startsWith(key)).toList();
  }

  private static Step step(String operation) {
    return plan(withoutOrder()).steps().stream()
        .filter(step -> step.operations().stream().anyMatch(o -> o.name().equals(operation)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void slidesGoOnOneLineOfDrawerAndCase() {
    Piece piece = piece(withoutOrder());
    List<Slides.Row> rows =
        piece.description().hardware().stream()
            .flatMap(entry -> Slides.of(piece, entry).stream())
            .toList();
    assertEquals(2, rows.size());
    Box side = piece.part("drawer.left-side").box();
    Length floor = piece.part("bottom").box().at(Face.TOP);
    for (Slides.Row row : rows) {
      assertEquals(side.size(Axis.Z), row.onSide().times(2));
      assertEquals(side.at(Face.BOTTOM).plus(row.onSide()), floor.plus(row.onWall()));
    }
  }

  @Test
  void pilotHolesForHardwareNeverComeThroughThePart() {
    Piece piece = piece(withoutOrder());
    for (String operation : List.of("trial-fit slide", "fit top")) {
      List<BuildPlan.Setting> depths = settings(step(operation), "pilot-depth");
      assertTrue(!depths.isEmpty(), operation);
      for (BuildPlan.Setting depth : depths) {
        Part part = piece.part(depth.part().orElseThrow());
        Length left = part.finishedThickness().minus(depth.value());
        assertTrue(!left.isShorterThan(Length.inch(1, 8)), depth::toString);
      }
      assertEquals(depths.size(), settings(step(operation), "pilot-diameter").size());
    }
  }

  @Test
  void topIsSetByItsOverhangs() {
    Piece piece = piece(withoutOrder());
    Length front = settings(step("fit top"), "overhang-front").getFirst().value();
    assertEquals(
        piece.part("frame.top-rail").box().at(Face.FRONT),
        piece.part("top").box().at(Face.FRONT).plus(front));
  }

  @Test
  void fourFeetComeInOneStepOnceTheCaseIsStiff() {
    List<String> names = operations(plan(withoutOrder())).stream().map(Operation::name).toList();
    int feet = names.indexOf("fit left-front-foot");
    assertTrue(
        names.subList(feet, feet + 4).stream().allMatch(name -> name.endsWith("-foot")),
        names::toString);
    assertTrue(
        Stream.of("fit front-stretcher", "fit back-stretcher")
            .allMatch(stretcher -> names.indexOf(stretcher) < feet));
  }
}
