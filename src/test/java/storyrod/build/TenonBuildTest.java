package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Pieces;

/** Rails with tenons at both ends, from the settings to the way in. */
class TenonBuildTest {
  private static final String ONE_RAIL =
      """
      parts:
        left-leg: {stock: odd, x: 0 to 40, y: 0 to 30, z: 0 to 400, grain: z}
        right-leg: {stock: odd, x: 300 to 340, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: ash, x: left-leg.right to right-leg.left, y: 5 to 25, z: 300 to 390, grain: x}
      joints:
        - tenon: {end: rail.left, into: left-leg, depth: 20, thickness: 7, glue: yes}
        - tenon: {end: rail.right, into: right-leg, depth: 20, thickness: 7, glue: yes}
      """;

  private static BuildPlan plan(String body) {
    Diagnostics diagnostics = new Diagnostics();
    return Planner.plan(Pieces.of(body), diagnostics)
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
  }

  private static Step step(BuildPlan plan, String operation, String term) {
    return plan.steps().stream()
        .filter(
            step ->
                step.operations().stream()
                    .anyMatch(
                        each ->
                            each.name().equals(operation)
                                && each.cuts().stream().anyMatch(c -> c.term().equals(term))))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLegMovesOntoTheTenonOfARailThatStands() {
    BuildPlan plan = plan(ONE_RAIL);
    Step last =
        plan.steps().stream().filter(step -> step.verb() == Verb.FIT).reduce((a, b) -> b).get();
    assertTrue(
        List.of("left-leg", "right-leg").contains(last.newParts().getLast()),
        last.newParts().toString());
    assertTrue(
        last.enters().filter(List.of(Face.LEFT, Face.RIGHT)::contains).isPresent(),
        last.enters().toString());
  }

  @Test
  void mortisesComeBeforeTenonsEachInOneStep() {
    BuildPlan plan = plan(ONE_RAIL);
    Step mortises = step(plan, "cut left-leg", "mortise");
    assertEquals(mortises, step(plan, "cut right-leg", "mortise"));
    assertTrue(mortises.number() < step(plan, "cut rail", "tenon").number());
  }

  /** 20 mm less 7, halved, comes off each cheek: 6.5; and 6 off each edge. */
  @Test
  void theSawIsSetByWhatComesOff() {
    List<Setting> settings = step(plan(ONE_RAIL), "cut rail", "tenon").settings();
    assertEquals(
        List.of("tenon-thickness", "tenon-length", "cheek-each", "shoulder-each"),
        settings.stream().map(Setting::key).toList());
    assertEquals(
        List.of(Length.mm(7), Length.mm(20), Length.parse("6.5 mm"), Length.mm(6)),
        settings.stream().map(Setting::value).toList());
  }

  private static final String HAUNCHED =
      ONE_RAIL.replace("thickness: 7,", "thickness: 7, haunch: top, haunch-width: 24,");

  /** 6 off the lower edge; at the upper one a haunch of 24, as long as the tenon is thick. */
  @Test
  void theSawLeavesTheHaunchStanding() {
    Step step = step(plan(HAUNCHED), "cut rail", "tenon");
    List<Setting> settings = step.settings();
    assertEquals(
        List.of(
            "tenon-thickness",
            "tenon-length",
            "cheek-each",
            "shoulder-bottom",
            "haunch-top",
            "haunch-length"),
        settings.stream().map(Setting::key).toList());
    assertEquals(Length.mm(6), settings.get(3).value());
    assertEquals(Length.mm(24), settings.get(4).value());
    assertEquals(Length.mm(7), settings.get(5).value());
  }

  /** Three more minutes for each rail. */
  @Test
  void aHaunchTakesTime() {
    assertEquals(
        step(plan(ONE_RAIL), "cut rail", "tenon").minutes() + 3,
        step(plan(HAUNCHED), "cut rail", "tenon").minutes());
  }

  @Test
  void socketsAreCutAfterTheirMortisesAndBeforeTheTenons() {
    BuildPlan plan = plan(HAUNCHED);
    int mortises = step(plan, "cut left-leg", "mortise").number();
    int sockets = step(plan, "cut left-leg", "haunch socket").number();
    int tenons = step(plan, "cut rail", "tenon").number();
    assertTrue(mortises < sockets && sockets < tenons, mortises + ", " + sockets + ", " + tenons);
  }

  /** The mortise begins 5 + 6.5 mm from either face of the leg's 30. */
  @Test
  void theMortisesGuideIsSetFromTheNearerFace() {
    List<Setting> settings = step(plan(ONE_RAIL), "cut left-leg", "mortise").settings();
    assertTrue(
        settings.stream()
            .anyMatch(
                setting ->
                    setting.key().equals("fence-front")
                        && setting.value().equals(Length.parse("11.5 mm"))),
        settings.toString());
  }

  private static final String FOUR_RAILS =
      """
      parts:
        a: {stock: odd, x: 0 to 40, y: 0 to 30, z: 0 to 400, grain: z}
        b: {stock: odd, x: 300 to 340, y: 0 to 30, z: 0 to 400, grain: z}
        c: {stock: odd, x: 0 to 40, y: 200 to 230, z: 0 to 400, grain: z}
        d: {stock: odd, x: 300 to 340, y: 200 to 230, z: 0 to 400, grain: z}
        front: {stock: ash, x: 40 to 300, y: 5 to 25, z: 300 to 390, grain: x}
        back: {stock: ash, x: 40 to 300, y: 205 to 225, z: 300 to 390, grain: x}
        left: {stock: ash, x: 10 to 30, y: 30 to 200, z: 300 to 390, grain: y}
        right: {stock: ash, x: 310 to 330, y: 30 to 200, z: 300 to 390, grain: y}
      joints:
        - tenon: {end: front.left, into: a, depth: 20, thickness: 7, glue: yes}
        - tenon: {end: front.right, into: b, depth: 20, thickness: 7, glue: yes}
        - tenon: {end: back.left, into: c, depth: 20, thickness: 7, glue: yes}
        - tenon: {end: back.right, into: d, depth: 20, thickness: 7, glue: yes}
        - tenon: {end: left.front, into: a, depth: 8, thickness: 7, glue: yes}
        - tenon: {end: left.back, into: c, depth: 8, thickness: 7, glue: yes}
        - tenon: {end: right.front, into: b, depth: 8, thickness: 7, glue: yes}
        - tenon: {end: right.back, into: d, depth: 8, thickness: 7, glue: yes}
      """;

  /** No leg can come in last: it would have to take tenons from two sides. So ends come first. */
  @Test
  void aTableThatIsNotDescribedInEndFramesIsBuiltInEndFrames() {
    List<Operation> fits =
        Planner.plan(Pieces.of(FOUR_RAILS), new Diagnostics()).orElseThrow().steps().stream()
            .flatMap(step -> step.operations().stream())
            .filter(operation -> operation.verb() == Verb.FIT)
            .toList();
    List<List<String>> ends =
        fits.stream().map(Operation::parts).filter(parts -> parts.size() > 1).toList();
    List<List<String>> known =
        List.of(
            List.of("a", "c", "left"),
            List.of("b", "d", "right"),
            List.of("a", "b", "front"),
            List.of("c", "d", "back"));
    assertTrue(!ends.isEmpty() && known.containsAll(ends), ends::toString);
    assertTrue(ends.contains(fits.getLast().parts()), fits::toString);
  }
}
