package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Part;

class OwnOrderTest {
  private static List<Diagnostic> faults(String order) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<BuildPlan> plan =
        Planner.plan(Benches.bench(TestPiece.withOrder("Case", order)).piece(), diagnostics);
    assertEquals(diagnostics.hasErrors(), plan.isEmpty());
    return diagnostics.sorted();
  }

  private static Diagnostic fault(String order) {
    List<Diagnostic> faults = faults(order);
    assertEquals(1, faults.size(), faults::toString);
    return faults.getFirst();
  }

  @Test
  void gluingASideBeforeItsHolesAreDrilledNamesBothWithTheirLines() {
    Diagnostic fault =
        fault("fit bottom\nfit left-side\ndrill right-side\ndrill left-side\nfit right-side");
    assertEquals("order-breaks-rule", fault.code());
    assertEquals(2, fault.at().line());
    assertEquals(4, fault.also().getFirst().at().line());
    assertEquals(
        "`fit left-side` comes before `drill left-side`, but its holes are hard to reach, and to"
            + " line up, once it is in its place (rule drill-before-fitting)",
        fault.message());
    assertEquals(List.of("move `drill left-side` up, before `fit left-side`"), fault.hints());
  }

  @Test
  void panelAfterItsFrameHasClosedNamesThePartThatClosedIt() {
    Diagnostic fault =
        fault(
            "fit drawer.box-front\nfit drawer.left-side\nfit drawer.box-back\n"
                + "fit drawer.right-side\nfit drawer.panel");
    assertEquals("order-breaks-rule", fault.code());
    assertEquals(4, fault.at().line());
    assertEquals(5, fault.also().getFirst().at().line());
    assertTrue(fault.message().contains("closes on it"), fault.message());
  }

  @Test
  void breachOverAnOperationThatIsNotListedNamesItToo() {
    Diagnostic fault = fault("fit frame\nsize frame.top-rail");
    assertTrue(
        fault
            .message()
            .startsWith(
                "`fit frame` comes before `size frame.top-rail`, but `fit frame` has to wait for"),
        fault.message());
    assertTrue(fault.message().contains("`fit frame.top-rail`"), fault.message());
  }

  @Test
  void everyBreachIsReported() {
    assertEquals(
        List.of("fit left-side", "finish piece"),
        faults("fit left-side\ndrill left-side\nfinish piece\ntest finish").stream()
            .map(fault -> fault.message().split("`")[1])
            .toList());
  }

  @Test
  void whatCannotBeDoneSaysWhatThereIs() {
    Diagnostic fault = fault("drill bottom");
    assertEquals("unknown-operation", fault.code());
    assertTrue(fault.hints().getFirst().startsWith("what there is to drill: left-side,"));
  }

  @Test
  void operationListedTwiceIsAnError() {
    Diagnostic fault = fault("cut bottom\ndrill left-side\ncut bottom");
    assertEquals("listed-twice", fault.code());
    assertEquals(3, fault.at().line());
    assertEquals(1, fault.also().getFirst().at().line());
  }

  @Test
  void allStandsForWhatAVerbHasLeftAndStaysInItsStage() {
    BuildPlan plan =
        Planner.plan(
                Benches.bench(
                        TestPiece.withOrder(
                            "Wood", "mill drawer.face\nsize drawer.face\nmill all\nsize all"))
                    .piece(),
                new Diagnostics())
            .orElseThrow();
    List<Operation> own =
        plan.steps().stream()
            .filter(step -> step.stage().key().equals("own"))
            .flatMap(step -> step.operations().stream())
            .toList();
    assertEquals("mill drawer.face", own.getFirst().name());
    List<Part> parts = Benches.bench().piece().parts();
    long boards = parts.stream().filter(part -> !Traits.isSheet(part)).count();
    assertEquals(parts.size() + boards, own.size());
  }

  @Test
  void allOfAVerbTooEarlyBreaksTheRuleForOneOfIts() {
    assertTrue(
        faults("size all\nmill front-stretcher").stream()
            .anyMatch(
                fault ->
                    fault
                        .message()
                        .startsWith("`size front-stretcher` comes before `mill front-stretcher`")));
  }

  @Test
  void goodOrderIsKeptUnderItsOwnTitleAndTheRestGoesRoundIt() {
    String order = "fit left-partition\nfit bottom\nfit right-side\ncut back-stretcher";
    String able = order.substring(0, order.lastIndexOf('\n'));
    Diagnostics diagnostics = new Diagnostics();
    BuildPlan plan =
        Planner.plan(Benches.bench(TestPiece.withOrder("My case", able)).piece(), diagnostics)
            .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
    List<Step> own =
        plan.steps().stream().filter(step -> step.stage().key().equals("own")).toList();
    assertEquals(
        List.of("fit left-partition", "fit bottom", "fit right-side"),
        own.stream().flatMap(s -> s.operations().stream()).map(Operation::name).toList());
    assertEquals(Optional.of("My case"), own.getFirst().stage().title());
  }
}
