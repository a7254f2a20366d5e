package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Pieces;

class PreFinishedTest {
  /** Two shelves 60 mm above each other in a case with a back: no hand goes in between. */
  private static String pigeonholes(int between, String back) {
    return """
    parts:
      left: {stock: ply18, x: 0 to 18, y: 0 to 280, z: 0 to 600, grain: z}
      right: {stock: ply18, x: 300 to 318, y: 0 to 280, z: 0 to 600, grain: z}
      floor: {stock: ply18, x: 18 to 300, y: 0 to 280, z: 200 to 218, grain: x}
      shelf: {stock: ply18, x: 18 to 300, y: 0 to 280, z: 218 + %d to 236 + %d, grain: x}
      %s
    joints:
      - dado: {end: floor.left, into: left, depth: 6, glue: yes}
      - dado: {end: floor.right, into: right, depth: 6, glue: yes}
      - dado: {end: shelf.left, into: left, depth: 6, glue: yes}
      - dado: {end: shelf.right, into: right, depth: 6, glue: yes}
      %s
    finish: {product: varnish, coats: 2, dry-hours: 24, tried-on: ash}
    """
        .formatted(between, between, back, back.isEmpty() ? "" : SCREWS);
  }

  private static final String BACK =
      "back: {stock: ply6, x: 0 to 318, y: 280 to 286, z: 0 to 600, grain: z}";

  private static final String SCREWS =
      "- screws: {through: back.back, into: floor, count: 3, screw: screw}";

  @Test
  void facesInAGapThatTakesNoHandAreFinishedEarly() {
    PreFinished early = new PreFinished(Pieces.of(pigeonholes(60, BACK)));
    assertEquals(List.of("left", "right", "floor", "shelf", "back"), early.parts());
    assertEquals(List.of(Face.RIGHT), early.faces("left"));
    assertEquals(List.of(Face.FRONT), early.faces("back"));
    assertEquals(List.of(Face.TOP), early.faces("floor"));
    assertEquals(List.of(Face.BOTTOM), early.faces("shelf"));
  }

  @Test
  void aBrushReachesWhereAHandGoesInOrBothSidesAreOpen() {
    assertEquals(List.of(), new PreFinished(Pieces.of(pigeonholes(100, BACK))).parts());
    assertEquals(List.of(), new PreFinished(Pieces.of(pigeonholes(60, ""))).parts());
  }

  @Test
  void whatIsGluedOnTheseFacesIsMasked() {
    PreFinished early = new PreFinished(Pieces.of(pigeonholes(60, BACK)));
    assertEquals(
        List.of("floor", "shelf"), early.masked("left").stream().map(Joint::first).toList());
    assertEquals(List.of(), early.masked("floor"));
  }

  @Test
  void nothingIsFinishedEarlyWithoutAFinish() {
    String bare = pigeonholes(60, BACK).replaceAll("(?m)^finish.*\\n", "");
    assertEquals(List.of(), new PreFinished(Pieces.of(bare)).parts());
  }
}
