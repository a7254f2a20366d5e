package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** A lid that is tried in its grooves stands in the list of the step that tries it. */
class TriedLidTest {
  @Test
  void lidOfTheSewingBoxIsListedWithItsDryFit() {
    PlanSet set = AllProjects.named("sewing-box");
    Print print = Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
    Wording wording =
        new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build())::write;
    StepEntries entries =
        new StepEntries(set.piece(), set.build(), new StepPages.Sheet(print, wording));
    List<Integer> listing =
        set.build().steps().stream()
            .filter(step -> step.verb() == Verb.DRY_FIT)
            .filter(
                step ->
                    entries.of(step, StepEntries.Shown.NOTHING).parts().stream()
                        .anyMatch(row -> row.title().equals("Lid")))
            .map(step -> step.number())
            .toList();
    List<Integer> telling =
        set.build().steps().stream()
            .filter(step -> step.verb() == Verb.DRY_FIT)
            .filter(
                step ->
                    wording.of(step).sentences().stream()
                        .anyMatch(each -> each.contains("the lid")))
            .map(step -> step.number())
            .toList();
    assertEquals(1, listing.size());
    assertEquals(telling, listing);
  }
}
