package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/**
 * A front is shifted on shims when its box hangs; only then can the box be bored for the pull
 * (common practice).
 */
class FrontHolesTest {
  private static final PlanSet SIDEBOARD = AllProjects.named("sideboard");
  private static final PlanSet NIGHTSTAND = AllProjects.named("nightstand");

  /** The steps in which a part is bored for a pull or a knob. */
  private static List<Verb> bored(PlanSet set, String part, String item) {
    return set.build().steps().stream()
        .flatMap(step -> step.operations().stream())
        .filter(
            each ->
                each.cuts().stream()
                    .anyMatch(
                        cut ->
                            set.piece().part(part).cuts().contains(cut)
                                && cut.forWhat().filter(item::equals).isPresent()))
        .map(Operation::verb)
        .toList();
  }

  private static Step fixing(PlanSet set, String front) {
    return set.build().steps().stream()
        .filter(step -> step.operations().stream().anyMatch(o -> o.name().equals("fit " + front)))
        .findFirst()
        .orElseThrow();
  }

  private static StepText words(PlanSet set, Step step) {
    return new StepWriter(set.piece(), Words.ENGLISH, new Templates(), set.build()).write(step);
  }

  @Test
  void frontIsBoredOnTheBenchAndTheBoxWhenTheFrontIsFixed() {
    assertEquals(List.of(Verb.DRILL), bored(SIDEBOARD, "drawer-2.face", "pull-4"));
    assertEquals(List.of(Verb.FIT), bored(SIDEBOARD, "drawer-2.box-front", "pull-4"));
    assertEquals(List.of(Verb.DRILL), bored(NIGHTSTAND, "drawer-1.face", "knob"));
    assertEquals(List.of(Verb.FIT), bored(NIGHTSTAND, "drawer-1.box-front", "knob"));
  }

  /** A door has no box behind it. */
  @Test
  void doorIsBoredOnTheBench() {
    assertEquals(List.of(Verb.DRILL), bored(SIDEBOARD, "left-door.right-stile", "knob"));
  }

  @Test
  void twoScrewsThroughThePullsHolesHoldTheFront() {
    StepText fix = words(SIDEBOARD, fixing(SIDEBOARD, "drawer-1.face"));
    String all = String.join("\n", fix.sentences());
    assertTrue(
        all.contains("drive two temporary screws from the front, through the holes for the pull"),
        all);
    assertFalse(all.contains("tape"), all);
    assertTrue(
        all.indexOf("Take the temporary screws out.")
            < all.indexOf("drill on through it from the front"),
        all);
    assertTrue(
        fix.settings().stream().anyMatch(s -> s.toString().contains("Bit through the box")),
        fix::toString);
  }

  /** On one screw the front would turn. */
  @Test
  void oneHoleOfAKnobAsksForTapeToo() {
    StepText fix = words(NIGHTSTAND, fixing(NIGHTSTAND, "drawer-1.face"));
    String all = String.join("\n", fix.sentences());
    assertTrue(all.contains("on one screw alone the front would turn"), all);
    assertTrue(
        all.contains("a temporary screw from the front, through the hole for the knob"), all);
    assertTrue(fix.tools().contains(Words.ENGLISH.say("tool.double-sided-tape")), fix::toString);
  }

  @Test
  void partDrawingSaysInWhichStepItIsDrilled() {
    PartLines lines =
        new PartLines(
            NIGHTSTAND.piece(),
            NIGHTSTAND.build().steps(),
            new Texts(NIGHTSTAND.piece().description().format(), Words.ENGLISH));
    int step = fixing(NIGHTSTAND, "drawer-1.face").number();
    String box = NIGHTSTAND.piece().part("drawer-1.box-front").mark();
    String front = NIGHTSTAND.piece().part("drawer-1.face").mark();
    assertEquals(
        "One, as shown. The hole for the knob is drilled at step %d, through that of the front %s in its place: not on the bench."
            .formatted(step, front),
        lines.of(NIGHTSTAND.piece().mark(box)));
    assertEquals(
        "One, as shown. Pilot holes are drilled in place, not on the bench: at step %d through %s."
            .formatted(step, box),
        lines.of(NIGHTSTAND.piece().mark(front)));
  }
}
