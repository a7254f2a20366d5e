package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.StepPages.Placed;
import storyrod.words.Words;

/** The pages of steps that set out drawer slides. */
class SlidesOnPagesTest {
  private static PlanSet set(String project) throws IOException {
    Path file = Path.of(project, "project.yaml");
    SourceText source = new SourceText(file.toString(), Files.readString(file));
    return Pipeline.planSet(source, new Diagnostics()).orElseThrow();
  }

  /** One drawer on runners below it, mounted for good at once: a step of one page in columns. */
  @Test
  void aStepInColumnsShowsThemBelowItsLists() throws IOException {
    Path file = Path.of("src/test/resources/messages/check-drawer-room-under-good.yaml");
    String text = Files.readString(file).replace("33.3", "60");
    PlanSet set = Pipeline.planSet(new SourceText("", text), new Diagnostics()).orElseThrow();
    Placed shown =
        placed(set).stream()
            .filter(each -> !each.step().beside().isEmpty())
            .findFirst()
            .orElseThrow();
    assertTrue(shown.step().firstColumn() > 0 && shown.slice().ends());
    assertShown(set);
  }

  private static List<Placed> placed(PlanSet set) {
    Print print = Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
    Wording wording =
        new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build())::write;
    return StepPages.of(set, new StepPages.Sheet(print, wording)).pages().stream()
        .flatMap(page -> page.steps().stream())
        .toList();
  }

  /** Two walls of the chest stand in one column, one below the other. */
  @TestFactory
  Stream<DynamicTest> theLinesOfSlidesAreShownOnceAndHaveRoom() {
    return Stream.of(
            "projects/sideboard",
            "projects/nightstand",
            "projects/window-bench",
            "src/test/resources/projects/chest",
            "src/test/resources/projects/hall-chest",
            "src/test/resources/projects/night-table")
        .map(project -> DynamicTest.dynamicTest(project, () -> assertShown(set(project))));
  }

  private static void assertShown(PlanSet set) {
    List<Placed> all = placed(set);
    double room = StepHeights.roomMm(Paper.usualFor(set.piece().description().format().unit()));
    assertEquals(1, set.drawings().slides().size());
    set.drawings()
        .slides()
        .forEach(
            (step, drawing) -> {
              List<Placed> shown =
                  all.stream()
                      .filter(each -> each.step().number() == step && each.slice().besides())
                      .toList();
              assertEquals(1, shown.size(), "step " + step);
              double high = shown.getFirst().slice().heightMm();
              assertTrue(high <= room && high >= drawing.heightMm(), high + " mm");
            });
  }
}
