package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.OneMaker.Run;
import storyrod.build.Work.Touches;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/** What stands in clamps is left alone until they are off, and joints until their glue is hard. */
class GlueInTheWayTest {
  private static final Work GLUED = work(60, 2, "case", new boolean[] {true, false});

  /** A work that spreads glue or runs a tool over joints, in that order. */
  private static Work work(int wait, int clamps, String part, boolean[] glue) {
    return new Work(
        30,
        wait,
        wait > 0,
        new GlueUp(clamps, wait, glue[0] ? GlueTimes.USUAL.cured() : 0),
        new Touches(Set.of(part), glue[1]));
  }

  private static Work plain(String part) {
    return work(0, 0, part, new boolean[2]);
  }

  private static Run run(Work... works) {
    int[] order = IntStream.range(0, works.length).toArray();
    return new OneMaker(WorkDay.ROUND_THE_CLOCK, 8, List.of(works), List.of()).run(order);
  }

  @Test
  void whatStandsInClampsIsNotWorkedOn() {
    Run run = run(GLUED, plain("case"));
    assertEquals(90, run.start()[1]);
    assertEquals(60, run.idleMinutes());
  }

  @Test
  void anotherThingFillsTheWait() {
    Run run = run(GLUED, plain("door"), plain("case"));
    assertEquals(30, run.start()[1]);
    assertEquals(90, run.start()[2]);
  }

  /** "No step is ready" is true only of what waits as well, or has no clamps left. */
  @Test
  void whatCouldBeTakenWhileTheHandsRestIsKnown() {
    assertEquals(List.of(2), ready(GLUED, plain("case"), plain("door")));
    assertEquals(List.of(), ready(GLUED, plain("case"), plain("case")));
    assertEquals(
        List.of(), ready(GLUED, plain("case"), work(60, 7, "door", new boolean[] {true, false})));
    assertEquals(
        List.of(2), ready(GLUED, plain("case"), work(60, 6, "door", new boolean[] {true, false})));
  }

  private static List<Integer> ready(Work... works) {
    OneMaker maker = new OneMaker(WorkDay.ROUND_THE_CLOCK, 8, List.of(works), List.of());
    Run run = maker.run(IntStream.range(0, works.length).toArray());
    return maker.ready(run, run.rests().getFirst());
  }

  /** Twenty-four hours until PVA has its full strength, as its labels say (from memory). */
  @Test
  void toolsWaitUntilTheGlueHasCured() {
    assertEquals(
        30 + 24 * 60, run(GLUED, work(0, 0, "case", new boolean[] {false, true})).start()[1]);
    assertEquals(30, run(GLUED, work(0, 0, "door", new boolean[] {false, true})).start()[1]);
  }

  /** The cheeks of a rail go between those of the open mortise in a leg. */
  @Test
  void openMortiseIsCutBeforeWhatItSitsAstride() {
    List<Step> steps =
        Planner.plan(
                Pieces.of(
                    """
                    parts:
                      rail: {stock: ash, x: 0 to 400, y: 0 to 20, z: 400 to 460, grain: x}
                      post: {stock: ash, x: 180 to 220, y: 0 to 20, z: 0 to 400, grain: z}
                    joints:
                      - bridle: {end: post.top, into: rail, thickness: 7, glue: yes}
                    """),
                new Diagnostics())
            .orElseThrow()
            .steps();
    int open = number(steps, "open mortise");
    int cheeks = number(steps, "bridle cheek");
    assertTrue(open < cheeks, () -> open + " and " + cheeks);
  }

  private static int number(List<Step> steps, String term) {
    return steps.stream()
        .filter(
            step ->
                step.operations().stream()
                    .flatMap(each -> each.cuts().stream())
                    .anyMatch(cut -> cut.term().equals(term)))
        .mapToInt(Step::number)
        .findFirst()
        .orElseThrow();
  }
}
