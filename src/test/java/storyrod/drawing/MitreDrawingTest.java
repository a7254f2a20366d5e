package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Note;
import storyrod.piece.Mark;
import storyrod.piece.MitreTest;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** What the drawings of mitred parts say; the sizes are worked by hand. */
class MitreDrawingTest {
  private static Drawing drawing(String body, String part) {
    Piece piece = Pieces.of(body);
    Mark mark = piece.mark(piece.part(part).mark());
    return PartDrawing.draw(mark, piece, WindowBench.PART_AREA);
  }

  private static List<String> dimensions(Drawing drawing) {
    return Clean.dimensions(drawing).stream().map(Dimension::text).sorted().toList();
  }

  /** Overall 300 x 50 x 20; a spline of 6 in the middle of 20 lies 7 from the face. */
  @Test
  void frameShowsWhereTheSlotLiesInTheThickness() {
    Drawing drawing = drawing(MitreTest.splined(MitreTest.FRAME), "rail");
    assertEquals(List.of("20", "300", "50", "6", "7"), dimensions(drawing));
    String notes = Clean.notes(drawing);
    assertTrue(notes.contains("end mitred 45° from square"), notes);
    assertTrue(notes.contains("6 spline slot, 8 deep, square to the mitre"), notes);
  }

  /**
   * Of 4 in the middle of 20 at 1:2, 2 mm on paper: shown larger, its sizes there and only there.
   */
  @Test
  void aNarrowSlotIsShownInADetail() {
    String narrow = MitreTest.splined(MitreTest.FRAME).replace("thickness: 6", "thickness: 4");
    Drawing drawing = drawing(narrow, "rail");
    assertEquals(List.of("20", "300", "4", "50", "8"), dimensions(drawing));
    List<Dimension> enlarged =
        Clean.details(drawing).flatMap(each -> Clean.dimensions(each.elements()).stream()).toList();
    assertEquals(List.of("4", "8"), enlarged.stream().map(Dimension::text).sorted().toList());
    assertEquals(List.of(), Clean.faults(drawing));
  }

  /**
   * Overall 300 x 60 x 20, the long side as long and so not told again. The middle of the slot lies
   * a third of 20 x root 2 = 9.43 along the mitre, its nearer corner 3 before it: 6.43/root 2 = 4.5
   * from the inner face.
   */
  @Test
  void caseShowsWhereTheSlotLiesOnTheMitre() {
    Drawing drawing = drawing(MitreTest.splined(MitreTest.CASE), "front");
    assertEquals(List.of("20", "300", "60", "≈ 4.5"), dimensions(drawing));
    assertTrue(
        Clean.notes(drawing).contains("6 spline slot, 8 deep, square to the mitre"),
        Clean.notes(drawing));
  }

  /** 9.43 less half of 6 is 6.43 along the mitre: how far a fence is set from its inner edge. */
  @Test
  void caseTellsHowFarAlongTheMitreTheSlotLies() {
    String notes = Clean.notes(drawing(MitreTest.splined(MitreTest.CASE), "front"));
    assertTrue(notes.contains("square to the mitre (≈ 6.4 from its inner edge)"), notes);
    String frame = Clean.notes(drawing(MitreTest.splined(MitreTest.FRAME), "rail"));
    assertFalse(frame.contains("inner edge"), frame);
  }

  /**
   * A case's slot of 4 at 1:10 is a dot: shown larger, with its place there and only there. Its
   * middle 9.43 along the mitre, its nearer corner 2 before it: 7.43/root 2 = 5.25.
   */
  @Test
  void aSlotInAWideCaseIsShownInADetail() {
    String wide =
        MitreTest.splined(MitreTest.CASE)
            .replace("thickness: 6, depth: 8", "thickness: 4, depth: 6")
            .replace("x: side.right to 300", "x: side.right to 900")
            .replace("z: 0 to 60", "z: 0 to 300");
    Drawing drawing = drawing(wide, "front");
    assertEquals(List.of("20", "300", "900", "≈ 5.3"), dimensions(drawing));
    Group detail = Clean.details(drawing).findFirst().orElseThrow();
    assertEquals(
        List.of("≈ 5.3"),
        Clean.dimensions(detail.elements()).stream().map(Dimension::text).toList());
    assertTrue(4 * Clean.detailFactor(detail) >= Details.WISH_MM, detail.name());
    assertEquals(List.of(), Clean.faults(drawing));
  }

  /** Parts with a slot in a case's mitre are made again from their drawings, at both ends. */
  @Test
  void slotsInACaseAreMadeAgain() {
    String splined = MitreTest.splined(MitreTest.CASE);
    for (String part : List.of("front", "side")) {
      assertEquals(List.of(), remade(splined, part, UnaryOperator.identity()), part);
    }
  }

  /** What the note says of the slot is needed: wider or deeper by 2, or another angle, is found. */
  @Test
  void aSlotInACaseIsMadeAgainFromWhatIsSaid() {
    String splined = MitreTest.splined(MitreTest.CASE);
    for (String wrong : List.of("8 spline slot, 8 deep", "6 spline slot, 10 deep")) {
      List<String> faults =
          remade(splined, "front", text -> text.replace("6 spline slot, 8 deep", wrong));
      assertFalse(faults.isEmpty(), wrong);
    }
  }

  private static List<String> remade(String body, String part, UnaryOperator<String> notes) {
    Piece piece = Pieces.of(body);
    Mark mark = piece.mark(piece.part(part).mark());
    Drawing drawing = PartDrawing.draw(mark, piece, WindowBench.PART_AREA);
    Drawing changed =
        new Drawing(
            drawing.name(),
            drawing.widthMm(),
            drawing.heightMm(),
            drawing.scale(),
            changed(drawing.elements(), notes));
    return Rebuilding.faults(mark.shown(), changed, piece.description().format());
  }

  private static List<Element> changed(List<Element> elements, UnaryOperator<String> notes) {
    return elements.stream().map(each -> changed(each, notes)).toList();
  }

  private static Element changed(Element element, UnaryOperator<String> notes) {
    return switch (element) {
      case Group it -> new Group(it.id(), it.mark(), it.name(), changed(it.elements(), notes));
      case Note it -> {
        String text = notes.apply(String.join(" ", it.lines()));
        yield new Note(it.tip(), it.elbow(), it.text(), it.anchor(), List.of(text));
      }
      default -> element;
    };
  }
}
