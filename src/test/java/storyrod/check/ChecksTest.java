package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/** Each check finds a piece that is just wrong and leaves alone one that is just right. */
class ChecksTest {
  private static final String CASE =
      """
      parts:
        left-side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 400, grain: z}
        right-side: {stock: ply18, x: 582 to 600, y: 0 to 300, z: 0 to 400, grain: z}
        bottom: {stock: ply18, x: left-side.right to right-side.left, y: 0 to 300, z: 100 to 118, grain: x}
      """;
  private static final String DADOS =
      """
      joints:
        - dado: {end: bottom.left, into: left-side, depth: 6, glue: yes}
        - dado: {end: bottom.right, into: right-side, depth: 6, glue: yes}
      """;

  @Test
  void aSoundPieceHasNoFindings() {
    assertCodes(List.of(), CASE + DADOS);
  }

  @Test
  void aTenthOfAMillimetreOfOverlapIsFoundWithItsDepth() {
    String moved = CASE.replace("x: left-side.right to", "x: left-side.right - 0.1 to");
    List<Diagnostic> found = findings(moved);
    Diagnostic overlap =
        found.stream().filter(d -> d.code().equals("parts-overlap")).findFirst().orElseThrow();
    assertTrue(overlap.message().contains("0.1 mm on x"), overlap.message());
    assertTrue(overlap.isError());
  }

  /** 0.1 x 300 x 18 mm = 540 mm³ = 0.5 cm³, worked by hand. */
  @Test
  void theOverlapsVolumeIsTold() {
    String moved = CASE.replace("x: left-side.right to", "x: left-side.right - 0.1 to");
    assertTrue(findings(moved).stream().anyMatch(d -> d.message().contains("0.5 cm³")));
  }

  @Test
  void aPartInItsSlotIsNoOverlap() {
    assertTrue(
        findings(CASE + DADOS).stream().noneMatch(d -> d.code().equals("parts-overlap")));
  }

  @Test
  void aPartThatNothingHoldsIsFound() {
    String oneDado = DADOS.lines().limit(2).reduce("", (a, b) -> a + b + "\n");
    assertCodes(List.of("loose-part"), CASE + oneDado);
    assertTrue(findings(CASE + oneDado).getFirst().message().contains("right-side"));
  }

  /** A third to a half of 18 mm is 6 to 9 mm (common practice). */
  @Test
  void aDadoDeeperThanHalfTheThicknessIsAWarning() {
    assertCodes(List.of(), CASE + DADOS.replace("depth: 6", "depth: 9"));
    assertCodes(
        List.of("dado-depth", "dado-depth"), CASE + DADOS.replace("depth: 6", "depth: 9.1"));
    assertCodes(
        List.of("dado-depth", "dado-depth"), CASE + DADOS.replace("depth: 6", "depth: 3.5"));
  }

  /** A 40 mm screw through 18 mm bites 22 mm; 1/8 in (3.175 mm) must remain (common practice). */
  @Test
  void aScrewsPointNearTheFarFaceIsAWarning() {
    assertCodes(List.of(), CASE + rail("26") + SCREWED);
    assertCodes(List.of("screw-length"), CASE + rail("25") + SCREWED);
  }

  private static final String SCREWED =
      DADOS + "  - screws: {through: bottom.bottom, into: rail, count: 2, screw: screw}\n";

  private static String rail(String height) {
    return "  rail: {stock: ash, x: 100 to 300, y: 0 to 20, z: 118 to 118 + " + height + ", grain: x}\n";
  }

  @Test
  void aSolidPartWiderThanThePlanerIsAdvice() {
    String shop = "shop: {planer-width: 330}\n";
    assertCodes(List.of(), shop + wide("330"));
    assertCodes(List.of("too-wide-for-planer"), shop + wide("331"));
  }

  private static String wide(String width) {
    return "parts:\n  top: {stock: ash, x: 0 to 600, y: 0 to " + width + ", z: 0 to 20, grain: x}\n";
  }

  private static final String DRAWER =
      CASE
          + """
          assemblies:
            drawer:
              parts:
                left: {stock: ply18, x: 18 + GAP to 36 + GAP, y: 0 to 280, z: 130 to 230, grain: y}
                right: {stock: ply18, x: 564 - GAP to 582 - GAP, y: 0 to 280, z: 130 to 230, grain: y}
                front: {stock: ply18, x: left.right to right.left, y: 0 to 18, z: 130 to 230, grain: x}
              joints:
                - butt: {end: front.left, to: left, glue: yes}
                - butt: {end: front.right, to: right, glue: yes}
          hardware:
            - {item: slide, count: 1, parts: [drawer.left, drawer.right, left-side, right-side]}
          """;

  /** 13 mm a side is the common clearance of a side-mounted slide (common practice). */
  @Test
  void aDrawerWithoutRoomForItsSlidesIsAnError() {
    String body = DRAWER + DADOS;
    assertCodes(List.of(), body.replace("GAP", "13"));
    assertCodes(List.of(), body.replace("GAP", "13.5"));
    assertCodes(List.of("slide-clearance", "slide-clearance"), body.replace("GAP", "14"));
    assertCodes(List.of("slide-clearance", "slide-clearance"), body.replace("GAP", "12"));
  }

  @Test
  void aStockWithoutADensityIsAdvice() {
    String odd =
        "  plank: {stock: odd, x: 0 to 500, y: 0 to 90, z: 0 to 30, grain: x}\n";
    List<Diagnostic> found = findings("parts:\n" + odd);
    assertEquals(List.of("unknown-density"), found.stream().map(Diagnostic::code).toList());
    assertTrue(found.getFirst().message().contains("moonwood"));
  }

  @Test
  void aFinishThatNobodyTriedIsAWarning() {
    String finish = "finish: {product: varnish, coats: 2, dry-hours: 12, sand-to: 180";
    assertCodes(List.of("finish-untried"), finish + "}\n" + CASE + DADOS);
    assertCodes(List.of(), finish + ", tried-on: plywood}\n" + CASE + DADOS);
  }

  private static List<Diagnostic> findings(String body) {
    Diagnostics diagnostics = new Diagnostics();
    Checks.run(Pieces.of(body), diagnostics);
    return diagnostics.sorted();
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> found = findings(body);
    assertEquals(codes, found.stream().map(Diagnostic::code).toList(), found.toString());
  }
}
