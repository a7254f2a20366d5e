package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Drawing.Balloon;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.planset.PlanSet;

/**
 * Three drawers that are glued up in one step: the picture shows the first, large enough to read.
 */
class OneOfManyTest {
  private static final PlanSet STAND = AllProjects.named("nightstand");

  private static Step building(String part) {
    return STAND.build().steps().stream()
        .filter(step -> step.newParts().contains(part))
        .findFirst()
        .orElseThrow();
  }

  private static Set<String> marks(Step step) {
    return Clean.flat(STAND.drawings().steps().get(step.number()).elements()).stream()
        .filter(Balloon.class::isInstance)
        .map(each -> ((Balloon) each).mark())
        .collect(Collectors.toSet());
  }

  private static Set<String> marksOf(String unit) {
    return Nesting.of(STAND.piece()).parts(unit).stream()
        .map(Part::mark)
        .collect(Collectors.toSet());
  }

  @Test
  void ofThreeDrawersTheFirstIsShown() {
    Step drawers = building("drawer-1.panel");
    assertTrue(drawers.newParts().contains("drawer-3.panel"), drawers::toString);
    assertTrue(OneOfMany.isIn(STAND.piece(), drawers));
    Set<String> first = marksOf("drawer-1");
    assertTrue(first.containsAll(marks(drawers)), () -> marks(drawers) + " of " + first);
    assertTrue(marks(drawers).size() >= 4, () -> marks(drawers).toString());
  }

  /** Two may be mirror images of each other, so both are shown. */
  @Test
  void ofTwoEndsBothAreShown() {
    List<Step> pairs =
        STAND.build().steps().stream()
            .filter(step -> step.newParts().stream().anyMatch(part -> part.contains("left-end")))
            .toList();
    pairs.forEach(step -> assertFalse(OneOfMany.isIn(STAND.piece(), step)));
    assertTrue(!pairs.isEmpty());
  }

  /** The fronts go on to drawers that hang in the case: where one belongs is seen by the others. */
  @Test
  void whatIsFixedInTheStandingPieceIsShownWhole() {
    Step fronts = building("drawer-3.face");
    assertTrue(fronts.operations().size() >= 3, fronts::toString);
    assertFalse(OneOfMany.isIn(STAND.piece(), fronts));
  }
}
