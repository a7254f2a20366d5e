package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import storyrod.build.SandedFaces;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** What of a face the picture of sanding tones. */
class SandedAreaTest {
  private static final Piece BOX =
      Pieces.of(
          """
          parts:
            left: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 120, grain: y}
            right: {stock: ply18, x: 382 to 400, y: 0 to 300, z: 0 to 120, grain: y}
            front: {stock: ply18, x: 18 to 382, y: 0 to 18, z: 0 to 120, grain: x}
            bottom: {stock: ply6, x: 18 to 382, y: 18 to 300, z: 10 to 16, grain: x}
          joints:
            - butt: {end: front.left, to: left, glue: yes}
            - butt: {end: front.right, to: right}
            - groove: {end: bottom.left, into: left, depth: 6}
            - groove: {end: bottom.right, into: right, depth: 6}
          """);

  private static final Piece TABLE = AllProjects.named("dining-table").piece();

  private static Geometry area(Piece piece, String name, Face face) {
    FlatPart flat = FlatPart.of(piece.part(name));
    FlatPart seen =
        flat.turned(face).axis() == Axis.Y ? flat : FlatPart.showing(piece.part(name), face);
    return SandedArea.of(piece, seen, seen.turned(face));
  }

  /** The front is glued against the left side, not against the right; grooves are 6 wide. */
  @Test
  void whereAPartIsGluedOnIsLeft() {
    assertEquals(300 * (120 - 6) - 18 * (120 - 6), area(BOX, "left", Face.RIGHT).getArea(), 0.1);
    assertEquals(300 * (120 - 6), area(BOX, "right", Face.LEFT).getArea(), 0.1);
  }

  /** Each leg has an apron on two faces, of which both are tapered from the apron down. */
  @Test
  void bothTapersOfASquareLegAreSandedAndItsJointsLeft() {
    Part leg = TABLE.part("frame.left-end.front-leg");
    List<Face> faces = new SandedFaces(TABLE).of(leg);
    assertEquals(List.of(Face.RIGHT, Face.BACK), faces);
    assertFalse(SandedFaces.areBoth(faces));
    for (Face face : faces) {
      Geometry area = area(TABLE, leg.name(), face);
      double foot = leg.finishedLength().toMm() / 2;
      double wide = leg.finishedWidth().toMm();
      boolean footIsLeft = area.contains(point(foot / 2, wide / 2));
      assertTrue(footIsLeft || area.contains(point(1.5 * foot, wide / 2)), face.word());
      double head = footIsLeft ? 2 * foot - 60 : 60;
      assertFalse(area.contains(point(head, wide / 2)), face.word());
    }
  }

  private static Geometry point(double x, double y) {
    return new GeometryFactory().createPoint(new Coordinate(x, y));
  }
}
