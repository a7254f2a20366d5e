package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Outlines, openings and roundovers, from the description to the part. */
class CurvedPartsTest {
  private static final String PANEL =
      "  panel: {stock: ash, x: 0 to 400, y: 0 to 20, z: 0 to 200, grain: x%s}\n";

  private static String panel(String outline, String cuts) {
    String shape = outline.isEmpty() ? "" : ", outline: [" + outline + "]";
    String all = cuts.isEmpty() ? "" : "cuts:\n  - " + cuts + "\n";
    return "parts:\n" + PANEL.formatted(shape) + all;
  }

  private static Contour outline(String outline) {
    return ((Cut.Shaped) Pieces.of(panel(outline, "")).part("panel").cuts().getFirst()).contour();
  }

  /** Areas worked by formula: a circular segment is r²/2 (a - sin a), a corner (1 - π/4) r². */
  @Test
  void shortFormsCutAwayWhatTheFormulasSay() {
    double segment = segment(300, 40);
    assertEquals(
        80_000 - segment,
        outline("hollow: {edge: bottom, x: 50 to 350, rise: 40}").areaMm2(),
        0.001);
    double crown = segment(400, 30);
    assertEquals(400 * 170 + crown, outline("crown: {edge: top, rise: 30}").areaMm2(), 0.001);
    double corner = (1 - Math.PI / 4) * 50 * 50;
    assertEquals(80_000 - 4 * corner, outline("round: {radius: 50}").areaMm2(), 0.01);
  }

  private static double segment(double chord, double rise) {
    double radius = chord * chord / (8 * rise) + rise / 2;
    double angle = 2 * StrictMath.asin(chord / 2 / radius);
    return radius * radius / 2 * (angle - StrictMath.sin(angle));
  }

  @Test
  void aPathSaysTheSameAsTheShortForm() {
    Contour path =
        outline(
            "path: {points: [{x: 0, z: 200}, {x: 0, z: 0}, {x: 50, z: 0},"
                + " {x: 350, z: 0, rise: -40}, {x: 400, z: 0}, {x: 400, z: 200}]}");
    Contour through =
        outline(
            "path: {points: [{x: 0, z: 0}, {x: 50, z: 0},"
                + " {x: 350, z: 0, through: {x: 200, z: 40}},"
                + " {x: 400, z: 0}, {x: 400, z: 200}, {x: 0, z: 200}]}");
    double area = outline("hollow: {edge: bottom, x: 50 to 350, rise: 40}").areaMm2();
    assertEquals(area, path.areaMm2(), 1e-3);
    assertEquals(area, through.areaMm2(), 1e-3);
  }

  @Test
  void aSlotIsAsLongAndWideAsItSays() {
    String cut = "slot: {in: panel, at: {x: 200, z: 100}, along: x, length: 100, width: 30}";
    Part part = Pieces.of(panel("", cut)).part("panel");
    Contour slot = ((Cut.Shaped) part.cuts().getFirst()).contour();
    assertEquals(new Range(Length.mm(150), Length.mm(250)), slot.extent(Axis.X));
    assertEquals(new Range(Length.mm(85), Length.mm(115)), slot.extent(Axis.Z));
    assertEquals(70 * 30 + Math.PI * 15 * 15, slot.areaMm2(), 1e-3);
    assertEquals(20 * (80_000 - slot.areaMm2()), part.solid().volumeMm3(), 200);
  }

  @Test
  void onlyTheInnerCornersOfANotchAreRounded() {
    String notch = "notch: {in: panel, x: 100 to 200, z: 150 to 200, radius: 10}";
    Part part = Pieces.of(panel("", notch)).part("panel");
    Contour contour = ((Cut.Shaped) part.cuts().getFirst()).contour();
    assertEquals(2, contour.arcs().size());
    assertEquals(100 * 50 - 2 * (1 - Math.PI / 4) * 100, contour.areaMm2(), 0.01);
  }

  @Test
  void cutsTakeTheRoundCornersFromACutout() {
    String cutout = "cutout: {in: panel, x: 100 to 200, z: 50 to 150, radius: 10}";
    Part part = Pieces.of(panel("", cutout)).part("panel");
    assertEquals(4, ((Cut.Shaped) part.cuts().getFirst()).contour().arcs().size());
  }

  @Test
  void anOutlineGoesOutWithAnEndThatAJointLengthens() {
    String body =
        """
        parts:
          side: {stock: ash, x: 0 to 20, y: 0 to 200, z: 0 to 400, grain: z}
          apron:
            stock: ash
            x: side.right to 400
            y: 20 to 40
            z: 100 to 200
            grain: x
            outline:
              - path:
                  points:
                    - {x: side.right, z: 100}
                    - {x: 400, z: 100, rise: -30}
                    - {x: 400, z: 200}
                    - {x: side.right, z: 200}
        joints:
          - dado: {end: apron.left, into: side, depth: 6, glue: yes}
        """;
    Piece piece = Pieces.of(body);
    Contour contour = ((Cut.Shaped) piece.part("apron").cuts().getFirst()).contour();
    assertEquals(Length.mm(14), contour.extent(Axis.X).from());
  }

  @Test
  void equalAndMirroredCurvesShareAMark() {
    String part =
        "  %s: {stock: ash, x: %d to %d, y: 0 to 20, z: 0 to 200, grain: x, outline: [%s]}\n";
    String body =
        "parts:\n"
            + part.formatted("one", 0, 400, "round: {corners: bottom-left, radius: 50}")
            + part.formatted("two", 500, 900, "round: {corners: bottom-right, radius: 50}")
            + part.formatted("other", 1000, 1400, "round: {corners: top-left, radius: 51}");
    Piece piece = Pieces.of(body);
    assertEquals(piece.part("one").mark(), piece.part("two").mark());
    assertTrue(!piece.part("one").mark().equals(piece.part("other").mark()));
  }

  @Test
  void aHollowThatIsNotInTheMiddleMakesAHandedPairOnADadoedPart() {
    String part =
        "  %s: {stock: ash, x: %d to %d, y: 0 to 20, z: 0 to 200, grain: x,"
            + " outline: [hollow: {edge: bottom, x: %d to %d, rise: 20}]}\n";
    String body =
        "parts:\n"
            + part.formatted("one", 0, 400, 50, 200)
            + part.formatted("two", 500, 900, 700, 850)
            + "cuts:\n"
            + "  - holes: {in: [one.front], at: {x: 30, z: 150}, diameter: 8, depth: 10}\n"
            + "  - holes: {in: [two.front], at: {x: 870, z: 150}, diameter: 8, depth: 10}\n";
    Mark mark = Pieces.of(body).marks().getFirst();
    assertEquals(1, mark.same());
    assertEquals(1, mark.mirrored());
  }

  @Test
  void aRoundoverAroundAFaceHasItsFourEdges() {
    Part part =
        Pieces.of(panel("", "roundover: {in: panel, around: front, radius: 6}")).part("panel");
    assertEquals(4, ((Cut.Roundover) part.cuts().getFirst()).edges().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hollow: {edge: front, rise: 20}|no edge of the outline",
        "hollow: {edge: bottom, z: 0 to 20, rise: 20}|the bottom edge of panel runs on x",
        "hollow: {edge: bottom, x: 50 to 450, rise: 20}|but panel only from 0 mm to 400 mm",
        "hollow: {edge: bottom, rise: 200}|cuts through panel, which is only 200 mm there",
        "hollow: {edge: bottom, x: 50 to 100, rise: 40}|more than half a circle",
        "round: {corners: front-left, radius: 10}|no corner of the outline",
        "round: {radius: 120}|a radius of 120 mm finds no room on the right edge",
        "'round: {radius: 40}, hollow: {edge: bottom, rise: 20}'|runs into another shape",
        "'round: {radius: 40}, crown: {edge: top, rise: 20}'|a corner of a crowned edge",
        "'crown: {edge: top, rise: 20}, crown: {edge: top, rise: 30}'|has its shape already",
        "'hollow: {edge: bottom, rise: 120}, hollow: {edge: top, rise: 120}'|crosses itself",
        "'path: {points: [{x: 0, z: 0}, {x: 400, z: 0}]}'|at least three points",
        "'path: {points: [{x: 0, z: 0}, {x: 400, z: 200}, {x: 400, z: 0}, {x: 0, z: 200}]}'|crosses itself at x = 200 mm, z = 100 mm",
        "'path: {points: [{x: 0, z: 0}, {x: 400, z: 0}, {x: 200, z: 201}]}'|leaves panel by 1 mm at its top",
        "'path: {points: [{x: 0, z: 0}, {x: 400, z: 0, rise: 0}, {x: 200, z: 200}]}'|this arc has no height",
        "'path: {points: [{x: 0, z: 0}, {x: 400, z: 0, through: {x: 200, z: 0}}, {x: 200, z: 200}]}'|a point of its own chord",
        "'path: {points: [{x: 0, z: 0}, {x: 0, z: 0}, {x: 200, z: 200}, {x: 400, z: 0}]}'|the one before it again",
        "'path: {points: [{x: 0, z: 0}, {x: 400}, {x: 200, z: 200}]}'|has no place on z",
        "'path: {points: [{x: 0, y: 3, z: 0}, {x: 400, z: 0}, {x: 200, z: 200}]}'|across the thickness of panel",
        "'path: {points: [{x: 0, z: 0}, {x: 400, z: 0}, {x: 200, z: 200}]}, round: {radius: 5}'|a path is the whole outline",
        "'path: {points: [{x: 0, z: 0}, {x: 300, z: 0}, {x: 0, z: 200}]}'|uses only 0 mm to 300 mm on x",
      })
  void everyMistakeInAnOutlineIsTold(String outline, String words) {
    String said = said(panel(outline.replace("}, ", "}, "), ""));
    assertTrue(said.contains(words), said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "slot: {in: panel, at: {x: 200, z: 100}, along: x, length: 30, width: 30}|is no slot",
        "slot: {in: panel, at: {x: 200, z: 100}, along: y, length: 90, width: 30}|goes through the thickness",
        "slot: {in: panel, at: {x: 200}, along: x, length: 90, width: 30}|needs its place on z",
        "slot: {in: panel, at: {x: 45, z: 100}, along: x, length: 90, width: 30}|this slot breaks out of panel",
        "slot: {in: panel, at: {x: 40, z: 100}, along: x, length: 90, width: 30}|the slot leaves panel by 5 mm",
        "cutout: {in: panel, x: 100 to 200, z: 50 to 90, radius: 21}|find no room in 40 mm",
        "'notch: {in: panel, points: [{x: 100, z: 50}, {x: 200, z: 50}, {x: 150, z: 90}]}'|not open at an edge",
        "'notch: {in: panel, points: [{x: 100, z: 0}, {x: 200, z: 0}, {x: 200, z: 200}, {x: 100, z: 200}]}'|cuts panel in two",
        "'notch: {in: panel, x: 0 to 20, points: [{x: 100, z: 50}, {x: 200, z: 50}, {x: 150, z: 90}]}'|either points or ranges",
        "'roundover: {in: panel, radius: 5}'|needs either edges or a face",
        "'roundover: {in: panel, edges: front-top, radius: 21}'|larger than the 20 mm of panel",
        "'roundover: {in: panel, edges: front-back, radius: 5}'|expected the two faces of an edge",
      })
  void everyMistakeInACurvedCutIsTold(String cut, String words) {
    String said = said(panel("", cut));
    assertTrue(said.contains(words), said);
  }

  private static String said(String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    return String.join("\n", faults.stream().map(Diagnostic::message).toList());
  }

  @Test
  void anOpeningThatBreaksThroughTheOutlineIsAnError() {
    String slot = "slot: {in: panel, at: {x: 200, z: 35}, along: x, length: 90, width: 30}";
    String said = said(panel("hollow: {edge: bottom, rise: 30}", slot));
    assertTrue(said.contains("this slot breaks out of panel"), said);
  }

  @Test
  void aJointOnAFaceThatIsCutAwayIsAnError() {
    String body =
        """
        parts:
          panel: {stock: ash, x: 0 to 400, y: 0 to 20, z: 0 to 200, grain: x, outline: [hollow: {edge: bottom, x: %s, rise: 60}]}
          foot: {stock: ash, x: 150 to 250, y: 0 to 100, z: 0 - 20 to 0, grain: x}
        joints:
          - butt: {end: panel.bottom, to: foot, glue: yes}
        """;
    String said = said(body.formatted("50 to 350"));
    assertTrue(said.contains("nothing is left of panel.bottom where the parts meet"), said);
    assertEquals("", said(body.formatted("200 to 350")));
  }
}
