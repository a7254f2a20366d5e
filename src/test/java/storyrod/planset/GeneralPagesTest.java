package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.measure.LengthFormat;
import storyrod.words.Words;

/** How the general drawings of all projects fill their pages. */
class GeneralPagesTest {
  private static String lead(String project) {
    PlanSet set = AllProjects.named(project);
    LengthFormat format = set.piece().description().format();
    Texts texts = new Texts(format, Words.ENGLISH);
    return GeneralPages.of(set, texts, Paper.usualFor(format.unit())).entries().getFirst().lead();
  }

  /**
   * Glides lie under the legs and knobs before the fronts of the nightstand; a table has neither.
   */
  @Test
  void overallSizesSayWhatTheyLeaveOut() {
    String lead = lead("nightstand");
    assertTrue(
        lead.endsWith(" of the wood, without the hardware under it and without knobs and pulls."),
        lead);
    String bare = lead("step-stool");
    assertFalse(bare.contains("without"), bare);
  }

  private static String lead(String project, String title) {
    PlanSet set = AllProjects.named(project);
    LengthFormat format = set.piece().description().format();
    Texts texts = new Texts(format, Words.ENGLISH);
    return GeneralPages.of(set, texts, Paper.usualFor(format.unit())).entries().stream()
        .filter(entry -> entry.title().equals(title))
        .map(GeneralPages.Entry::lead)
        .findFirst()
        .orElseThrow();
  }

  /** Drawers above each other differ in height, and no number tells from which end it counts. */
  @Test
  void drawersAboveEachOtherAreToldByTheirPlaces() {
    String lowest = lead("sideboard", "Drawer 1");
    assertTrue(lowest.endsWith(" Of 3 above each other it is the lowest."), lowest);
    String second = lead("sideboard", "Drawer 2");
    assertTrue(second.endsWith(" Of 3 above each other it is number 2 from below."), second);
    String upper = lead("sideboard", "Upper drawer");
    assertTrue(upper.endsWith(" Of 3 above each other it is the uppermost."), upper);
    String middle = lead("nightstand", "Drawer 2");
    assertTrue(middle.endsWith(" Of 3 above each other it is number 2 from below."), middle);
    String door = lead("sideboard", "Left door");
    assertFalse(door.contains("above"), door);
  }

  /** Doors are a handed pair, the shelves behind them are alike. */
  @Test
  void mirrorImagesAreNotCalledAlikeInExplodedViews() {
    PlanSet set = AllProjects.named("sideboard");
    LengthFormat format = set.piece().description().format();
    Texts texts = new Texts(format, Words.ENGLISH);
    List<String> leads =
        OpenedPages.of(set, texts).pages().stream()
            .flatMap(List::stream)
            .map(entry -> entry.title() + ": " + entry.lead())
            .toList();
    assertTrue(leads.contains("Left door: Right door: mirrored."), leads::toString);
    assertTrue(leads.contains("Left shelf: Alike: Right shelf."), leads::toString);
  }

  @TestFactory
  List<DynamicTest> noPageIsHalfEmpty() {
    return AllProjects.each(
        sample -> {
          LengthFormat format = sample.set().piece().description().format();
          Paper paper = Paper.usualFor(format.unit());
          Texts texts = new Texts(format, Words.ENGLISH);
          for (List<GeneralPages.Entry> page :
              GeneralPages.of(sample.set(), texts, paper).pages()) {
            double taken =
                page.stream()
                    .mapToDouble(each -> each.drawing().heightMm() + GeneralPages.BESIDE_MM)
                    .sum();
            assertTrue(
                taken > 0.5 * paper.textHeightMm(),
                page.getFirst().anchor() + " " + taken / paper.textHeightMm());
          }
        });
  }
}
