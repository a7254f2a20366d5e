package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** Drawings of slanted parts: the dimensions and notes are there, the lines lean as they should. */
class SlantedDrawingTest {
  private static final Piece PIECE =
      Pieces.of(
          """
          parts:
            leg: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
            brace: {stock: ash, x: 100 to 500, y: 0 to 20, z: 0 to 60, grain: x}
            plain: {stock: ash, x: 100 to 500, y: 100 to 120, z: 0 to 60, grain: x}
            top: {stock: ply18, x: 0 to 600, y: 0 to 300, z: 400 to 418, grain: x}
            panel: {stock: ash, x: 300 to 320, y: 20 to 280, z: 200 to 400, grain: z, turn: {about: y, by: 10, at: {x: 320, z: 400}}}
          cuts:
            - taper: {end: leg.bottom, faces: [left, right], from: 280, off: 12}
            - mitre: {end: brace.left, by: 30, long: top}
            - mitre: {end: brace.right, by: 30, long: bottom}
            - bevel: {end: plain.left, by: 12 1/2, long: front}
            - chamfer: {in: plain, edges: [top-front, top-back], size: 3}
            - bevel: {end: panel.top, to: top.bottom}
          joints:
            - dado: {end: panel.top, into: top, depth: 6}
          """);

  private static Drawing of(String part) {
    return PartDrawing.draw(mark(part), PIECE, WindowBench.PART_AREA);
  }

  private static Mark mark(String part) {
    return PIECE.mark(PIECE.part(part).mark());
  }

  private static List<String> figures(Drawing drawing) {
    return Clean.dimensions(drawing).stream().map(Drawing.Dimension::text).toList();
  }

  private static String notes(Drawing drawing) {
    return String.join(" ", Painter.texts(drawing).stream().map(PlacedText::text).toList());
  }

  private static Stream<Line> lines(List<Element> elements) {
    return elements.stream()
        .flatMap(
            element ->
                element instanceof Group group
                    ? lines(group.elements())
                    : element instanceof Line line ? Stream.of(line) : Stream.empty());
  }

  @Test
  void nothingLiesOnATextOrOutsideThePaper() {
    for (Mark mark : PIECE.marks()) {
      Drawing drawing = PartDrawing.draw(mark, PIECE, WindowBench.PART_AREA);
      assertEquals(List.of(), Clean.faults(drawing), mark.title());
    }
  }

  /** From the top to the start 400 - 280; at the foot 50 - 2 x 12 are left. */
  @Test
  void taperShowsWhereItStartsAndWhatIsLeft() {
    List<String> figures = figures(of("leg"));
    assertTrue(figures.containsAll(List.of("400", "50", "30", "120", "26")), figures.toString());
  }

  /** Parallel ends: each edge is 400 - 60 tan 30° = 400 - 34.641 long. */
  @Test
  void mitredPartShowsTheLengthOfAnEdgeAndTheAngle() {
    Drawing brace = of("brace");
    assertEquals(1, figures(brace).stream().filter("≈ 365.4"::equals).count());
    assertTrue(notes(brace).contains("2× end mitred 30° from square"), notes(brace));
  }

  @Test
  void bevelAndChamferAreNoted() {
    String notes = notes(of("plain"));
    assertTrue(notes.contains("end bevelled 12.5° from square"), notes);
    assertTrue(notes.contains("3 chamfer, 45°"), notes);
  }

  @Test
  void leaningSlotIsNotedWithItsDepthAndLean() {
    String notes = notes(of("top"));
    assertTrue(notes.contains("6 deep"), notes);
    assertTrue(notes.contains("walls lean 10°"), notes);
  }

  /** The edges of mitred ends rise 60 over 60 tan 30°: 30° from upright on paper too. */
  @Test
  void mitredEndsLeanOnPaperAsTheyDoInWood() {
    List<Double> leans =
        lines(of("brace").elements())
            .filter(line -> line.role() == Role.VISIBLE && line.points().size() == 2)
            .map(line -> lean(line.points().getFirst(), line.points().getLast()))
            .filter(degrees -> degrees > 1 && degrees < 89)
            .toList();
    assertFalse(leans.isEmpty());
    leans.forEach(degrees -> assertEquals(30, degrees, 0.01));
  }

  /**
   * An end 20 x 200 with a bevel and a hollow over half its width: seen from there, its outline,
   * the line of the bevel and the two ends of the hollow, not the many facets of the arc.
   */
  @Test
  void bevelledAndHollowEndIsDrawnWithoutFacets() {
    Piece piece =
        Pieces.of(
            """
            parts:
              leg: {stock: ash, x: 0 to 20, y: 0 to 200, z: 0 to 300, grain: z, outline: [hollow: {edge: bottom, y: 50 to 150, rise: 40}]}
            cuts:
              - bevel: {end: leg.bottom, by: 10, long: left}
            """);
    FlatPart flat = FlatPart.of(piece.part("leg"));
    PlacedView end = new PlacedView(flat, storyrod.geometry.Face.BOTTOM, Ruler.unbroken(0.25), 0);
    SolidView shown = new SolidView(flat, storyrod.geometry.Face.BOTTOM);
    long strokes = lines(end.elements(shown)).count();
    assertTrue(strokes < 15, strokes + " lines");
  }

  private static double lean(At from, At to) {
    return StrictMath.toDegrees(
        StrictMath.atan2(Math.abs(to.x() - from.x()), Math.abs(to.y() - from.y())));
  }
}
