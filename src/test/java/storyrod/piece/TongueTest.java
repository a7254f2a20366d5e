package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Tongues in grooves, shared with a panel; all figures are worked by hand. */
class TongueTest {
  /** A stile of 60 x 20 mm, a rail of 60 x 20 mm on top of a panel 6 mm thick. */
  private static final String FRAME =
      """
      parts:
        stile: {stock: ash, x: 0 to 60, y: 0 to 20, z: 0 to 400, grain: z}
        rail: {stock: ash, x: stile.right to 300, y: 0 to 20, z: 340 to 400, grain: x}
        panel: {stock: ply6, x: stile.right to 300, y: 7 to 13, z: 0 to rail.bottom, grain: z}
      joints:
        - tongue: {end: rail.left, into: stile, depth: 10, thickness: 6, glue: yes}
        - groove: {end: panel.left, into: stile, depth: 8}
        - groove: {end: panel.top, into: rail, depth: 10}
      """;

  /** 240 + 10 mm long, 7 mm off both cheeks over the whole width of 60. */
  @Test
  void tongueLengthensTheRailAndIsAsWideAsIt() {
    Piece piece = Pieces.of(FRAME);
    assertEquals(Length.mm(250), piece.part("rail").finishedLength());
    Cut.Tenon tongue =
        piece.part("rail").cuts().stream()
            .filter(Cut.Tenon.class::isInstance)
            .map(Cut.Tenon.class::cast)
            .findFirst()
            .orElseThrow();
    assertEquals(new Range(Length.mm(7), Length.mm(13)), tongue.tenon().y());
    assertEquals(Length.mm(60), tongue.tenon().size(Axis.Z));
    assertEquals(2, tongue.boxes().size());
  }

  /** One groove right along the stile, as deep as the deeper of the two asked for. */
  @Test
  void tongueAndPanelShareOneGroove() {
    Piece piece = Pieces.of(FRAME);
    assertEquals(1, piece.part("stile").cuts().size());
    Cut.Trench groove = (Cut.Trench) piece.part("stile").cuts().getFirst();
    assertEquals("groove", groove.term());
    assertEquals(Length.mm(10), groove.depth());
    assertEquals(Length.mm(400), groove.removed().size(Axis.Z));
    assertTrue(groove.isFor("rail"));
    assertTrue(groove.isFor("panel"));
  }

  /** 60 x 20 x 400 less one groove of 10 x 6 x 400 = 456,000 mm³. */
  @Test
  void theSharedGrooveIsTakenAwayOnce() {
    assertEquals(456_000, Pieces.of(FRAME).part("stile").solid().volumeMm3(), 0.01);
  }

  @Test
  void groovesOfOtherWidthsStayTwoCuts() {
    assertEquals(
        2, Pieces.of(FRAME.replace("thickness: 6", "thickness: 7")).part("stile").cuts().size());
  }

  @Test
  void aTongueAtTheEdgeOfItsStileIsAnError() {
    String atEdge = FRAME.replace("thickness: 6,", "thickness: 6, setback: 0.1, from: front,");
    assertEquals(List.of(), Pieces.faultsOf(atEdge));
    String thin = atEdge.replace("y: 0 to 20, z: 0 to 400", "y: 0.1 to 20.1, z: 0 to 400");
    assertEquals("slot-at-edge", Pieces.faultsOf(thin).getFirst().code());
  }

  @Test
  void aPanelWithRoomEndsShortOfTheBottomOfItsGroove() {
    Piece piece =
        Pieces.of(FRAME.replace("into: stile, depth: 8}", "into: stile, depth: 8, room: 3}"));
    assertEquals(
        Length.mm(240).plus(Length.mm(8)).minus(Length.mm(3)),
        piece.part("panel").box().size(Axis.X));
    Cut.Trench groove = (Cut.Trench) piece.part("stile").cuts().getFirst();
    assertEquals(Length.mm(10), groove.depth());
  }

  /**
   * A sheet that slips in without glue is half a millimetre short at each end, 1 mm in all (common
   * practice); glued, or of solid wood, it goes down to the bottom of the groove.
   */
  @Test
  void onlyALooseSheetHasRoomOfItself() {
    Length whole = Length.mm(240).plus(Length.mm(8));
    Length half = Length.micrometres(500);
    assertEquals(whole.minus(half), Pieces.of(FRAME).part("panel").box().size(Axis.X));
    String glued = FRAME.replace("into: stile, depth: 8}", "into: stile, depth: 8, glue: yes}");
    assertEquals(whole, Pieces.of(glued).part("panel").box().size(Axis.X));
    String tongued =
        FRAME
            .replace(
                "rail: {stock: ash, x: stile.right to 300, y: 0 to 20",
                "rail: {stock: ply18, x: stile.right to 300, y: 1 to 19")
            .replace("thickness: 6, glue: yes", "thickness: 6");
    assertEquals(Length.mm(250), Pieces.of(FRAME).part("rail").box().size(Axis.X));
    assertEquals(Length.mm(250).minus(half), Pieces.of(tongued).part("rail").box().size(Axis.X));
  }

  @Test
  void aRoomAsDeepAsTheGrooveIsAnError() {
    String body = FRAME.replace("into: stile, depth: 8}", "into: stile, depth: 8, room: 8}");
    assertEquals("joint-room", Pieces.faultsOf(body).getFirst().code());
  }
}
