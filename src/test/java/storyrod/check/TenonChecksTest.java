package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/** The proportions of tenons and tongues, each just right and just wrong (common practice). */
class TenonChecksTest {
  /** A leg 20 mm by 40 and a rail 20 mm thick; the leg takes the tenon on its 40 mm. */
  private static final String FRAME =
      """
      parts:
        leg: {stock: ash, x: 0 to 40, y: 0 to 20, z: 0 to 400, grain: z}
        rail: {stock: ash, x: leg.right to 350, y: 0 to 20, z: 300 to 390, grain: x}
      joints:
        - tenon: {end: rail.left, into: leg, depth: 25, thickness: 7, glue: yes}
      """;

  @Test
  void aSoundTenonHasNoFindings() {
    assertCodes(List.of(), FRAME);
  }

  /** 90 less a shoulder of 6 is 84: half of it is 42; half of the tenon's 25 is 12.5. */
  @Test
  void aHaunchWiderThanItsTenonOrDeeperThanHalfOfItIsAWarning() {
    String haunched =
        FRAME.replace("glue: yes", "haunch: top, haunch-width: 42, haunch-depth: 12.5, glue: yes");
    assertCodes(List.of(), haunched);
    assertCodes(List.of("haunch-size"), haunched.replace("haunch-width: 42", "haunch-width: 42.1"));
    assertCodes(List.of("haunch-size"), haunched.replace("12.5", "12.6"));
  }

  /** A groove for a panel of 6 mm, 10 deep, runs past the mortise to the end of the leg. */
  @Test
  void aHaunchThatDoesNotFillItsGrooveIsAWarning() {
    String grooved =
        FRAME
            .replace(
                "joints:\n",
                """
                  panel: {stock: ply6, x: leg.right to 350, y: 7 to 13, z: 0 to 300, grain: z}
                joints:
                  - groove: {end: panel.left, into: leg, depth: 10, glue: yes}
                """)
            .replace(
                "thickness: 7, glue: yes",
                "thickness: 6, haunch: top, haunch-depth: 10, glue: yes");
    assertCodes(List.of(), grooved);
    assertCodes(
        List.of("haunch-in-groove"), grooved.replace("haunch-depth: 10", "haunch-depth: 9.9"));
    assertCodes(List.of(), grooved.replace("haunch-depth: 10", "haunch-depth: 10.1"));
  }

  /** A quarter of 20 mm is 5, a half is 10. */
  @Test
  void aTenonOutsideAQuarterToAHalfOfTheThicknessIsAWarning() {
    assertCodes(List.of(), FRAME.replace("thickness: 7", "thickness: 5"));
    assertCodes(List.of("tenon-thickness"), FRAME.replace("thickness: 7", "thickness: 4.9"));
    String thick =
        FRAME
            .replace("y: 0 to 20, z: 0", "y: 0 - 10 to 30, z: 0")
            .replace("leg: {stock: ash, x: 0 to 40", "leg: {stock: odd, x: 0 to 30")
            .replace("depth: 25", "depth: 20");
    assertCodes(List.of(), thick.replace("thickness: 7", "thickness: 10"));
    assertCodes(List.of("tenon-thickness"), thick.replace("thickness: 7", "thickness: 10.1"));
  }

  /** Half of the leg's 40 mm is 20; where the leg is 60 mm, 25 mm is enough. */
  @Test
  void aTenonShorterThanHalfTheLegIsAWarning() {
    assertCodes(List.of(), FRAME.replace("depth: 25", "depth: 20"));
    assertCodes(List.of("tenon-length"), FRAME.replace("depth: 25", "depth: 19.9"));
    String wide = FRAME.replace("x: 0 to 40", "x: 0 - 20 to 40");
    assertCodes(List.of(), wide);
    assertCodes(List.of("tenon-length"), wide.replace("depth: 25", "depth: 24.9"));
  }

  /** 6 mm must remain: beside it, (20 - 8) / 2; behind it, 40 - 32.5 - 1.5; above, 400 - 394. */
  @Test
  void lessThanSixMillimetresBesideAMortiseIsAWarning() {
    assertCodes(List.of(), FRAME.replace("thickness: 7", "thickness: 8"));
    assertCodes(
        List.of("mortise-wall", "mortise-wall"), FRAME.replace("thickness: 7", "thickness: 8.1"));
    assertCodes(List.of(), FRAME.replace("depth: 25", "depth: 32.5"));
    assertCodes(List.of("mortise-wall"), FRAME.replace("depth: 25", "depth: 32.6"));
    assertCodes(List.of(), FRAME.replace("300 to 390", "300 to 400"));
    assertCodes(
        List.of("mortise-wall"),
        FRAME.replace("300 to 390", "300 to 400").replace("glue", "top-shoulder: 5.9, glue"));
  }

  /** A groove 6 mm deep leaves the tenon with its shoulder of 6 alone; one of 6.1 does not. */
  @Test
  void aGrooveThatRunsThroughATenonIsAWarning() {
    String panel =
        "  panel: {stock: ply6, x: leg.right to 350, y: 7 to 13, z: 0 to 300, grain: x}\njoints:\n"
            + "  - groove: {end: panel.top, into: rail, depth: DEEP, glue: yes}\n";
    String grooved = FRAME.replace("joints:\n", panel);
    assertTrue(withCode("tenon-cut-away", grooved.replace("DEEP", "6")).isEmpty());
    List<Diagnostic> cut = withCode("tenon-cut-away", grooved.replace("DEEP", "6.1"));
    assertEquals(1, cut.size());
    assertTrue(cut.getFirst().message().contains("0.1 mm into its tenon"), cut.toString());
  }

  @Test
  void twoTenonsOnOneEndAreAnError() {
    String twice =
        FRAME
            + "  - tenon: {end: rail.left, into: leg, depth: 25, thickness: 7, shoulder: 50,"
            + " top-shoulder: 6}\n";
    List<Diagnostic> cut = withCode("tenon-cut-away", twice);
    assertTrue(!cut.isEmpty() && cut.stream().allMatch(Diagnostic::isError), cut.toString());
  }

  private static final String DOOR =
      """
      parts:
        stile: {stock: ash, x: 0 to 60, y: 0 to 20, z: 0 to 400, grain: z}
        rail: {stock: ash, x: stile.right to 400, y: 0 to 20, z: 340 to 400, grain: x}
      joints:
        - tongue: {end: rail.left, into: stile, depth: 10, thickness: 6, glue: yes}
      """;

  @Test
  void aTongueIsHeldToTheSameProportions() {
    assertCodes(List.of(), DOOR);
    assertCodes(List.of("tenon-thickness"), DOOR.replace("thickness: 6", "thickness: 4.9"));
    assertCodes(List.of(), DOOR.replace("depth: 10", "depth: 6"));
    assertCodes(List.of("tenon-length"), DOOR.replace("depth: 10", "depth: 5.9"));
    assertCodes(
        List.of("mortise-wall", "mortise-wall"), DOOR.replace("thickness: 6", "thickness: 8.1"));
  }

  /** A leg 40 mm wide and 30 deep; the second rail comes from behind, at x 10 to 30. */
  private static final String CORNER =
      """
      parts:
        leg: {stock: odd, x: 0 to 40, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: ash, x: leg.right to 350, y: 5 to 25, z: 300 to 390, grain: x}
        side: {stock: ash, x: 10 to 30, y: leg.back to 300, z: 300 to 390, grain: y}
      joints:
        - tenon: {end: rail.left, into: leg, depth: 20, thickness: 7, glue: yes}
        - tenon: {end: side.front, into: leg, depth: DEPTH, thickness: 7, glue: yes}
      """;

  /**
   * The rail's mortise ends at x 18.5 and takes y 11.5 to 18.5; the other takes x 16.5 to 23.5 and
   * goes DEPTH + 1.5 mm in from y 30: to 18.5 with 10 mm, and 2 mm past that with 12.
   */
  @Test
  void mortisesThatRunIntoEachOtherAreAWarningWithTheDepth() {
    assertTrue(withCode("mortises-meet", CORNER.replace("DEPTH", "10")).isEmpty());
    List<Diagnostic> met = withCode("mortises-meet", CORNER.replace("DEPTH", "12"));
    assertEquals(1, met.size());
    assertTrue(met.getFirst().message().contains("run 2 mm into each other"), met.toString());
  }

  /** The rail's tenon ends at x 20 and takes y up to 18.5: 11.5 mm is as far as the other goes. */
  @Test
  void tenonsThatCollideTakeTheSameSpace() {
    assertTrue(withCode("parts-overlap", CORNER.replace("DEPTH", "11.5")).isEmpty());
    assertEquals(1, withCode("parts-overlap", CORNER.replace("DEPTH", "11.6")).size());
  }

  @Test
  void aRailThatRunsIntoTheLegWithoutAMortiseIsAnOverlap() {
    String plain = FRAME.replaceAll("(?s)joints:.*", "").replace("x: leg.right to", "x: 25 to");
    assertEquals(1, withCode("parts-overlap", plain).size());
    assertTrue(withCode("parts-overlap", FRAME).isEmpty());
  }

  private static List<Diagnostic> withCode(String code, String body) {
    return findings(body).stream().filter(found -> found.code().equals(code)).toList();
  }

  private static List<Diagnostic> findings(String body) {
    Diagnostics diagnostics = new Diagnostics();
    Checks.run(Pieces.of(body), diagnostics);
    return diagnostics.sorted().stream()
        .filter(found -> !List.of("too-short-to-mill", "unknown-density").contains(found.code()))
        .toList();
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> found = findings(body);
    assertEquals(codes, found.stream().map(Diagnostic::code).toList(), found.toString());
  }
}
