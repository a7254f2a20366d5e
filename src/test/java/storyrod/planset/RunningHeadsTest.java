package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** The heads of pages name the parts and the steps that these show, in one line. */
class RunningHeadsTest {
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);

  private static Pages pages(PlanSet set) {
    Printing printing = Printing.usual(Words.ENGLISH);
    Print print = Print.of(set.piece(), set.build(), printing);
    return Pages.of(set, print, new StepTexts(set.piece(), set.build()).in(printing));
  }

  @Test
  void partsAndStepsAreNamed() {
    RunningHeads heads = RunningHeads.of(pages(AllProjects.named("window-bench")));
    assertEquals("Part drawings · A Side", heads.parts().getFirst());
    assertTrue(
        heads.steps().contains("Build · Stage 5, Carcase · 38 Fasten the back panel in place"),
        heads.steps()::toString);
  }

  /** The names of two steps are mostly too long; their numbers are not. */
  @Test
  void stepsWithoutRoomForTheirNamesAreNumbered() {
    List<String> steps = RunningHeads.of(pages(AllProjects.named("window-bench"))).steps();
    assertTrue(steps.contains("Build · Stage 2, Parts and joints · steps 14, 15"), steps::toString);
  }

  @TestFactory
  List<DynamicTest> everyHeadStandsInALineBesideTheNameOfThePlan() {
    return AllProjects.each(
        project -> {
          Pages pages = pages(project.set());
          RunningHeads heads = RunningHeads.of(pages);
          assertEquals(pages.parts().pages().size(), heads.parts().size());
          assertEquals(pages.steps().pages().size(), heads.steps().size());
          double name = TEXT.widthMm(pages.cover().name());
          for (List<String> all : List.of(heads.parts(), heads.steps())) {
            for (String head : all) {
              assertTrue(name + TEXT.widthMm(head) < pages.paper().textWidthMm() - 5, head);
            }
          }
        });
  }
}
