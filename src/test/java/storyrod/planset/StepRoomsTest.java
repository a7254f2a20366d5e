package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.Verb;
import storyrod.cli.PrintedProjects;
import storyrod.drawing.AllProjects;
import storyrod.drawing.CutPicture;
import storyrod.drawing.Drawing;
import storyrod.drawing.Strips;
import storyrod.measure.Units;
import storyrod.words.Words;

/** How the pages of steps are shared between pictures and texts, over all projects. */
class StepRoomsTest {
  /** A row of small figures, 9 mm, and two lines of text with their distances. */
  private static final double LOW_MM = 17;

  /** A row of small figures with its captions, and what heights may be rounded by. */
  private static final double ROW_MM = 18;

  /** How low a picture may be, as a share of the page: on any page, and where it has one alone. */
  private static final double LEAST = 0.18;

  private static final double LEAST_ALONE = 0.27;
  private static final double MEAN_TOGETHER = 0.43;

  private static Paper paper(PlanSet set) {
    return Paper.usualFor(set.piece().description().format().unit());
  }

  private static Print print(PlanSet set) {
    return Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
  }

  private static StepPages pages(PlanSet set) {
    Wording wording =
        new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build())::write;
    return StepPages.of(set, new StepPages.Sheet(print(set), wording));
  }

  private static Stream<DrawingBox> pictures(StepPages.Page page) {
    return page.steps().stream().flatMap(each -> each.step().pictures().stream());
  }

  /** Its picture shows what is there, not how parts go together. */
  private static boolean finishes(PlanSet set, StepPages.Placed placed) {
    return set.build().steps().get(placed.step().number() - 1).verb() == Verb.FINISH;
  }

  @TestFactory
  List<DynamicTest> picturesKeepTheirShareOfThePage() {
    return AllProjects.each(
        project -> {
          double height = paper(project.set()).textHeightMm();
          List<Double> shares = new ArrayList<>();
          for (StepPages.Page page : pages(project.set()).pages()) {
            double all = pictures(page).mapToDouble(DrawingBox::heightMm).sum() / height;
            String where = "step " + page.steps().getFirst().step().number() + ": " + all;
            if (all > 0) {
              if (page.steps().stream().noneMatch(each -> finishes(project.set(), each))) {
                shares.add(all);
              }
              assertTrue(page.steps().size() > 1 || all >= LEAST_ALONE, where);
              assertTrue(pictures(page).allMatch(p -> p.heightMm() >= LEAST * height), where);
            }
          }
          double mean = shares.stream().mapToDouble(each -> each).average().orElseThrow();
          assertTrue(mean >= MEAN_TOGETHER, mean + " " + shares);
        });
  }

  /** The line to tick and sign takes its room from a picture, but leaves no thumbnail of it. */
  @Test
  void picturesKeepTheirShareAboveALineToSign() {
    PlanSet set = PrintedProjects.named("sewing-box").on(Paper.LETTER, "helper").set();
    set.build().steps().stream()
        .filter(step -> !CutPicture.isFor(step) && !Strips.isSmall(set.piece(), step))
        .filter(step -> set.drawings().steps().containsKey(step.number()))
        .forEach(
            step -> {
              double high = set.drawings().steps().get(step.number()).heightMm();
              assertTrue(high >= LEAST * Paper.LETTER.textHeightMm(), step.number() + ": " + high);
            });
  }

  /** What shrinks a drawing shrinks its texts too. Boards in rows are the highest strips. */
  @Test
  void noStripIsShrunkByItsPage() {
    PlanSet set = PrintedProjects.named("dining-table").on(Paper.A3, "publish").set();
    set.build().steps().stream()
        .filter(Strips::isFor)
        .map(step -> set.drawings().steps().get(step.number()))
        .filter(Objects::nonNull)
        .forEach(
            strip ->
                assertTrue(
                    strip.heightMm() <= StepRooms.MOST_SHARE * Paper.A3.textHeightMm() + 1e-6,
                    strip.name() + " is " + strip.heightMm() + " mm high"));
  }

  /** A low strip still is as high as a row of figures with its texts. */
  @Test
  void lowStripsCanBeRead() {
    PlanSet set = PrintedProjects.named("sewing-box").on(Paper.LETTER, "helper").set();
    set.build().steps().stream()
        .filter(step -> Strips.isFor(step) || CutPicture.isFor(step))
        .filter(step -> set.drawings().steps().containsKey(step.number()))
        .forEach(
            step -> {
              double high = set.drawings().steps().get(step.number()).heightMm();
              assertTrue(high >= LOW_MM, step.number() + ": " + high);
            });
  }

  /** In both units lists are so high that a step needs a second page, not a stamp for a picture. */
  @TestFactory
  Stream<DynamicTest> noPictureIsAStamp() {
    return AllProjects.all().stream()
        .flatMap(
            project ->
                Stream.of("helper", "record")
                    .map(
                        edition ->
                            DynamicTest.dynamicTest(
                                project.name() + " " + edition,
                                () -> assertReadable(project.name(), edition))));
  }

  private static void assertReadable(String project, String edition) {
    PrintedProjects both = PrintedProjects.named(project, Units.BOTH);
    PlanSet set = both.drawn(both.usualPaper(), edition);
    set.build().steps().stream()
        .filter(step -> !Strips.isFor(step))
        .filter(step -> set.drawings().steps().containsKey(step.number()))
        .forEach(
            step -> {
              double high = set.drawings().steps().get(step.number()).heightMm();
              assertTrue(high >= StepRooms.LEAST_PICTURE_MM, step.number() + ": " + high);
            });
  }

  /** But for the first and the last, one page at most is not half full. */
  @TestFactory
  List<DynamicTest> pagesOfStepsAreFilled() {
    return AllProjects.each(
        project -> {
          Paper paper = paper(project.set());
          List<StepPages.Page> pages = pages(project.set()).pages();
          List<Double> fills =
              pages.subList(1, pages.size() - 1).stream()
                  .map(page -> StepPages.filledMm(page) / paper.roomMm())
                  .toList();
          assertTrue(fills.stream().filter(fill -> fill < 0.5).count() <= 1, fills.toString());
          double mean = fills.stream().mapToDouble(fill -> fill).average().orElseThrow();
          assertTrue(mean > 0.8, mean + " " + fills);
        });
  }

  /** Where small figures below lists are left out, their page has no room for one more row. */
  @TestFactory
  List<DynamicTest> whatAPageLeavesWhiteShowsWhatIsBelowLists() {
    return AllProjects.each(
        project -> {
          double most = paper(project.set()).roomMm() - ROW_MM;
          for (StepPages.Page page : pages(project.set()).pages()) {
            page.steps().stream()
                .filter(placed -> leavesOut(project.set(), placed.step()))
                .forEach(
                    placed ->
                        assertTrue(
                            StepPages.filledMm(page) > most,
                            "step " + placed.step().number() + " on a page with room for more"));
          }
        });
  }

  private static boolean leavesOut(PlanSet set, StepEntry step) {
    String others = Words.ENGLISH.say("step.cut.others", "");
    return Strips.isSmall(set.piece(), set.build().steps().get(step.number() - 1))
        && !step.asides().isEmpty()
        && set.drawings().steps().get(step.number()).elements().stream()
            .anyMatch(each -> each instanceof Drawing.Text line && line.text().startsWith(others));
  }

  @TestFactory
  List<DynamicTest> whatIsPutTogetherDryIsShown() {
    return AllProjects.each(
        project ->
            project.set().build().steps().stream()
                .filter(step -> step.verb() == Verb.DRY_FIT)
                .forEach(
                    step ->
                        assertTrue(
                            project.set().drawings().steps().containsKey(step.number()),
                            step.number() + "")));
  }
}
