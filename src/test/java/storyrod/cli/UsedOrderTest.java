package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Library.Found;
import storyrod.description.SourceText;

/** The order of work that a description brings along into a piece. The pieces are invented. */
class UsedOrderTest {
  private static final String BOX =
      """
      project: Box
      units: inch
      sizes: {width: 10, depth: 5, height: 4}
      stock:
        wood: {kind: solid, species: "ash, white", thickness: 1/2}
      parts:
        left:  {stock: wood, x: 0 to wood.thickness, y: 0 to depth, z: 0 to height, grain: y}
        right: {stock: wood, x: width - wood.thickness to width, y: 0 to depth, z: 0 to height, grain: y}
        front: {stock: wood, x: left.right to right.left, y: 0 to wood.thickness, z: 0 to height, grain: x}
        back:  {stock: wood, x: left.right to right.left, y: depth - wood.thickness to depth, z: 0 to height, grain: x}
      joints:
        - butt: {end: front.left, to: left, glue: yes}
        - butt: {end: front.right, to: right, glue: yes}
        - butt: {end: back.left, to: left, glue: yes}
        - butt: {end: back.right, to: right, glue: yes}
      """;

  private static final String RACK =
      """
      project: Rack
      units: inch
      stock:
        ash: {kind: solid, species: "ash, white", thickness: 3/4}
      parts:
        base: {stock: ash, x: 0 to 40, y: 0 to 6, z: 0 - ash.thickness to 0, grain: x}
      """;

  private static final String TWO =
      """
      assemblies:
        box:
          use: box.yaml
          repeat: {count: 2, along: x, first: 0, size: 10, step: 12}
          in: {x: each.left, y: 0, z: 0}
      joints:
        - butt: {end: box.left.bottom, to: base, glue: yes}
      """;

  private final Diagnostics faults = new Diagnostics();

  private Optional<BuildPlan> tried(String box, String rack) {
    Map<String, String> files = Map.of("box.yaml", box);
    Optional<Description> description =
        new DescriptionReader(
                Pipeline.VOCABULARY,
                codePoint -> true,
                (path, from) -> Found.of(new SourceText(path, files.get(path))))
            .read(new SourceText("rack.yaml", rack), faults);
    return description.flatMap(read -> Pipeline.plan(read, faults)).map(Pipeline.Planned::build);
  }

  private BuildPlan planned(String order, String rack) {
    return tried(BOX + order, rack)
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(faults.sorted())));
  }

  private static List<String> fitted(BuildPlan plan, String unit) {
    return plan.steps().stream()
        .flatMap(step -> step.operations().stream())
        .map(Operation::name)
        .filter(name -> name.startsWith("fit " + unit + "."))
        .map(name -> name.substring(name.lastIndexOf('.') + 1))
        .toList();
  }

  private static Step step(BuildPlan plan, String operation) {
    return plan.steps().stream()
        .filter(step -> step.operations().stream().anyMatch(each -> each.name().equals(operation)))
        .findFirst()
        .orElseThrow();
  }

  private static String build(String order) {
    return "build:\n  - stage: Frame of the box\n    order: [" + order + "]\n";
  }

  @Test
  void eachCopyIsPutTogetherInTheOrderOfItsDescription() {
    for (String order : List.of("back, right, front, left", "left, front, back, right")) {
      BuildPlan plan = planned(build("fit " + order.replace(", ", ", fit ")), RACK + TWO);
      assertEquals(List.of(order.split(", ")), fitted(plan, "box-1"));
      assertEquals(List.of(order.split(", ")), fitted(plan, "box-2"));
    }
  }

  @Test
  void copiesAreBuiltSideBySideUnderTheStagesTitle() {
    BuildPlan plan = planned(build("fit back, fit right, fit front, fit left"), RACK + TWO);
    Step step = step(plan, "fit box-1.right");
    assertEquals(step.number(), step(plan, "fit box-2.right").number());
    assertEquals(Optional.of("Frame of the box"), step.stage().title());
  }

  @Test
  void woodIsMilledAlongWithTheRestOfThePiece() {
    BuildPlan plan = planned(build("mill all, size all, fit back, fit right"), RACK + TWO);
    Step step = step(plan, "mill box-1.left");
    assertEquals(step.number(), step(plan, "mill box-2.back").number());
    assertEquals("milling", step.stage().key());
  }

  @Test
  void dryFitOfThePieceMeansWhatTheDescriptionDescribes() {
    assertTrue(tried(BOX + build("fit left, dry-fit piece"), RACK + TWO).isEmpty());
    String said = DiagnosticPrinter.print(faults.sorted());
    assertTrue(said.contains("rule dry-fit-before-glue"), said);
  }

  @Test
  void workOnOnePartWaitsWhereItsDescriptionSaysSo() {
    BuildPlan plan = planned(build("fit left, size front, fit front"), RACK + TWO);
    assertTrue(
        step(plan, "fit box-2.left").number() < step(plan, "size box-2.front").number(),
        plan.steps()::toString);
  }

  @Test
  void orderOfThePieceGoesBeforeThatOfWhatItUses() {
    BuildPlan plan =
        planned(
            build("fit back, fit right, fit front, fit left"),
            RACK
                + TWO
                + "build:\n  - stage: Mine\n    order: [fit box-1.left, fit box-1.front,"
                + " fit box-1.right, fit box-1.back]\n");
    assertEquals(List.of("left", "front", "right", "back"), fitted(plan, "box-1"));
    assertEquals(List.of("back", "right", "front", "left"), fitted(plan, "box-2"));
    assertEquals(Optional.of("Mine"), step(plan, "fit box-1.left").stage().title());
  }

  @Test
  void finishAndWhatIsNotThereAreLeftOut() {
    BuildPlan plan =
        planned(build("drill all, cut left, fit back, fit left, finish piece"), RACK + TWO);
    List<String> order = fitted(plan, "box-1");
    assertTrue(order.indexOf("back") < order.indexOf("left"), order::toString);
  }

  @Test
  void wordsWithoutAnOrderAreSaidInTheStepTheySpeakOf() {
    BuildPlan plan =
        planned(
            "build:\n  - stage: Frame\n    say: {fit right: Check that the box is square.}\n",
            RACK + TWO);
    assertEquals(List.of("Check that the box is square."), step(plan, "fit box-2.right").say());
  }

  @Test
  void orderThatBreaksARuleIsToldOnceInItsOwnText() {
    tried(BOX + build("fit left, mill left"), RACK + TWO);
    List<Diagnostic> found = faults.sorted();
    assertEquals(1, found.size(), found::toString);
    assertEquals("order-breaks-rule", found.getFirst().code());
    assertEquals("box.yaml", found.getFirst().at().source().file());
  }
}
