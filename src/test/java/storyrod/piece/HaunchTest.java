package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Haunched tenons and what takes them in; all figures are worked by hand. */
class HaunchTest {
  /** A rail of 20 x 100 mm at the upper end of a leg of 50 x 30 mm; the tenon is 7 thick. */
  private static final String FRAME =
      """
      parts:
        leg: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: ash, x: leg.right to 350, y: 5 to 25, z: 300 to 400, grain: x}
      """;

  /** A stile and a rail with a panel of 6 mm, 10 mm deep in grooves of both. */
  private static final String DOOR =
      """
      parts:
        stile: {stock: ash, x: 0 to 60, y: 0 to 20, z: 0 to 400, grain: z}
        rail: {stock: ash, x: stile.right to 350, y: 0 to 20, z: 340 to 400, grain: x}
        panel: {stock: ply6, x: stile.right to 350, y: 7 to 13, z: 50 to rail.bottom, grain: z}
      joints:
        - tenon: {end: rail.left, into: stile, depth: 40, thickness: 6, shoulder: 10, haunch: top, haunch-depth: 10, haunch-width: 20}
        - groove: {end: panel.left, into: stile, depth: 10}
        - groove: {end: panel.top, into: rail, depth: 10}
      """;

  private static String haunched(String keys) {
    return FRAME
        + "joints:\n  - tenon: {end: rail.left, into: leg, thickness: 7, depth: 25, "
        + keys
        + "}\n";
  }

  private static Range mm(String from, String to) {
    return new Range(Length.parse(from + " mm"), Length.parse(to + " mm"));
  }

  private static Cut.Tenon tenon(Piece piece) {
    return piece.part("rail").cuts(Cut.Tenon.class).getFirst();
  }

  private static Haunch haunch(Piece piece) {
    return tenon(piece).haunch().orElseThrow();
  }

  private static List<String> terms(Piece piece, String part) {
    return piece.part(part).cuts().stream().map(Cut::term).toList();
  }

  /** 100 less a shoulder of 4 is 96; a third of it, 32, is the haunch: 368 to 400; 7 deep. */
  @Test
  void unsaidItIsAThirdOfTheWidthAndAsDeepAsTheTenonIsThick() {
    Piece piece = Pieces.of(haunched("shoulder: 4, haunch: top"));
    assertEquals(mm("304", "368"), tenon(piece).tenon().z());
    assertEquals(mm("368", "400"), haunch(piece).box().z());
    assertEquals(mm("43", "50"), haunch(piece).box().x());
    assertEquals(mm("11.5", "18.5"), haunch(piece).box().y());
  }

  @Test
  void itsSocketLiesBesideTheMortiseAndRunsOutAtTheEnd() {
    Piece piece = Pieces.of(haunched("haunch: top, haunch-width: 30, haunch-depth: 9"));
    assertEquals(List.of("mortise", "haunch socket"), terms(piece, "leg"));
    Cut.Trench mortise = (Cut.Trench) piece.part("leg").cuts().getFirst();
    Cut.Trench socket = (Cut.Trench) piece.part("leg").cuts().getLast();
    assertEquals(mm("306", "370"), mortise.removed().z());
    assertEquals(mm("370", "400"), socket.removed().z());
    assertEquals(mortise.removed().y(), socket.removed().y());
    assertEquals(Face.RIGHT, socket.from());
    assertEquals(Length.mm(9), socket.depth());
    assertTrue(socket.isFor("rail"));
  }

  /**
   * Tenon 25 x 7 x 64, haunch 9 x 7 x 30: rail 300 x 20 x 100 + 11,200 + 1,890 = 613,090 mm³.
   * Mortise 26.5 x 7 x 64: leg 50 x 30 x 400 - 11,872 - 1,890 = 586,238.
   */
  @Test
  void solidsAreWhatTheHandWorksOut() {
    Piece piece = Pieces.of(haunched("haunch: top, haunch-width: 30, haunch-depth: 9"));
    assertEquals(613_090, piece.part("rail").solid().volumeMm3(), 0.01);
    assertEquals(586_238, piece.part("leg").solid().volumeMm3(), 0.01);
    assertEquals(0, piece.part("rail").solid().sharedVolumeMm3(piece.part("leg").solid()), 0.001);
  }

  /** A through tenon 50 long keeps its haunch of 9; at the bottom the leg stands 300 past it. */
  @Test
  void itMayStayAtEitherEdgeAndBesideAThroughTenon() {
    Piece low = Pieces.of(haunched("haunch: bottom, haunch-width: 30, haunch-depth: 9"));
    assertEquals(mm("300", "330"), haunch(low).box().z());
    assertEquals(mm("330", "394"), tenon(low).tenon().z());
    Piece through =
        Pieces.of(
            haunched("haunch: top, haunch-width: 30, haunch-depth: 9")
                .replace("depth: 25,", "through: yes,"));
    assertEquals(600_000 + 50 * 7 * 64 + 1_890, through.part("rail").solid().volumeMm3(), 0.01);
    assertEquals(600_000 - 50 * 7 * 64 - 1_890, through.part("leg").solid().volumeMm3(), 0.01);
  }

  /**
   * The groove, 400 x 6 x 10 deep, holds the haunch. Stile 60 x 20 x 400 less the groove, 24,000,
   * and what the mortise, 41.5 deep from 350 to 380, takes beyond it, 31.5 x 6 x 30 = 5,670. Rail
   * 290 x 20 x 60 with the tenon, 40 x 6 x 30, and the haunch, 10 x 6 x 20, less its own groove,
   * 290 x 6 x 10 between the shoulders; the shoulder below is as deep as the groove.
   */
  @Test
  void aGrooveThatHoldsItIsItsSocket() {
    Piece piece = Pieces.of(DOOR);
    assertEquals(List.of("mortise", "groove"), terms(piece, "stile"));
    Cut.Trench groove = (Cut.Trench) piece.part("stile").cuts().getLast();
    assertTrue(groove.isFor("rail") && groove.isFor("panel"));
    assertEquals(480_000 - 24_000 - 5_670, piece.part("stile").solid().volumeMm3(), 0.01);
    assertEquals(348_000 + 7_200 + 1_200 - 17_400, piece.part("rail").solid().volumeMm3(), 0.01);
  }

  @Test
  void aSocketDeeperThanTheGrooveIsCutAsWell() {
    Piece piece = Pieces.of(DOOR.replace("haunch-depth: 10", "haunch-depth: 12"));
    assertEquals(List.of("mortise", "haunch socket", "groove"), terms(piece, "stile"));
    assertEquals(
        480_000 - 24_000 - 5_670 - 2 * 6 * 20, piece.part("stile").solid().volumeMm3(), 0.01);
  }

  @Test
  void railsWithOtherHaunchesHaveOtherMarks() {
    String two =
        FRAME
            + """
              far-leg: {stock: odd, x: 0 to 50, y: 200 to 230, z: 0 to 400, grain: z}
              far-rail: {stock: ash, x: far-leg.right to 350, y: 205 to 225, z: 300 to 400, grain: x}
            joints:
              - tenon: {end: rail.left, into: leg, depth: 25, thickness: 7, haunch: top, haunch-depth: 8}
              - tenon: {end: far-rail.left, into: far-leg, depth: 25, thickness: 7, haunch: top, haunch-depth: 8}
            """;
    Piece alike = Pieces.of(two);
    assertEquals(alike.part("rail").mark(), alike.part("far-rail").mark());
    Piece other =
        Pieces.of(
            two.replace(
                "far-leg, depth: 25, thickness: 7, haunch: top, haunch-depth: 8",
                "far-leg, depth: 25, thickness: 7, haunch: top, haunch-depth: 9"));
    assertNotEquals(other.part("rail").mark(), other.part("far-rail").mark());
  }

  @Test
  void faultsAreTold() {
    assertFault(haunched("haunch-depth: 9"));
    assertFault(haunched("haunch-width: 9"));
    assertFault(haunched("haunch: front"));
    assertFault(haunched("haunch: left"));
    assertFault(haunched("haunch: top, top-shoulder: 9"));
    assertFault(haunched("haunch: top, haunch-depth: 25"));
    assertFault(haunched("haunch: top, haunch-width: 94"));
    assertFault(haunched("haunch: top").replace("z: 300 to 400", "z: 310 to 410"));
    Pieces.of(haunched("haunch: bottom, top-shoulder: 9"));
    Pieces.of(haunched("haunch: top, haunch-depth: 24.9"));
    Pieces.of(haunched("haunch: top, haunch-width: 93.9"));
  }

  private static void assertFault(String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(
        List.of("tenon-haunch"), faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
