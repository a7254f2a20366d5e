package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Face;

class StageRunsTest {
  /** Steps of stages named by letters; a capital is a stage of the maker's own. */
  private static String joined(String stages) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < stages.length(); i++) {
      String key = stages.substring(i, i + 1);
      boolean isOwn = Character.isUpperCase(key.charAt(0));
      steps.add(step(i + 1, new Stage(key, isOwn ? Optional.of(key) : Optional.empty())));
    }
    return StageRuns.joined(steps).stream()
        .map(step -> step.stage().key())
        .collect(Collectors.joining());
  }

  private static Step step(int number, Stage stage) {
    return new Step(
        number,
        stage,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Face.BOTTOM,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        1,
        0);
  }

  @Test
  void stepsThatFillAWaitStayInTheStageAroundThem() {
    assertEquals("aaaaaa", joined("aabaaa"));
    assertEquals("aaaaaab", joined("aabbaab"));
    assertEquals("aaaabbb", joined("aababbb"));
  }

  /** Boards glued up between the cuts have a heading of their own, and no cut is among them. */
  @Test
  void aGlueUpOfBoardsIsHeadedAsThat() {
    Operation mill =
        new Operation(Verb.MILL, "top", List.of(), List.of(), List.of(), List.of(), 1, 0);
    Step bare = step(2, new Stage("b", Optional.empty()));
    Step glued =
        new Step(
            2,
            bare.stage(),
            List.of(mill),
            List.of(),
            List.of(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Face.BOTTOM,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            1,
            1440,
            new GlueUp(4, 60, 1440));
    Stage cutting = new Stage("a", Optional.empty());
    List<Step> steps = List.of(step(1, cutting), glued, step(3, cutting));
    assertEquals(
        List.of("a", "panels", "a"),
        StageRuns.joined(steps).stream().map(each -> each.stage().key()).toList());
  }

  @Test
  void theShortestIsMovedFirst() {
    // The one b between the a's, not the two a's between the b's.
    assertEquals("aaaaaabbb", joined("aaabaabbb"));
  }

  @Test
  void manyStepsKeepTheirHeading() {
    assertEquals("aabbbaa", joined("aabbbaa"));
  }

  @Test
  void whatStandsBetweenTwoOthersKeepsItsStage() {
    assertEquals("abc", joined("abc"));
    assertEquals("a", joined("a"));
    assertEquals("", joined(""));
  }

  @Test
  void aStageOfTheMakersOwnIsLeftAlone() {
    assertEquals("aaBaa", joined("aaBaa"));
    assertEquals("AAbAA", joined("AAbAA"));
  }
}
