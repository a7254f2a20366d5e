package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Dimension;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** What the drawings of rails, legs and stiles say; the sizes are worked by hand. */
class TenonDrawingTest {
  static Piece piece(String project) {
    return WindowBench.piece(Path.of("src/test/resources/projects", project, "project.yaml"));
  }

  private static Drawing drawing(String project, String part) {
    Piece piece = piece(project);
    Mark mark = piece.mark(piece.part(part).mark());
    return PartDrawing.draw(mark, piece, WindowBench.PART_AREA);
  }

  private static List<String> dimensions(Drawing drawing) {
    return Clean.dimensions(drawing).stream().map(Dimension::text).sorted().toList();
  }

  /** An apron 4 wide loses 1/2 above and 1/4 below: its tenon is 3 1/4 wide. */
  @Test
  void twoEqualTenonsHaveOneNoteAndTheShouldersTheirDistance() {
    Drawing apron = drawing("side-table", "left-end.apron");
    assertTrue(
        Clean.notes(apron).contains("2× 1/4 × 3 1/4 × 3/4 tenons for C"), Clean.notes(apron));
    assertEquals(
        List.of("1/4", "1/4", "1/4", "13", "14 1/2", "3 1/4", "3/4", "3/4", "4"),
        dimensions(apron));
  }

  /**
   * 1/8 reveal and 1/4 off the cheek: the mortise begins 3/8 from the leg's face. Both mortises lie
   * in line along the leg, so their place and length on it, 1/2 and 3 1/4, stand there once.
   */
  @Test
  void aMortiseIsPlacedFromTwoEdgesAndItsNoteGivesTheDepth() {
    Drawing leg = drawing("side-table", "left-end.front-leg");
    assertTrue(
        Clean.notes(leg).contains("1/4 × 3 1/4 mortise for A, 13/16 deep"), Clean.notes(leg));
    assertTrue(
        Clean.notes(leg).contains("1/4 × 3 1/4 mortise for D, 13/16 deep"), Clean.notes(leg));
    assertEquals(
        List.of("1 1/2", "1 1/2", "1/2", "1/4", "1/4", "23 1/4", "3 1/4", "3/8", "3/8"),
        dimensions(leg));
  }

  @Test
  void aSharedGrooveIsDrawnOnceAndNamesAllThatGoesIn() {
    Drawing stile = drawing("panel-door", "left-stile");
    assertEquals(1, Clean.notes(stile).split("groove", -1).length - 1);
    assertTrue(Clean.notes(stile).contains("groove for B, C and D, 3/8 deep"), Clean.notes(stile));
  }

  /** The sides differ, so that their marks do; one tongue hides the other in the view. */
  @Test
  void equalTonguesIntoUnlikePartsShareANoteAndLeaveRoomForTheOthers() {
    Piece piece =
        Pieces.of(
            """
            parts:
              left: {stock: ash, x: 0 to 20, y: 0 to 200, z: 0 to 90, grain: y}
              right: {stock: ash, x: 150 to 170, y: 0 to 200, z: 0 to 95, grain: y}
              lid: {stock: ash, x: left.right to right.left, y: 0 to 200, z: 60 to 80, grain: y}
            joints:
              - sliding-lid: {end: lid.left, into: left, depth: 6, opens: front, thickness: 6, setback: 0, from: bottom}
              - sliding-lid: {end: lid.right, into: right, depth: 6, opens: front, thickness: 6, setback: 0, from: bottom}
            cuts:
              - holes: {in: lid.top, at: {x: 85, y: 30}, diameter: 4, through: yes}
            """);
    Mark lid = piece.mark(piece.part("lid").mark());
    String notes = Clean.notes(PartDrawing.draw(lid, piece, WindowBench.PART_AREA));
    assertTrue(notes.contains("2× 6 × 6.8 lid tongues for A and B"), notes);
    assertTrue(notes.contains("Ø 4, through"), notes);
  }

  @Test
  void aTongueAsWideAsItsRailIsNotedByThicknessAndLength() {
    Drawing rail = drawing("panel-door", "top-rail");
    assertTrue(Clean.notes(rail).contains("2× 1/4 × 3/8 tongues for A"), Clean.notes(rail));
  }
}
