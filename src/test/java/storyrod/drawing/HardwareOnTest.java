package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Group;
import storyrod.planset.PlanSet;

/** What was mounted stays in the pictures of later steps. */
class HardwareOnTest {
  private static final String ON = "on-";

  private static Set<String> groups(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Group.class::isInstance)
        .map(each -> ((Group) each).id())
        .collect(Collectors.toSet());
  }

  private static Stream<Hardware> mounted(PlanSet set) {
    return Hardware.of(set.piece()).stream()
        .filter(
            each ->
                each.placed()
                    .origin()
                    .entry()
                    .filter(entry -> entry.item().value().equals(each.placed().item()))
                    .isPresent());
  }

  /** From the step after its own on, wherever its part is drawn whole, and never before. */
  @TestFactory
  List<DynamicTest> whatIsMountedStaysOn() {
    return AllProjects.each(project -> mounted(project.set()).forEach(of(project.set())));
  }

  private static java.util.function.Consumer<Hardware> of(PlanSet set) {
    return each -> {
      int from =
          set.build().steps().stream()
              .filter(step -> step.verb() != Verb.TRIAL_FIT && each.placed().isFittedIn(step))
              .mapToInt(Step::number)
              .min()
              .orElse(Integer.MAX_VALUE);
      set.drawings()
          .steps()
          .forEach(
              (number, drawing) -> {
                Set<String> ids = groups(drawing);
                boolean isOn = ids.contains(ON + each.id());
                assertFalse(isOn && number <= from, () -> each.id() + " in " + drawing.name());
                assertEquals(
                    number > from && isAssembly(set, number) && ids.contains(host(set, each)),
                    isOn,
                    () -> each.id() + " in " + drawing.name());
              });
    };
  }

  private static String host(PlanSet set, Hardware each) {
    return Ink.id(set.piece().part(each.placed().host()));
  }

  /** A step whose picture shows what is put together or mounted. */
  private static boolean isAssembly(PlanSet set, int number) {
    Verb verb = set.build().steps().get(number - 1).verb();
    return verb == Verb.FIT || verb == Verb.MOUNT || verb == Verb.TRIAL_FIT || verb == Verb.DRY_FIT;
  }

  /** The hinges are on a door when its knob is mounted; before, on trial, they came off again. */
  @Test
  void hingesAreOnTheDoorWhenItsKnobIsMounted() {
    PlanSet set = AllProjects.named("sideboard");
    Step knobs =
        set.build().steps().stream()
            .filter(step -> step.verb() == Verb.MOUNT && mountsKnobs(set, step))
            .findFirst()
            .orElseThrow();
    assertTrue(
        groups(set.drawings().steps().get(knobs.number())).stream()
            .anyMatch(each -> each.startsWith("on-hardware-door-hinge")));
  }

  private static boolean mountsKnobs(PlanSet set, Step step) {
    return mounted(set)
        .filter(each -> each.placed().item().equals("knob"))
        .anyMatch(each -> each.placed().isFittedIn(step));
  }
}
