package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.cli.PrintedProjects;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.measure.Units;
import storyrod.planset.PrintedDrawings;

/** What must hold for each drawing of each kind that any project prints. */
class CleanDrawingsTest {
  private static List<DynamicTest> inAll(Function<Drawing, List<String>> faults) {
    return AllProjects.each(sample -> assertEquals(List.of(), found(sample, faults)));
  }

  private static List<String> found(Sample sample, Function<Drawing, List<String>> faults) {
    List<String> found = new ArrayList<>();
    PrintedDrawings.of(sample.set())
        .forEach((name, each) -> faults.apply(each).forEach(it -> found.add(name + ": " + it)));
    return found;
  }

  /** The kinds are named, so that none drops out of all the other tests without a word. */
  @Test
  void everyKindOfDrawingIsAmongThem() {
    TreeSet<String> kinds = new TreeSet<>();
    AllProjects.each(
            sample ->
                PrintedDrawings.of(sample.set())
                    .keySet()
                    .forEach(name -> kinds.add(name.replaceFirst("-.*", ""))))
        .forEach(CleanDrawingsTest::run);
    List<String> all =
        List.of(
            "blank",
            "check",
            "cover",
            "exploded",
            "general",
            "joint",
            "layout",
            "part",
            "slides",
            "step",
            "template",
            "timeline");
    assertEquals(new TreeSet<>(all), kinds);
  }

  private static void run(DynamicTest test) {
    try {
      test.getExecutable().execute();
    } catch (Throwable e) {
      throw new AssertionError(e);
    }
  }

  /** Nor is any smaller than 2.5 mm or off its paper. */
  @TestFactory
  List<DynamicTest> noTextLiesOnAText() {
    return inAll(Clean::textFaults);
  }

  /** In both units figures are twice as long. */
  @Test
  void noTextLiesOnATextInBothUnits() {
    PrintedProjects both = PrintedProjects.named("nightstand", Units.BOTH);
    List<String> faults = new ArrayList<>();
    both.drawn(both.usualPaper(), "publish")
        .drawings()
        .steps()
        .values()
        .forEach(each -> Clean.textFaults(each).forEach(it -> faults.add(each.name() + ": " + it)));
    assertEquals(List.of(), faults);
  }

  @TestFactory
  List<DynamicTest> noTextLiesOnALineThatCanBeSeen() {
    return inAll(Covered::textsOnLines);
  }

  @TestFactory
  List<DynamicTest> noLineLeavesThePaper() {
    return inAll(Clean::linesOutside);
  }

  @TestFactory
  List<DynamicTest> noLeaderCrossesALeader() {
    return inAll(Leaders::crossings);
  }

  /** Every drawing so far leaves a way round; its figures are texts, which no line touches. */
  @TestFactory
  List<DynamicTest> noLeaderCrossesADimensionLine() {
    return inAll(Leaders::overDimensions);
  }

  /** Where a leader can keep clear of extension lines, it does. */
  @TestFactory
  List<DynamicTest> noLeaderCrossesAnExtensionLineWithoutNeed() {
    return inAll(Leaders::overExtensions);
  }

  @TestFactory
  List<DynamicTest> noTextTouchesTheHeadOfAnArrow() {
    return inAll(ArrowTexts::tooNear);
  }

  @TestFactory
  List<DynamicTest> noArrowheadsOverlap() {
    return inAll(Arrowheads::overlaps);
  }

  @TestFactory
  List<DynamicTest> dimensionLinesKeepTheirDistance() {
    return AllProjects.each(
        sample ->
            PrintedDrawings.of(sample.set())
                .values()
                .forEach(each -> DimensionLines.assertKeepDistance(Clean.dimensions(each))));
  }

  /**
   * Scales of ISO 5455, and where lengths are in inches those of the US architect's scale: 3 in to
   * the foot is 1:4, 1 1/2 in 1:8, 1 in 1:12, 3/4 in 1:16, 1/2 in 1:24, 3/8 in 1:32 (common
   * practice).
   */
  @TestFactory
  List<DynamicTest> scalesAreStandardOnes() {
    List<Integer> iso = List.of(1, 2, 5, 10, 20, 50, 100, 200, 500, 1000);
    List<Integer> us = List.of(4, 8, 12, 16, 24, 32);
    return AllProjects.each(
        sample -> {
          Set<String> others = new TreeSet<>();
          boolean inches = sample.set().piece().description().format().unit() == Unit.INCH;
          for (String paper : PrintedDrawings.papers()) {
            PrintedDrawings.of(sample.set(), paper)
                .forEach(
                    (name, each) ->
                        each.scale()
                            .filter(
                                scale ->
                                    scale.paper() != 1
                                        || !iso.contains(scale.real())
                                            && !(inches && us.contains(scale.real())))
                            .ifPresent(scale -> others.add(paper + " " + name + " " + scale)));
          }
          assertEquals(Set.of(), others);
        });
  }

  private static Drawing drawing(Element... elements) {
    return new Drawing("bad", 100, 100, Optional.empty(), List.of(elements));
  }

  private static Dimension dimension(double from, double to, double line) {
    return new Dimension(
        new At(from, 50), new At(to, 50), true, line, "12", Length.mm((long) (to - from)));
  }

  private static Note note(At tip, At elbow) {
    return new Note(tip, elbow, elbow.plus(3, 1), Anchor.START, List.of("hole"));
  }

  private static Text text(double x) {
    return new Text(TextStyle.SMALL, new At(x, 50), Anchor.MIDDLE, true, "7");
  }

  /** The finders find what they are for. */
  @Test
  void faultsAreFound() {
    Note down = note(new At(20, 60), new At(25, 20));
    assertFalse(Leaders.overDimensions(drawing(dimension(10, 60, 40), down)).isEmpty());
    assertFalse(Leaders.crossings(drawing(down, note(new At(30, 60), new At(20, 20)))).isEmpty());
    assertFalse(
        Arrowheads.overlaps(drawing(dimension(10, 30, 40), dimension(29, 60, 40))).isEmpty());
    assertEquals(
        List.of(),
        Arrowheads.overlaps(drawing(dimension(10, 30, 40), dimension(30, 33, 40))),
        "one head serves both");
  }

  /** A note may stand anywhere but among lines on all sides. */
  @Test
  void aWayRoundIsFoundWhereThereIsOne() {
    Note down = note(new At(20, 55), new At(9, 40));
    Drawing open = drawing(dimension(10, 60, 35), down);
    assertFalse(Leaders.overExtensions(open).isEmpty());
    List<Element> walled = new ArrayList<>(open.elements());
    for (double x = 1; x < 100; x += 2) {
      walled.add(new Line(Role.THIN, List.of(new At(x, 0), new At(x, 100))));
    }
    Drawing closed = drawing(walled.toArray(Element[]::new));
    assertFalse(Leaders.notesOverExtensions(closed).isEmpty());
    assertEquals(List.of(), Leaders.overExtensions(closed));
  }

  @Test
  void aLineUnderATextCountsUnlessARingCoversIt() {
    Line line = new Line(Role.CUT, List.of(new At(10, 49), new At(90, 49)));
    Ellipse ring = new Ellipse(Role.DIMENSION, new At(50, 49.1), 3, 3, 0, Optional.of(Tone.WHITE));
    assertFalse(Covered.textsOnLines(drawing(line, text(50))).isEmpty());
    assertEquals(List.of(), Covered.textsOnLines(drawing(line, ring, text(50))));
    assertFalse(Covered.textsOnLines(drawing(ring, line, text(50))).isEmpty());
    assertFalse(Covered.textsOnLines(drawing(line, ring, text(52.5))).isEmpty());
  }
}
