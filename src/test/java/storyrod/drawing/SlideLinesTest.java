package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.build.Slides;
import storyrod.build.Slides.Row;
import storyrod.cli.Pipeline;
import storyrod.cli.PrintedProjects;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.RunningDimension.Height;
import storyrod.drawing.Drawing.Text;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.Units;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

/** The views of walls on which the lines of drawer slides are set out. */
class SlideLinesTest {
  private static final double NEAR_MM = 0.05;

  /** Further pieces with slides: six drawers, one and two. */
  private static final List<String> OTHERS = List.of("chest", "hall-chest", "night-table");

  private static final Map<String, PlanSet> READ = new ConcurrentHashMap<>();

  private static PlanSet other(String name) {
    return READ.computeIfAbsent(name, SlideLinesTest::read);
  }

  private static PlanSet read(String name) {
    Path file = Path.of("src/test/resources/projects", name, "project.yaml");
    try {
      SourceText source = new SourceText(file.toString(), Files.readString(file));
      return Pipeline.planSet(source, new Diagnostics()).orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private interface Check {
    void of(PlanSet set, Step step, Drawing drawing);
  }

  private static List<DynamicTest> inEach(Check check) {
    List<DynamicTest> tests = new ArrayList<>();
    AllProjects.all()
        .forEach(
            project ->
                tests.add(
                    DynamicTest.dynamicTest(project.name(), () -> drawings(project.set(), check))));
    OTHERS.forEach(
        name -> tests.add(DynamicTest.dynamicTest(name, () -> drawings(other(name), check))));
    return tests;
  }

  private static void drawings(PlanSet set, Check check) {
    for (Step step : set.build().steps()) {
      if (!Slides.setOutIn(set.piece(), step).isEmpty()) {
        Drawing drawing = set.drawings().slides().get(step.number());
        assertTrue(drawing != null, step.number() + " sets slides out and shows no lines");
        check.of(set, step, drawing);
      }
    }
  }

  @Test
  void threeOfTheProjectsSetSlidesOut() {
    TreeSet<String> names = new TreeSet<>();
    AllProjects.all().stream()
        .filter(each -> !each.set().drawings().slides().isEmpty())
        .forEach(each -> names.add(each.name()));
    assertEquals(new TreeSet<>(List.of("nightstand", "sideboard", "window-bench")), names);
  }

  /** Each step sets them out once: what was on trial goes back into its holes. */
  @Test
  void slidesThatArePutBackAreNotSetOutAgain() {
    PlanSet set = AllProjects.named("nightstand");
    assertEquals(1, set.drawings().slides().size());
  }

  /** It hides the floor on which the rule stands, and a stile above it ends on it. */
  @Test
  void railThatStandsUpBeforeTheFloorIsDrawn() {
    for (String name : List.of("sideboard", "window-bench")) {
      PlanSet set = AllProjects.named(name);
      String rail = set.piece().part("frame.bottom-rail").mark();
      drawings(
          set,
          (all, step, drawing) ->
              assertTrue(
                  Clean.flat(drawing.elements()).stream()
                      .anyMatch(each -> each instanceof Balloon b && b.mark().equals(rail)),
                  name + " " + rail));
    }
  }

  private static List<Row> lefts(PlanSet set, Step step) {
    List<Row> rows = Slides.setOutIn(set.piece(), step);
    return rows.stream().filter(SlideWall::isFacingRight).toList();
  }

  /** The case members' bodies on a wall. */
  private static Stream<PlacedItem> members(Piece piece, Part wall) {
    return PlacedHardware.of(piece).stream()
        .filter(each -> each.host().equals(wall.name()))
        .filter(each -> piece.kind(each.item()).isSlide());
  }

  private static Box box(PlacedItem item) {
    return item.solid().bounds().orElseThrow();
  }

  private static double middleMm(PlacedItem item) {
    return item.at().getZ() + box(item).z().middle().toMm();
  }

  private static double frontMm(PlacedItem item) {
    return item.at().getY() + box(item).y().from().toMm();
  }

  private static boolean has(List<Dimension> all, boolean alongX, double mm) {
    return all.stream()
        .anyMatch(
            each -> each.alongX() == alongX && Math.abs(each.measure().toMm() - mm) < NEAR_MM);
  }

  /** Both from the bodies of the members where they are screwed on, not from the text's values. */
  @TestFactory
  List<DynamicTest> theHeightAndTheSetBackOfEachMemberAreDimensioned() {
    return inEach(
        (set, step, drawing) -> {
          List<Dimension> all = DimensionLines.all(drawing);
          for (Row row : lefts(set, step)) {
            double floor =
                row.floor()
                    .map(p -> p.box().at(Face.TOP))
                    .orElse(row.wall().shoulder().at(Face.BOTTOM))
                    .toMm();
            double low = row.side().box().at(Face.BOTTOM).toMm();
            double high = row.side().box().at(Face.TOP).toMm();
            PlacedItem member =
                members(set.piece(), row.wall())
                    .filter(each -> middleMm(each) > low && middleMm(each) < high)
                    .findFirst()
                    .orElseThrow();
            String what = row.side().name() + " in " + all;
            assertTrue(has(all, false, middleMm(member) - floor), what);
            assertTrue(has(all, false, middleMm(member) - low), what);
            double behind = frontMm(member) - row.front().box().at(Face.FRONT).toMm();
            assertTrue(Math.abs(behind) < NEAR_MM || has(all, true, Math.abs(behind)), what);
          }
        });
  }

  /** The way between the points of a dimension, at the drawing's scale, is what it says. */
  @TestFactory
  List<DynamicTest> dimensionsAreAsLongAsTheySay() {
    return inEach(
        (set, step, drawing) -> {
          double factor = drawing.scale().orElseThrow().factor();
          for (Dimension each : DimensionLines.all(drawing)) {
            assertEquals(each.measure().toMm() * factor, DimensionLines.lengthMm(each), 1e-3);
          }
        });
  }

  /** The nightstand with another number of drawers in a case so much higher. */
  private static PlanSet withDrawers(int count, int heightMm) throws IOException {
    Path file = Path.of("projects/nightstand/project.yaml");
    String text =
        Files.readString(file)
            .replace("count: 3, along: z", "count: " + count + ", along: z")
            .replace("height: 600", "height: " + heightMm);
    SourceText source = new SourceText(file.toString(), text);
    return Pipeline.planSet(source, new Diagnostics()).orElseThrow();
  }

  /** Of more drawers than have room for a tier each all heights run up one line. */
  @ParameterizedTest
  @CsvSource({"4, 820", "6, 1200"})
  void manyHeightsRunUpOneLine(int count, int heightMm) throws IOException {
    PlanSet set = withDrawers(count, heightMm);
    Step step =
        set.build().steps().stream()
            .filter(each -> !Slides.setOutIn(set.piece(), each).isEmpty())
            .findFirst()
            .orElseThrow();
    Drawing drawing = set.drawings().slides().get(step.number());
    assertEquals(1, Clean.running(drawing).size());
    List<Length> told =
        Clean.running(drawing).getFirst().heights().stream().map(Height::measure).toList();
    List<Length> lines = lefts(set, step).stream().map(Row::onWall).sorted().toList();
    assertEquals(count, lines.size());
    assertEquals(lines, told);
    assertClean(drawing);
  }

  @TestFactory
  List<DynamicTest> drawersAreMarked() {
    return inEach(
        (set, step, drawing) -> {
          List<String> marks =
              Clean.flat(drawing.elements()).stream()
                  .filter(Balloon.class::isInstance)
                  .map(each -> ((Balloon) each).mark())
                  .toList();
          lefts(set, step)
              .forEach(row -> assertTrue(marks.contains(row.side().mark()), "" + marks));
        });
  }

  @TestFactory
  List<DynamicTest> theViewsAreClean() {
    return inEach((set, step, drawing) -> assertClean(drawing));
  }

  private static void assertClean(Drawing drawing) {
    assertEquals(List.of(), Clean.textFaults(drawing));
    assertEquals(List.of(), Covered.textsOnLines(drawing));
    assertEquals(List.of(), Clean.linesOutside(drawing));
    assertEquals(List.of(), Leaders.crossings(drawing));
    assertEquals(List.of(), Leaders.overDimensions(drawing));
    assertEquals(List.of(), Arrowheads.overlaps(drawing));
    DimensionLines.assertKeepDistance(DimensionLines.all(drawing));
  }

  /** In both units figures are twice as long. */
  @Test
  void theViewIsCleanInBothUnits() {
    PrintedProjects both = PrintedProjects.named("sideboard", Units.BOTH);
    Drawing drawing =
        both.drawn(both.usualPaper(), "publish").drawings().slides().values().iterator().next();
    assertEquals(List.of(), Clean.textFaults(drawing));
    assertEquals(List.of(), Covered.textsOnLines(drawing));
    assertEquals(List.of(), Clean.linesOutside(drawing));
  }

  /**
   * In the chest the members on the partition lie flush with its front and those on the left side
   * behind a stile: walls with other figures are both drawn.
   */
  @Test
  void wallsWithOtherFiguresAreDrawnToo() {
    PlanSet set = other("chest");
    Drawing drawing = set.drawings().slides().values().iterator().next();
    List<String> captions =
        Clean.flat(drawing.elements()).stream()
            .filter(Text.class::isInstance)
            .map(each -> ((Text) each).text())
            .filter(each -> each.contains("seen from inside"))
            .map(each -> each.substring(0, 1))
            .toList();
    assertEquals(List.of("B", "D"), captions);
  }

  /**
   * The line below a drawer lies as far down as its runners are high, here 14 below 60, over a
   * floor of 20; how far back they go is said by their maker's sheet.
   */
  @Test
  void runnersBelowADrawerAreMeasuredToTheirUnderside() throws IOException {
    Path file = Path.of("src/test/resources/messages/check-drawer-room-under-good.yaml");
    String text = Files.readString(file).replace("33.3", "60");
    PlanSet set = Pipeline.planSet(new SourceText("", text), new Diagnostics()).orElseThrow();
    Drawing drawing = set.drawings().slides().values().iterator().next();
    List<Dimension> all = DimensionLines.all(drawing);
    assertEquals(List.of(26.0), all.stream().map(each -> each.measure().toMm()).toList());
    double factor = drawing.scale().orElseThrow().factor();
    assertEquals(26 * factor, DimensionLines.lengthMm(all.getFirst()), 1e-6);
  }
}
