package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Pieces;

/** A box with dovetailed corners: half-blind in front, through at the back. */
class DovetailBuildTest {
  private static final String BOX =
      """
      parts:
        front: {stock: odd, x: 0 to 300, y: 0 to 30, z: 0 to 100, grain: x}
        back: {stock: ash, x: 0 to 300, y: 200 to 220, z: 0 to 100, grain: x}
        left: {stock: ash, x: 0 to 20, y: 30 to 200, z: 0 to 100, grain: y}
        right: {stock: ash, x: 280 to 300, y: 30 to 200, z: 0 to 100, grain: y}
        base: {stock: ply6, x: 20 to 280, y: 30 to 200, z: 15 to 21, grain: x}
      joints:
        - dovetail: {end: left.front, into: front, tails: 3, lap: 8, glue: yes}
        - dovetail: {end: right.front, into: front, tails: 3, lap: 8, glue: yes}
        - dovetail: {end: left.back, into: back, tails: 3, glue: yes}
        - dovetail: {end: right.back, into: back, tails: 3, glue: yes}
        - groove: {end: base.left, into: left, depth: 6}
        - groove: {end: base.right, into: right, depth: 6}
        - groove: {end: base.front, into: front, depth: 6}
        - groove: {end: base.back, into: back, depth: 6}
      """;

  private static final BuildPlan PLAN = plan(BOX);

  private static BuildPlan plan(String body) {
    Diagnostics diagnostics = new Diagnostics();
    return Planner.plan(Pieces.of(body), diagnostics)
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
  }

  private static List<Step> cutting(String part, String term) {
    return PLAN.steps().stream()
        .filter(
            step ->
                step.operations().stream()
                    .anyMatch(
                        each ->
                            each.name().equals("cut " + part)
                                && each.cuts().stream().anyMatch(c -> c.term().equals(term))))
        .toList();
  }

  @Test
  void pinsAreMarkedFromTailsThatAreCut() {
    int tails = cutting("left", "tails").getLast().number();
    assertEquals(2, cutting("left", "tails").size());
    assertTrue(tails < cutting("back", "pins").getFirst().number());
    assertTrue(tails < cutting("front", "half-blind pins").getFirst().number());
  }

  /** Baselines: sockets 30 - 8 = 22 deep in front, 20 at the back; tails 20 thick on the pins. */
  @Test
  void gaugesAreSetToTheOtherBoard() {
    assertEquals(
        List.of(Length.mm(20), Length.mm(22)),
        cutting("left", "tails").stream()
            .map(step -> step.settings().getFirst().value())
            .sorted()
            .toList());
    List<Setting> blind = cutting("front", "half-blind pins").getFirst().settings();
    assertEquals(
        Map.of("dovetail-baseline", Length.mm(20), "dovetail-depth", Length.mm(22)),
        blind.stream().collect(Collectors.toMap(Setting::key, Setting::value)));
  }

  /** Tails come in across the face of their board, from outside; the base before the box closes. */
  @Test
  void aSideClosesTheBoxFromOutsideWithTheBaseInIt() {
    Step last =
        PLAN.steps().stream()
            .filter(step -> step.verb() == Verb.FIT)
            .reduce((earlier, later) -> later)
            .orElseThrow();
    List<List<String>> tiers =
        last.tiers().stream().map(tier -> tier.stream().map(Operation::target).toList()).toList();
    Face inwards = tiers.getLast().equals(List.of("left")) ? Face.RIGHT : Face.LEFT;
    assertTrue(List.of(List.of("left"), List.of("right")).contains(tiers.getLast()));
    assertEquals(inwards, last.enters().orElseThrow());
    assertTrue(tiers.subList(0, tiers.size() - 1).contains(List.of("base")), tiers::toString);
  }
}
