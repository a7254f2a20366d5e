package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

/** What stands while hardware is mounted. */
class StandingPartsTest {
  private static final PlanSet TABLE = AllProjects.named("dining-table");

  private static Set<String> units(List<List<Part>> things) {
    return things.stream()
        .flatMap(List::stream)
        .map(part -> part.name().split("\\.")[0])
        .collect(Collectors.toSet());
  }

  /** The glides go on before the top is fastened: it was shown in place, and the piece turned. */
  @Test
  void aTopThatIsFastenedLaterDoesNotStandYet() {
    BuildPlan plan = TABLE.build();
    Piece piece = TABLE.piece();
    Step glides =
        plan.steps().stream().filter(step -> step.verb() == Verb.MOUNT).findFirst().orElseThrow();
    Standing standing = new Standing(piece, plan, glides);
    List<String> legs = List.of("frame.left-end.front-leg", "frame.right-end.front-leg");
    assertEquals(Set.of("frame"), units(standing.around(legs)));
    assertEquals(Set.of("frame"), units(standing.takenOut(legs)));
  }
}
