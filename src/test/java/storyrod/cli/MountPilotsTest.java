package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.MountLines;
import storyrod.build.Operation;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.piece.PieceBuilder;

/** Pilot holes of slides are drilled on the bench where no drill finds room later. */
class MountPilotsTest {
  private static final String BAYS =
      Shell.read(Path.of("src/test/resources/messages/mount-blocked.yaml"));

  private static BuildPlan plan(String text, Diagnostics found) {
    return Planner.plan(
            PieceBuilder.build(
                    Pipeline.reader().read(new SourceText("bays.yaml", text), found).orElseThrow(),
                    found)
                .orElseThrow(),
            found)
        .orElseThrow();
  }

  private static Stream<Operation> drilled(Step step) {
    return step.operations().stream()
        .filter(each -> each.verb() == Verb.DRILL)
        .filter(each -> each.cuts().getFirst().term().equals(MountLines.PILOT));
  }

  private static List<String> holes(BuildPlan plan) {
    return plan.steps().stream()
        .flatMap(MountPilotsTest::drilled)
        .flatMap(each -> each.cuts().stream().map(cut -> each.target() + " " + cut.from().word()))
        .sorted()
        .distinct()
        .toList();
  }

  @Test
  void wallsOfBaysTooNarrowForADrillAreDrilledBeforeTheyStand() {
    BuildPlan plan = plan(BAYS, new Diagnostics());
    assertEquals(List.of("one right", "three left", "two left", "two right"), holes(plan));
    int drilled = number(plan, step -> drilled(step).findAny().isPresent());
    int fitted = number(plan, step -> step.newParts().contains("two"));
    assertTrue(drilled < fitted, drilled + " comes before " + fitted);
  }

  /** Bits are listed where they are used; "one" stands for "four" too, which has room. */
  @Test
  void bitsStandWhereTheHolesAreDrilled() {
    List<String> mounted =
        plan(BAYS, new Diagnostics()).steps().stream()
            .filter(step -> step.verb() == Verb.MOUNT || step.verb() == Verb.TRIAL_FIT)
            .flatMap(step -> step.settings().stream())
            .filter(setting -> setting.key().startsWith("pilot-"))
            .flatMap(setting -> setting.part().stream())
            .distinct()
            .toList();
    assertFalse(mounted.contains("two") || mounted.contains("three"), mounted::toString);
    assertTrue(mounted.contains("one"), mounted::toString);
  }

  private static int number(BuildPlan plan, java.util.function.Predicate<Step> which) {
    return plan.steps().stream().filter(which).findFirst().orElseThrow().number();
  }

  @Test
  void withRoomForTheDrillTheyWaitForTheirSlides() {
    Diagnostics found = new Diagnostics();
    String wide = BAYS.replace("120 to 140", "320 to 340").replace("340 to 360", "620 to 640");
    BuildPlan plan =
        plan(wide.replace("640 to 660", "920 to 940").replace("0 to 660", "0 to 940"), found);
    assertEquals(List.of(), holes(plan));
    assertEquals(
        List.of(),
        found.sorted().stream().map(Diagnostic::code).filter("mount-blocked"::equals).toList());
  }

  @Test
  void theLineOfAScrewIsAsLongAsAShortScrewdriverAndAHand() {
    Diagnostics none = new Diagnostics();
    plan(BAYS.replace("120 to 140", "140 to 160"), none);
    assertEquals(0, none.sorted().stream().filter(d -> d.code().equals("mount-blocked")).count());
    Diagnostics one = new Diagnostics();
    plan(BAYS.replace("120 to 140", "110 to 130"), one);
    assertEquals(1, one.sorted().stream().filter(d -> d.code().equals("mount-blocked")).count());
  }
}
