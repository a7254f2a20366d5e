package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Network.Lag;
import storyrod.build.OneMaker.Run;
import storyrod.build.Work.Touches;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.stock.GluedPanel;

/** Panels and packs of layers take clamps by their length, as assemblies do by their joints. */
class PanelClampsTest {
  private static Piece panels(int length, String keys, int clamps) {
    String part = ": {stock: ash, x: 0 to %d, y: 0 to 400, z: %d to %d, grain: x, %s}\n";
    return Pieces.of(
        "parts:\n  one"
            + part.formatted(length, 0, 20, keys)
            + "  two"
            + part.formatted(length, 100, 120, keys)
            + "shop: {clamps: "
            + clamps
            + ", extra-length: 20, planer-width: 500}\n");
  }

  private static Step glueUp(Piece piece) {
    return Planner.plan(piece, new Diagnostics()).orElseThrow().steps().stream()
        .filter(PanelClamps::isGlueUp)
        .findFirst()
        .orElseThrow();
  }

  private static int count(Piece piece) {
    return new PanelClamps(piece).count(new GluedPanel(piece, List.of(piece.part("one"))));
  }

  /** Two near the ends of 1100 mm, 998 mm apart: four spaces of at most 305 mm between them. */
  @Test
  void clampsGoByTheLength() {
    Piece piece = panels(1080, "staves: 4", 20);
    assertEquals(5, count(piece));
    Piece layers = panels(1080, "layers: 2", 20);
    assertEquals(1 + 10, count(layers));
    Piece small = panels(60, "staves: 2", 20);
    assertEquals(2, count(small));
  }

  /** Both are 200 mm, 220 in the rough: in one they are 440 mm, with two spaces of at most 305. */
  @Test
  void partsTooShortForTheMachinesAreClampedAsOne() {
    Piece piece = panels(200, "staves: 4", 20);
    GluedPanel one = PanelClamps.panels(piece, glueUp(piece)).getFirst();
    assertEquals(List.of("one", "two"), one.names());
    assertEquals(3, new PanelClamps(piece).count(one));
    assertEquals(new GlueUp(3, 60, 1440), glueUp(piece).glueUp());
    assertEquals(1, GlueTurns.of(piece, glueUp(piece)).units());
    Piece enough = panels(400, "staves: 4", 20);
    assertEquals(2, PanelClamps.panels(enough, glueUp(enough)).size());
  }

  @Test
  void twoPanelsStandClampedAtOnceOnlyWhereTheClampsSuffice() {
    assertEquals(new GlueUp(10, 60, 1440), glueUp(panels(1080, "staves: 4", 10)).glueUp());
    assertEquals(1440, glueUp(panels(1080, "staves: 4", 10)).waitMinutes());
    assertEquals(new GlueUp(5, 120, 1440), glueUp(panels(1080, "staves: 4", 8)).glueUp());
    assertEquals(1500, glueUp(panels(1080, "staves: 4", 8)).waitMinutes());
  }

  private static Work glued(String part, int clamps, int clampMinutes) {
    GlueUp glue = new GlueUp(clamps, clampMinutes, 1440);
    return new Work(30, 1440, true, glue, new Touches(Set.of(part), false));
  }

  private static Run run(WorkDay day, Work... works) {
    int[] order = IntStream.range(0, works.length).toArray();
    return new OneMaker(day, 8, List.of(works), List.<Lag>of()).run(order);
  }

  /** A panel rests for a day, but its clamps are free after an hour. */
  @Test
  void clampsOfARestingPanelServeTheNext() {
    Run run = run(WorkDay.ROUND_THE_CLOCK, glued("top", 6, 60), glued("case", 4, 60));
    assertEquals(90, run.start()[1]);
    assertEquals(1, run.offBefore()[0]);
  }

  /** Those that are free first come off first, not those that were set first. */
  @Test
  void clampsThatAreFreeFirstComeOffFirst() {
    Run run =
        run(
            WorkDay.ROUND_THE_CLOCK,
            glued("top", 4, 400),
            glued("door", 4, 60),
            glued("case", 4, 60));
    assertEquals(120, run.start()[2]);
    assertEquals(-1, run.offBefore()[0]);
    assertEquals(2, run.offBefore()[1]);
  }

  @Test
  void wetPanelIsNotLeftForTheMorning() {
    Step step = glueUp(panels(1080, "staves: 4", 8));
    assertTrue(step.glueUp().isSpread());
    Work plain = new Work(450, 0, false, 0);
    Run run = run(WorkDay.ofHours(8), plain, Work.of(step));
    assertEquals(24 * 60, run.start()[1]);
  }
}
