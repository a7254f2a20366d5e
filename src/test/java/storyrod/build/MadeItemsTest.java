package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.measure.Length;
import storyrod.piece.HardwareUse;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlan.RoughPart;
import storyrod.stock.StockPlanner;

/** Splines that are cut in the shop; all figures are worked by hand, in millimetres. */
class MadeItemsTest {
  /** Two corners of a frame 50 wide and 20 thick, their slots 8 deep. */
  private static final String FRAME =
      """
        tongue: {kind: other, title: Spline, from: ply6}
      parts:
        left: {stock: ash, x: 0 to 50, y: 0 to 20, z: 0 to 400, grain: z}
        right: {stock: ash, x: 250 to 300, y: 0 to 20, z: 0 to 400, grain: z}
        rail: {stock: ash, x: left.right to right.left, y: 0 to 20, z: 350 to 400, grain: x}
      joints:
        - mitre: {end: rail.left, into: left, spline: tongue, thickness: 6, depth: 8, glue: yes}
        - mitre: {end: rail.right, into: right, spline: tongue, thickness: 6, depth: 8, glue: yes}
      """;

  /** A case's corner of parts 20 thick and 60 wide. */
  private static final String CASE =
      """
        tongue: {kind: other, title: Spline, from: ply6}
      parts:
        side: {stock: ash, x: 0 to 20, y: 0 to 200, z: 0 to 60, grain: y}
        front: {stock: ash, x: side.right to 300, y: 0 to 20, z: 0 to 60, grain: x}
      joints:
        - mitre: {end: front.left, into: side, spline: tongue, thickness: 6, depth: 8, glue: yes}
      """;

  private static Part spline(Piece piece) {
    return piece.made("tongue").orElseThrow().pieces().getFirst();
  }

  private static void assertSize(String lengthWidthThickness, Part part) {
    assertEquals(
        lengthWidthThickness,
        part.finishedLength().toMm()
            + " "
            + part.finishedWidth().toMm()
            + " "
            + part.finishedThickness().toMm());
  }

  /** Along: 50 x root 2 = 70.7, 8 more at each end to fill the slots, 3 to stand out: 90. */
  @Test
  void splineOfAFrameFillsBothSlotsToTheirEnds() {
    assertSize("14.5 90.0 6.0", spline(Pieces.of(FRAME)));
  }

  /** As wide as the case is deep, and 3 to stand out. */
  @Test
  void splineOfACaseRunsFromEdgeToEdge() {
    assertSize("14.5 63.0 6.0", spline(Pieces.of(CASE)));
  }

  @Test
  void whatTheItemSaysGoesBefore() {
    assertSize(
        "15.0 80.0 6.0",
        spline(Pieces.of(FRAME.replace("from: ply6", "from: ply6, width: 15, length: 80"))));
  }

  @Test
  void theyHaveAMarkAndARoughSizeAndAreNotBought() {
    Piece piece = Pieces.of(FRAME);
    Mark last = piece.marks().getLast();
    assertEquals("C 2", last.mark() + " " + last.count());
    assertTrue(HardwareUse.of(piece).counts().isEmpty());
    assertEquals("C", HardwareUse.of(piece).mark("tongue"));
    StockPlan plan = StockPlanner.plan(piece, new Diagnostics()).orElseThrow();
    assertTrue(plan.hardware().isEmpty());
    RoughPart rough = plan.rough().getLast();
    assertEquals("C 2", rough.mark() + " " + rough.count());
    assertEquals(1, plan.layouts().size());
    assertEquals("ply6", plan.layouts().getFirst().stock().name());
  }

  /** Of solid wood each is 25 longer and 6 wider in the rough: 2 x 39.5 x 96 x 25 mm. */
  @Test
  void theirWoodIsCountedWithTheBoards() {
    String solid =
        FRAME
            .replace("from: ply6", "from: ash")
            .replace("thickness: 6", "thickness: 20")
            .replace("y: 0 to 20", "y: 0 to 30")
            .replace("stock: ash", "stock: odd");
    RoughPart rough =
        StockPlanner.plan(Pieces.of(solid), new Diagnostics()).orElseThrow().rough().getLast();
    assertEquals(
        new RoughPart("C", 2, Length.micrometres(39_500), Length.mm(96), Length.mm(25)), rough);
  }

  /** They are cut before the first mitre is glued, and go in with it. */
  @Test
  void theyAreCutBeforeTheirJointsClose() {
    List<Step> steps = Planner.plan(Pieces.of(FRAME), new Diagnostics()).orElseThrow().steps();
    int cut = number(steps, Verb.SIZE, "tongue#1");
    int glued =
        steps.stream()
            .filter(step -> !step.hardware().isEmpty())
            .findFirst()
            .orElseThrow()
            .number();
    assertEquals(cut, number(steps, Verb.SIZE, "tongue#2"));
    assertTrue(cut < glued, cut + " " + glued);
    assertTrue(steps.get(cut - 1).cautions().contains("small-pieces"));
    assertEquals(Verb.FIT, steps.get(glued - 1).verb());
  }

  private static int number(List<Step> steps, Verb verb, String target) {
    return steps.stream()
        .filter(step -> step.verb() == verb && step.targets().contains(target))
        .findFirst()
        .orElseThrow()
        .number();
  }
}
