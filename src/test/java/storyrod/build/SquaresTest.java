package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/** Diagonals between the outer corners of what stands apart, by Pythagoras, in millimetres. */
class SquaresTest {
  private static final String LEGS =
      """
      parts:
        left: {stock: odd, x: 0 to 30, y: 0 to 30, z: 0 to 400, grain: z}
        right: {stock: odd, x: 270 to 300, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: ash, x: 30 to 270, y: 5 to 25, z: 300 to 390, grain: x}
      joints:
        - tenon: {end: rail.left, into: left, depth: 15, thickness: 7, glue: yes}
        - tenon: {end: rail.right, into: right, depth: 15, thickness: 7, glue: yes}
      """;

  private static List<String> diagonals(String body) {
    Diagnostics diagnostics = new Diagnostics();
    return Planner.plan(Pieces.of(body), diagnostics)
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()))
        .steps()
        .stream()
        .filter(step -> step.verb() == Verb.FIT)
        .flatMap(step -> step.settings().stream())
        .filter(Squares::isDiagonal)
        .map(SquaresTest::told)
        .toList();
  }

  private static String told(Setting setting) {
    return setting.key() + " " + Math.round(setting.value().toMm() * 10) / 10.0;
  }

  /** 300 by 400: a triangle of 3, 4 and 5. */
  @Test
  void twoLegsAreMeasuredFromTopsToFeet() {
    assertEquals(List.of("diagonal 500.0"), diagonals(LEGS));
  }

  /** A foot that is cut back on the outside has no corner there to hold the tape to. */
  @Test
  void taperOnTheInsideLeavesTheCornerAndOneOutsideTakesIt() {
    assertEquals(List.of("diagonal 500.0"), diagonals(LEGS + taper("right")));
    assertEquals(List.of(), diagonals(LEGS + taper("left")));
  }

  private static String taper(String side) {
    return """
        cuts:
          - taper: {end: left.bottom, faces: [%s], from: 250, off: 10}
        """
        .formatted(side);
  }

  @Test
  void legsOfDifferentHeightHaveNoRectangle() {
    String higher =
        LEGS.replace(
            "x: 270 to 300, y: 0 to 30, z: 0 to 400", "x: 270 to 300, y: 0 to 30, z: 0 to 420");
    assertEquals(List.of(), diagonals(higher));
  }

  /** A slab from end to end keeps its own angles. */
  @Test
  void whatASlabFillsIsNotMeasured() {
    String slab = LEGS.replace("z: 300 to 390", "z: 0 to 400");
    assertEquals(List.of(), diagonals(slab));
  }

  /**
   * Two panels 200 deep that lean out by 10 degrees: on the floor they are 280 tan 10 = 49.4
   * further out than under the seat, and 20 / cos 10 = 20.3 thick, so 379.4 over all.
   */
  @Test
  void leaningPanelsAreMeasuredAcrossTheirFeet() {
    String stool =
        """
        parts:
          seat: {stock: ash, x: 0 to 400, y: 0 to 200, z: 280 to 300, grain: x}
          left: {stock: ash, x: 60 to 80, y: 0 to 200, z: 0 to 280, grain: z, turn: {about: y, by: 10, at: {x: left.right, z: seat.bottom}}}
          right: {stock: ash, x: 320 to 340, y: 0 to 200, z: 0 to 280, grain: z, turn: {about: y, by: -10, at: {x: right.left, z: seat.bottom}}}
        cuts:
          - bevel: {end: left.top, to: seat.bottom}
          - bevel: {end: right.top, to: seat.bottom}
          - bevel: {end: left.bottom, level: 0}
          - bevel: {end: right.bottom, level: 0}
        joints:
          - dado: {end: left.top, into: seat, depth: 8, glue: yes}
          - dado: {end: right.top, into: seat, depth: 8, glue: yes}
        """;
    assertEquals(List.of("diagonal-feet 428.9"), diagonals(stool));
  }
}
