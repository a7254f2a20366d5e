package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.LongBits;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** How the work lies, which way a part turns, and where a usual bit is too short. */
class LiesForTheWorkTest {
  private static List<String> step(String project, String start) throws IOException {
    return StepWordsTest.steps(project).stream()
        .filter(step -> step.title().startsWith(start))
        .findFirst()
        .orElseThrow()
        .sentences();
  }

  private static boolean says(List<String> sentences, String words) {
    return sentences.stream().anyMatch(each -> each.contains(words));
  }

  @Test
  void cleatsTurnTheirCountersunkHolesInwards() throws IOException {
    List<String> cleats = step("sideboard", "Screw the cleats");
    assertTrue(
        says(
            cleats,
            "Turn one end for end, so that the countersunk holes look inwards: those of the left"
                + " cleat (AG) to the right."),
        cleats::toString);
  }

  @Test
  void seatStandsOnItsEdgeWhereScrewsComeFromTheOtherFace() throws IOException {
    List<String> seat = step("step-stool", "Glue the left leg panel");
    assertEquals(
        "Stand the step (A) on a long edge: then its joint and the face from which the screws go"
            + " in are both in reach.",
        seat.getFirst());
    assertFalse(says(seat, "ready with its joint"), seat::toString);
  }

  /** The pegs went in from below, so the slab lies underside up until its upper edges come. */
  @Test
  void slabIsTurnedForTheEdgesThatAreRounded() throws IOException {
    List<String> slab = step("dining-table", "Round over the edges in the slab");
    int turned =
        slab.indexOf(
            "Lay it with the upper side up, with a helper where it is large: it is the upper edges"
                + " that are rounded.");
    assertEquals(1, turned, slab::toString);
    assertTrue(slab.get(turned + 1).startsWith("Round the edges of the slab (D)"), slab::toString);
  }

  @Test
  void slidesComeBackOnTheHolesOfTheTrial() throws IOException {
    for (String project : List.of("window-bench", "nightstand", "sideboard")) {
      List<String> slides = step(project, "Put the drawer slides back");
      assertTrue(says(slides, "into the holes of the trial"), slides::toString);
    }
  }

  private static final String STAND_FIRST =
      """
            - fit stand              # while the back is open, the drill reaches the holes before it
            - fit back
      """;
  private static final String BACK_FIRST =
      """
            - fit back
            - fit stand
      """;

  /** A chuck is some 44 mm thick; the back row of holes lies 11.5 mm before the back panel. */
  @Test
  void longBitsAreTakenWhereTheChuckWouldMeetWood() throws IOException {
    StepText stand = stand(text -> text.replace(STAND_FIRST, BACK_FIRST));
    assertTrue(says(stand.sentences(), "take long bits"), stand::toString);
    assertTrue(stand.tools().contains("long drill bit and driver bit"), stand::toString);
    StepText open = stand(text -> text);
    assertFalse(says(open.sentences(), "take long bits"), open::toString);
    PlanSet stool = AllProjects.named("step-stool");
    LongBits bits = new LongBits(stool.piece());
    List<Step> steps = stool.build().steps();
    assertEquals(List.of(), steps.stream().filter(bits::areWanted).toList());
  }

  private static StepText stand(UnaryOperator<String> change) throws IOException {
    return StepWordsTest.steps(StepWordsTest.piece("nightstand", change)).stream()
        .filter(step -> step.title().equals("Screw the stand to the bottom"))
        .findFirst()
        .orElseThrow();
  }

  /** Steps are written side by side, and all ask the same. */
  @Test
  void longBitsAreTheSameForManyWhoAskAtOnce() {
    PlanSet set = AllProjects.named("nightstand");
    List<Step> steps = set.build().steps();
    LongBits alone = new LongBits(set.piece());
    List<Step> wanted = steps.stream().filter(alone::areWanted).toList();
    assertFalse(wanted.isEmpty());
    for (int i = 0; i < 100; i++) {
      LongBits shared = new LongBits(set.piece());
      assertEquals(wanted, steps.parallelStream().filter(shared::areWanted).toList());
    }
  }

  /** A sentence may not send the reader to pages that an edition leaves out. */
  @Test
  void whatIsKeptBareIsToldInPlaceWhereThePagesOfTheFinishAreLeftOut() {
    PlanSet set = AllProjects.named("nightstand");
    Printing usual = Printing.usual(Words.ENGLISH);
    Edition bare = new Edition("bare", List.of("cover", "steps"), Map.of());
    Printing left =
        new Printing(usual.templates(), usual.words(), bare, Optional.empty(), usual.choice());
    StepTexts texts = new StepTexts(set.piece(), set.build());
    List<String> told = finishing(set, texts.in(left));
    assertTrue(says(told, "Before the first coat, cover on P, T, X: holes"), told::toString);
    assertFalse(says(told, "What to keep bare"), told::toString);
    assertTrue(says(finishing(set, texts.in(usual)), "What to keep bare"));
  }

  /** A sentence may not send the reader to templates that the edition does not print. */
  @Test
  void templatesAreToldOfOnlyWhereTheyArePrinted() {
    String start = "Among the full-size templates at the end";
    for (AllProjects.Sample sample : AllProjects.all()) {
      StepTexts texts = new StepTexts(sample.set().piece(), sample.set().build());
      for (String name : List.of("publish", "helper", "record")) {
        Edition edition = Edition.named(name, Templates.SHARED).orElseThrow();
        Printing usual = Printing.usual(Words.ENGLISH);
        Wording wording =
            texts.in(
                new Printing(
                    usual.templates(), usual.words(), edition, Optional.empty(), usual.choice()));
        boolean told =
            sample.set().build().steps().stream()
                .anyMatch(step -> says(wording.of(step).sentences(), start));
        assertTrue(!told || edition.has("fullsize"), sample.name() + " " + name);
        assertTrue(told || !isSaved(sample, edition), sample.name() + " " + name);
      }
    }
  }

  /** The step that drills or saws by a template names it, as these two projects have some. */
  private static boolean isSaved(AllProjects.Sample sample, Edition edition) {
    return edition.has("fullsize") && List.of("step-stool", "nightstand").contains(sample.name());
  }

  private static List<String> finishing(PlanSet set, Wording wording) {
    return set.build().steps().stream()
        .map(wording::of)
        .filter(step -> step.title().equals("Finish the piece"))
        .findFirst()
        .orElseThrow()
        .sentences();
  }
}
