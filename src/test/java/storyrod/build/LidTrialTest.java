package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/** A lid that slides is tried in its grooves while both are bare. */
class LidTrialTest {
  private static final String BODY =
      """
      parts:
        left: {stock: ash, x: 0 to 20, y: 0 to 250, z: 0 to 130, grain: y}
        right: {stock: ash, x: 220 to 240, y: 0 to 250, z: 0 to 130, grain: y}
        back: {stock: ash, x: 20 to 220, y: 220 to 240, z: 0 to 80, grain: x}
        lid: {stock: ash, x: 20 to 220, y: 0 to 230, z: 90 to 110, grain: y}
      joints:
        - dado: {end: back.left, into: left, depth: 5, glue: yes}
        - dado: {end: back.right, into: right, depth: 5, glue: yes}
        - sliding-lid: {end: lid.left, into: left, depth: 6, opens: front, thickness: 8, setback: 0, from: bottom}
        - sliding-lid: {end: lid.right, into: right, depth: 6, opens: front, thickness: 8, setback: 0, from: bottom}
      """;

  private static final String FINISH = "finish: {product: shellac}\n";

  private static List<String> order(String text) {
    return Planner.plan(Pieces.of(text), new Diagnostics()).orElseThrow().steps().stream()
        .map(Step::operations)
        .flatMap(List::stream)
        .map(Operation::name)
        .toList();
  }

  @Test
  void itIsTriedWhenTheBoxStandsAndBeforeTheFinish() {
    List<String> order = order(BODY + FINISH);
    int trial = order.indexOf("trial-fit lid");
    assertTrue(trial > order.lastIndexOf("size lid"), order::toString);
    assertTrue(trial > order.lastIndexOf("cut left"), order::toString);
    assertTrue(trial > order.indexOf("fit left") && trial > order.indexOf("fit right"));
    assertTrue(trial < order.indexOf("finish piece"), order::toString);
    assertTrue(order.indexOf("finish piece") < order.indexOf("fit lid"), order::toString);
  }

  @Test
  void withoutAFinishItIsTriedWhereItGoesIn() {
    assertEquals(-1, order(BODY).indexOf("trial-fit lid"));
  }

  /**
   * A front that is glued on before the grooves keeps the lid in: it cannot wait for the finish.
   */
  @Test
  void aLidThatIsBuiltInDoesNotWaitForTheFinish() {
    String closed =
        BODY.replace(
                "joints:",
                "  front: {stock: ash, x: 0 to 240, y: -20 to 0, z: 0 to 130, grain: x}\njoints:")
            .replace("0 to 230", "5 to 230");
    List<String> order =
        order(
            closed
                + "  - butt: {end: left.front, to: front, glue: yes}\n"
                + "  - butt: {end: right.front, to: front, glue: yes}\n"
                + FINISH);
    assertTrue(order.indexOf("fit lid") < order.indexOf("finish piece"), order::toString);
  }
}
