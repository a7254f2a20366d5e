package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Balloon;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

/**
 * The words of a trial drive two screws into each member of a slide, and all when it comes back.
 */
class TrialScrewsTest {
  private static final PlanSet BENCH = AllProjects.named("window-bench");

  private static List<Integer> counts(Verb verb) {
    Step step =
        BENCH.build().steps().stream()
            .filter(each -> each.verb() == verb)
            .filter(each -> each.operations().getFirst().target().startsWith("slide"))
            .findFirst()
            .orElseThrow();
    Drawing drawing =
        PicturedStep.of(BENCH.piece(), BENCH.build(), step, Hardware.of(BENCH.piece()))
            .orElseThrow()
            .drawn(new Size(190, 120));
    return drawing.elements().stream()
        .filter(Balloon.class::isInstance)
        .map(Balloon.class::cast)
        .filter(each -> each.mark().equals(screw()))
        .map(Balloon::count)
        .distinct()
        .toList();
  }

  private static String screw() {
    return Hardware.of(BENCH.piece()).stream()
        .filter(each -> each.placed().origin().entry().isPresent() && !each.isMounted())
        .filter(
            each -> each.placed().origin().entry().orElseThrow().item().value().startsWith("slide"))
        .map(Hardware::mark)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aMemberHangsOnItsFirstAndItsLastScrew() {
    assertEquals(List.of(2), counts(Verb.TRIAL_FIT));
  }

  @Test
  void theScrewBetweenComesWhenTheSlideIsBackForGood() {
    assertEquals(List.of(3), counts(Verb.MOUNT));
  }

  /** Of each item other than what is tried itself, the list tells as many as are drawn. */
  @TestFactory
  List<DynamicTest> theListTellsAsManyAsAreDrawn() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          for (Step step : sample.set().build().steps()) {
            if (step.verb() == Verb.TRIAL_FIT) {
              for (Operation each : step.operations()) {
                String target = each.target();
                Trials.onTrial(piece, target).stream()
                    .filter(item -> !item.item().equals(target))
                    .forEach(item -> assertEquals(drawn(piece, step, item.item()), item.count()));
              }
            }
          }
        });
  }

  private static int drawn(Piece piece, Step step, String item) {
    return (int)
        Hardware.of(piece).stream()
            .map(Hardware::placed)
            .filter(each -> each.item().equals(item) && each.isFittedIn(step))
            .count();
  }
}
