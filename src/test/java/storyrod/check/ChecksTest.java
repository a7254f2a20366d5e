package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
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
    assertTrue(findings(CASE + DADOS).stream().noneMatch(d -> d.code().equals("parts-overlap")));
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

  @Test
  void aCheckThatFailsIsToldAsItsOwnBugAndTheOthersStillRun() {
    Check broken =
        new Check() {
          @Override
          public String code() {
            return "broken";
          }

          @Override
          public Explanation explanation() {
            return new Explanation("Fails.", "Ours.", "All.");
          }

          @Override
          public List<Diagnostic> findings(Piece piece) {
            throw new IllegalStateException("on purpose");
          }
        };
    Diagnostics diagnostics = new Diagnostics();
    Checks.run(List.of(broken, new LoosePart()), Pieces.of(CASE), diagnostics);
    List<String> codes = diagnostics.bySeverity().stream().map(Diagnostic::code).toList();
    assertEquals(List.of("check-failed", "loose-part", "loose-part"), codes);
    assertTrue(diagnostics.sorted().getFirst().message().contains("'broken' failed"));
  }

  private static final String SCREWED =
      DADOS + "  - screws: {through: bottom.bottom, into: rail, count: 2, screw: screw}\n";

  private static String rail(String height) {
    return "  rail: {stock: ash, x: 100 to 300, y: 0 to 20, z: 118 to 118 + "
        + height
        + ", grain: x}\n";
  }

  private static final String BOARD =
      "parts:\n  board: {stock: ash, x: 0 to 300, y: 0 to 100, z: 0 to 20, grain: x}\n";

  private static String holes(String... rows) {
    return "cuts:\n  - holes: {in: board.top, "
        + String.join("}\n  - holes: {in: board.top, ", rows)
        + "}\n";
  }

  /** 1/16 in (1.5875 mm) must remain before the edge: an 8 mm hole's centre 5.5875 mm from it. */
  @Test
  void aHoleNearTheEdgeIsAWarning() {
    String hole = "at: {x: 50, y: AT}, diameter: 8, depth: 10";
    assertCodes(List.of(), BOARD + holes(hole.replace("AT", "5.6")));
    assertCodes(List.of("hole-edge"), BOARD + holes(hole.replace("AT", "5.5")));
    Diagnostic over = findings(BOARD + holes(hole.replace("AT", "3"))).getFirst();
    assertTrue(over.message().contains("1 mm over the edge"), over.message());
  }

  /** Between two 8 mm holes 1/16 in of wood should remain: 9.5875 mm from centre to centre. */
  @Test
  void holesThatCrowdEachOtherAreAWarningAndThoseThatMeetAnError() {
    String row = "at: {x: 50, y: 50}, along: x, step: AT, count: 2, diameter: 8, depth: 10";
    assertCodes(List.of(), BOARD + holes(row.replace("AT", "9.6")));
    assertHoleEdge(false, BOARD + holes(row.replace("AT", "9.5")));
    assertHoleEdge(false, BOARD + holes(row.replace("AT", "8")));
    assertHoleEdge(true, BOARD + holes(row.replace("AT", "7.9")));
    String one = "at: {x: 50, y: 50}, diameter: 8, depth: 10";
    assertHoleEdge(true, BOARD + holes(one, "at: {x: 54, y: 56}, diameter: 8, depth: 10"));
    assertCodes(List.of(), BOARD + holes(one, "at: {x: 56, y: 58}, diameter: 8, depth: 10"));
  }

  @Test
  void aCounterboreAndHolesFromBothFacesThatDoNotMeetAreNoFault() {
    String wide = "at: {x: 50, y: 50}, diameter: 16, depth: 6";
    String narrow = "at: {x: 50, y: 50}, diameter: 8, through: yes";
    assertCodes(List.of(), BOARD + holes(wide, narrow));
    String below = "  - holes: {in: board.bottom, at: {x: 52, y: 50}, diameter: 8, depth: DEEP}\n";
    assertCodes(List.of(), BOARD + holes(wide) + below.replace("DEEP", "14"));
    assertHoleEdge(true, BOARD + holes(wide) + below.replace("DEEP", "14.1"));
  }

  /** The head of a 4 mm screw is 8 mm wide; the groove begins 4 mm from the screw's centre. */
  @Test
  void aCountersinkThatCutsIntoAGrooveIsAWarning() {
    String sunk =
        BOARD
            + "  rail: {stock: ply18, x: 0 to 300, y: 41 to 59, z: 0 - 50 to 0, grain: x}\n"
            + "  panel: {stock: ply6, x: 0 to 300, y: FROM to FROM + 6, z: 20 to 80, grain: x}\n"
            + "joints:\n"
            + "  - screws: {through: board.top, into: rail, count: 2, screw: screw}\n"
            + "  - groove: {end: panel.bottom, into: board, depth: 7, glue: yes}\n";
    assertCodes(List.of(), sunk.replace("FROM", "54"));
    assertHoleEdge(false, sunk.replace("FROM", "53.9"));
    assertCodes(
        List.of(), sunk.replace("FROM", "53.9").replace("count: 2", "count: 2, countersink: no"));
    assertHoleEdge(false, sunk.replace("FROM", "46.1"));
  }

  @Test
  void aHoleWhollyInsideASlotIsNoFault() {
    String notch = "  - notch: {in: board, y: 0 to WIDE, z: 10 to 20}\n";
    String hole = holes("at: {x: 50, y: 10}, diameter: 8, depth: 15");
    assertCodes(List.of(), BOARD + hole + notch.replace("WIDE", "14"));
    assertHoleEdge(false, BOARD + hole + notch.replace("WIDE", "13.9"));
    assertCodes(List.of(), BOARD + hole + notch.replace("WIDE", "6"));
  }

  private static void assertHoleEdge(boolean error, String body) {
    List<Diagnostic> found = findings(body);
    assertCodes(List.of("hole-edge"), body);
    assertEquals(error, found.getFirst().isError(), found.toString());
  }

  private static final String EDGED =
      """
      parts:
        edge: {stock: STOCK, x: 0 to 300, y: 0 - STOCK.thickness to 0, z: 0 to 40, grain: x}
        panel: {stock: ply18, x: 0 to 300, y: 0 to DEEP, z: 0 to 18, grain: x}
      joints:
        - brads: {through: edge.front, into: panel, count: 3, brad: BRAD, glue: yes}
      """;

  private static String edged(String stock, String brad) {
    return EDGED.replace("STOCK", stock).replace("BRAD", brad).replace("DEEP", "200");
  }

  /** A brad must bite 1/2 in = 12.7 mm, or as far as a thinner edge is thick (common practice). */
  @Test
  void aBradThatHardlyReachesIsAWarning() {
    assertCodes(List.of(), edged("ply18", "brad-30-7"));
    assertBradLength(false, edged("ply18", "brad-30-6"));
    assertCodes(List.of(), edged("ply6", "brad-12"));
    assertBradLength(false, edged("ply6", "brad-11-9"));
  }

  @Test
  void aBradThatEndsInTheFirstPartIsAnError() {
    assertBradLength(true, edged("ply18", "brad-12"));
  }

  /** A 25 mm brad through 6 mm reaches 19 mm. */
  @Test
  void aBradThatBreaksThroughIsAnError() {
    assertCodes(List.of(), edged("ply6", "brad").replace("0 to 200", "0 to 19.1"));
    assertBradLength(true, edged("ply6", "brad").replace("0 to 200", "0 to 19"));
  }

  private static void assertBradLength(boolean error, String body) {
    assertCodes(List.of("brad-length"), body);
    assertEquals(error, findings(body).getFirst().isError());
  }

  /** Screws at least 1 in (25.4 mm) apart, pocket screws 3/4 in (19.05 mm) (common practice). */
  @Test
  void crowdedScrewsAreAWarning() {
    String screws = CASE + rail("40") + SCREWED;
    assertCodes(List.of(), screws.replace("count: 2", "count: 7"));
    assertCodes(List.of("crowded-fasteners"), screws.replace("count: 2", "count: 8"));
  }

  @Test
  void crowdedPocketScrewsAreAWarning() {
    String frame =
        """
        parts:
          stile: {stock: ash, x: 0 to 60, y: 0 to 20, z: 0 to 400, grain: z}
          rail: {stock: ash, x: 60 to 300, y: 0 to 20, z: 0 to HIGH, grain: x}
        joints:
          - pocket-screws: {end: rail.left, into: stile, from: back, count: 2, screw: pocket}
        """;
    assertCodes(List.of(), frame.replace("HIGH", "38.1"));
    assertCodes(List.of("crowded-fasteners"), frame.replace("HIGH", "38"));
  }

  @Test
  void aSolidPartWiderThanThePlanerIsAdvice() {
    String shop = "shop: {planer-width: 330}\n";
    assertCodes(List.of(), shop + wide("330"));
    assertCodes(List.of("too-wide-for-planer"), shop + wide("331"));
  }

  private static String wide(String width) {
    return "parts:\n  top: {stock: ash, x: 0 to 600, y: 0 to "
        + width
        + ", z: 0 to 20, grain: x}\n";
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
  void aSlideLongerThanTheDrawersSideIsAnError() {
    String body = (DRAWER + DADOS).replace("GAP", "13").replace("item: slide", "item: long-slide");
    assertCodes(List.of(), body);
    String shallow = body.replace("y: 0 to 280, z: 130", "y: 0 to 279, z: 130");
    assertCodes(List.of("slide-length", "slide-length"), shallow);
    assertTrue(findings(shallow).getFirst().isError());
  }

  @Test
  void aStockWithoutADensityIsAdvice() {
    String odd = "  plank: {stock: odd, x: 0 to 500, y: 0 to 90, z: 0 to 30, grain: x}\n";
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

  /** What is found but for the rails of these pieces, which are too short for a planer. */
  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> found =
        findings(body).stream().filter(each -> !each.code().equals("too-short-to-mill")).toList();
    assertEquals(codes, found.stream().map(Diagnostic::code).toList(), found.toString());
  }
}
