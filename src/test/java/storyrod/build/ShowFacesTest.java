package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Face;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

class ShowFacesTest {
  /** A case 400 mm wide with a top on it, its back set in, and a board before the bay. */
  private static Piece piece(int boardTo) {
    return Pieces.of(
        """
        parts:
          left: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 400, grain: z}
          right: {stock: ply18, x: 382 to 400, y: 0 to 300, z: 0 to 400, grain: z}
          bottom: {stock: ply18, x: 18 to 382, y: 0 to 300, z: 60 to 78, grain: x}
          top: {stock: ply18, x: 0 to 400, y: 0 to 300, z: 400 to 418, grain: x}
          back: {stock: ply18, x: 18 to 382, y: 270 to 288, z: 78 to 400, grain: x}
          board: {stock: ply18, x: 18 to %d, y: -18 to 0, z: 60 to 400, grain: z}
        joints:
          - dado: {end: bottom.left, into: left, depth: 6, glue: yes}
          - dado: {end: bottom.right, into: right, depth: 6, glue: yes}
        """
            .formatted(boardTo));
  }

  private static Optional<Face> of(Piece piece, String part) {
    return new ShowFaces(piece).of(piece.part(part));
  }

  @Test
  void openBaysShowTheUpperFaceOfABottomAndTheFrontOfABack() {
    Piece open = piece(200);
    assertEquals(Optional.of(Face.TOP), of(open, "bottom"));
    assertEquals(Optional.of(Face.FRONT), of(open, "back"));
  }

  /** Nobody sees them through a sliver. */
  @Test
  void behindABoardTheOutsideIsAllThatIsSeen() {
    Piece closed = piece(350);
    assertEquals(Optional.of(Face.BOTTOM), of(closed, "bottom"));
    assertEquals(Optional.of(Face.BACK), of(closed, "back"));
  }

  /** Eyes are above a bottom: a rail in front of it, 30 mm higher, does not hide it. */
  @Test
  void lowRailDoesNotHideTheBottomBehindIt() {
    String rail =
        CUPBOARD.replace(
            "assemblies:",
            "  rail: {stock: ply18, x: 18 to 382, y: -18 to 0, z: 60 to 108, grain: x}\nassemblies:");
    assertEquals(
        Optional.of(Face.TOP),
        of(
            Pieces.of(
                rail.replace(
                    "z: 60 to 400, grain: z}\njoints", "z: 108 to 400, grain: z}\njoints")),
            "bottom"));
  }

  /** A case behind a door that opens. */
  private static final String CUPBOARD =
      """
      parts:
        left: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 400, grain: z}
        right: {stock: ply18, x: 382 to 400, y: 0 to 300, z: 0 to 400, grain: z}
        bottom: {stock: ply18, x: 18 to 382, y: 0 to 300, z: 60 to 78, grain: x}
        top: {stock: ply18, x: 0 to 400, y: 0 to 300, z: 400 to 418, grain: x}
        back: {stock: ply18, x: 18 to 382, y: 270 to 288, z: 78 to 400, grain: x}
      assemblies:
        door:
          parts:
            slab: {stock: ply18, x: 0 to 400, y: -18 to 0, z: 60 to 400, grain: z}
      joints:
        - dado: {end: bottom.left, into: left, depth: 6, glue: yes}
        - dado: {end: bottom.right, into: right, depth: 6, glue: yes}
      hardware:
        - {item: slide, parts: [door.slab, left]}
      """;

  /** Its inside is what one sees when the door opens. */
  @Test
  void bottomAndBackBehindADoorLookInside() {
    Piece cupboard = Pieces.of(CUPBOARD);
    assertEquals(Optional.of(Face.TOP), of(cupboard, "bottom"));
    assertEquals(Optional.of(Face.FRONT), of(cupboard, "back"));
    assertEquals(Optional.of(Face.FRONT), of(cupboard, "door.slab"));
  }

  /** A partition has the sides before it; once the door opens, one sees it all the same. */
  @Test
  void partitionIsSeenInTheBays() {
    String divided =
        CUPBOARD.replace(
            "assemblies:",
            "  partition: {stock: ply18, x: 191 to 209, y: 0 to 270, z: 78 to 400, grain: z}\n"
                + "assemblies:");
    assertEquals(Optional.empty(), of(Pieces.of(divided), "partition"));
    assertEquals(true, looksBothWays(divided));
    assertEquals(false, looksBothWays(divided.substring(0, divided.indexOf("hardware:"))));
  }

  private static boolean looksBothWays(String divided) {
    Piece piece = Pieces.of(divided);
    return new ShowFaces(piece).looksBothWays(piece.part("partition"));
  }

  /** Boards stand before a quarter of both its faces: the upper one is seen all the same. */
  @Test
  void faceThatIsPartlyCoveredIsSeen() {
    Piece stand =
        Pieces.of(
            """
            parts:
              back: {stock: ply18, x: 0 to 400, y: 340 to 400, z: 300 to 318, grain: x}
              box: {stock: ply18, x: 0 to 400, y: 341 to 359, z: 318 to 500, grain: x}
              shelf: {stock: ply18, x: 0 to 400, y: 341 to 380, z: 540 to 558, grain: x}
              rail: {stock: ply18, x: 0 to 400, y: 341 to 359, z: 200 to 300, grain: x}
            """);
    assertEquals(Optional.of(Face.TOP), of(stand, "back"));
  }

  /** Boards stand before two thirds of the upper face, and nothing before the lower one. */
  @Test
  void anOpenFaceIsSeenBeforeOneOfWhichAStripShows() {
    Piece stand =
        Pieces.of(
            """
            parts:
              board: {stock: ply18, x: 0 to 400, y: 340 to 400, z: 300 to 318, grain: x}
              box: {stock: ply18, x: 0 to 400, y: 341 to 359, z: 318 to 500, grain: x}
              shelf: {stock: ply18, x: 0 to 400, y: 341 to 380, z: 540 to 558, grain: x}
            """);
    assertEquals(Optional.of(Face.BOTTOM), of(stand, "board"));
  }

  /** A stretcher under the top: only its lower face looks into the bay. */
  @Test
  void stretcherUnderATopLooksDown() {
    Piece stretched =
        Pieces.of(
            CUPBOARD.replace(
                "assemblies:",
                "  stretcher: {stock: ply18, x: 18 to 382, y: 0 to 80, z: 382 to 400, grain: x}\n"
                    + "assemblies:"));
    assertEquals(Optional.of(Face.BOTTOM), of(stretched, "stretcher"));
  }
}
