package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects.Sample;
import storyrod.geometry.Face;
import storyrod.planset.PlanSet;

/** A picture shows the sides from which the fasteners of its step are driven. */
class DrivenSidesTest {
  /**
   * What is driven inside a piece that stands, as the screws into a drawer's front, is seen from
   * without only where the piece is drawn open; there the usual side is as good. Feet are hidden
   * behind the bottom through which their screws go, the stool's legs behind its step.
   */
  private static final List<String> FROM_WITHIN =
      List.of(
          "nightstand 41",
          "nightstand 44",
          "sideboard 53",
          "sideboard 59",
          "step-stool 22",
          "step-stool 24",
          "window-bench 36",
          "window-bench 37",
          "window-bench 46");

  @Test
  void theShareOfFastenersCounts() {
    DrivenSides driven = new DrivenSides(List.of(Face.BACK, Face.BACK, Face.RIGHT, Face.TOP));
    assertEquals(0.5, driven.shown(View.USUAL));
    assertEquals(1, driven.shown(View.isometric(1, 1, 1)));
    assertEquals(1, new DrivenSides(List.of()).shown(View.USUAL));
  }

  /** Of fasteners from two opposite sides no view shows both. */
  @TestFactory
  List<DynamicTest> whereFastenersAreDrivenOneSees() {
    return AllProjects.each(
        sample -> {
          List<String> hidden = new ArrayList<>();
          fits(sample)
              .filter(step -> !FROM_WITHIN.contains(sample.name() + " " + step.number()))
              .filter(step -> !isSeen(sample.set(), step))
              .forEach(step -> hidden.add(step.number() + " " + step.targets()));
          assertEquals(List.of(), hidden);
        });
  }

  private static Stream<Step> fits(Sample sample) {
    return sample.set().build().steps().stream().filter(step -> step.verb() == Verb.FIT);
  }

  private static boolean isSeen(PlanSet set, Step step) {
    DrivenSides driven = driven(set, step);
    long pairs =
        Stream.of(Face.RIGHT, Face.BACK, Face.TOP)
            .mapToLong(face -> Math.min(count(driven, face), count(driven, face.opposite())))
            .sum();
    double most = driven.faces().isEmpty() ? 1 : 1 - (double) pairs / driven.faces().size();
    return driven.shown(picture(set, step).view()) >= most;
  }

  private static long count(DrivenSides driven, Face side) {
    return driven.faces().stream().filter(side::equals).count();
  }

  private static DrivenSides driven(PlanSet set, Step step) {
    return DrivenSides.of(StepHardware.of(step, Hardware.of(set.piece())).coming());
  }

  private static StepPicture picture(PlanSet set, Step step) {
    return (StepPicture)
        PicturedStep.of(set.piece(), set.build(), step, Hardware.of(set.piece())).orElseThrow();
  }

  /** Pocket screws and brads that the words drive from behind, pegs from below. */
  @ParameterizedTest
  @CsvSource({
    "sideboard, 36, BACK",
    "sideboard, 37, BACK",
    "sideboard, 46, BACK",
    "nightstand, 37, BACK",
    "window-bench, 26, BACK",
    "dining-table, 25, BOTTOM"
  })
  void asTheWordsSay(String project, int number, Face from) {
    PlanSet set = AllProjects.named(project);
    Step step =
        set.build().steps().stream()
            .filter(each -> each.number() == number)
            .findFirst()
            .orElseThrow();
    assertEquals(List.of(from), driven(set, step).faces().stream().distinct().toList());
    assertTrue(from.normal().dot(picture(set, step).view().toViewer()) > 0);
  }

  /** No face is seen together with the one opposite. */
  @Test
  void aViewShowsThreeSides() {
    DrivenSides all = new DrivenSides(Arrays.asList(Face.values()));
    View.AROUND.forEach(view -> assertEquals(0.5, all.shown(view)));
  }
}
