package storyrod.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.measure.Rational;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.stock.SupplyNeed.Abrasive;
import storyrod.stock.SupplyNeed.Abrasive.Packs;
import storyrod.stock.SupplyNeed.Use;

class SupplyNeedsTest {
  private static final String PARTS =
      """
      parts:
        side: {stock: ash, x: 0 to 20, y: 0 to 300, z: 0 to 600, grain: z}
        shelf: {stock: ash, x: 20 to 520, y: 0 to 300, z: 200 to 220, grain: x}
      joints:
        - dado: {end: shelf.left, into: side, depth: 8 mm, glue: yes}
      """;

  private static SupplyPlan plan(String more) {
    Piece piece = Pieces.of(PARTS + more);
    return SupplyNeeds.of(piece);
  }

  @Test
  void jointFacesAndOpenFacesAreAsWorkedByHand() {
    // In the dado lie the shelf's end, 300 x 20, and 8 mm of its upper and of its lower face.
    double joint = 300 * 20 + 2 * 300 * 8;
    double side = 2 * (20 * 300 + 20 * 600 + 300 * 600) + 2 * 300 * 8 - 2 * 20 * 8;
    double shelf = 2 * (508 * 300 + 508 * 20 + 300 * 20);
    Surfaces surfaces = plan("").surfaces();
    assertEquals(joint, surfaces.gluedMm2(), 0.01);
    assertEquals(side + shelf - 2 * joint, surfaces.openMm2(), 0.01);
  }

  @Test
  void aJointWithoutGlueTakesNone() {
    Piece piece = Pieces.of(PARTS.replace(", glue: yes", ", glue: no"));
    assertEquals(0, Surfaces.of(piece).gluedMm2());
  }

  @Test
  void theSeamsOfAPanelAreGlued() {
    // Two seams of 500 x 20 between three staves.
    Piece piece = Pieces.of(PARTS.replace("grain: x}", "grain: x, staves: 3}"));
    double joint = 300 * 20 + 2 * 300 * 8;
    assertEquals(joint + 2 * 508 * 20, Surfaces.of(piece).gluedMm2(), 0.01);
  }

  @Test
  void whatTheLabelSaysGivesCansAndCost() {
    // 0.7077 m² in the open, twice, at 10 m² a litre: 0.14 l, so two cans of 0.1 l.
    SupplyPlan plan =
        plan(
            "finish: {product: varnish, coats: 2, coverage: 10 m2/l, sold-in: 100 ml, price: 9}\n");
    SupplyNeed need = plan.needs().getFirst();
    assertEquals(Use.FINISH, need.use());
    Rational litres = plan.surfaces().openSquareMetres().times(Rational.of(2, 10));
    assertEquals(litres, need.litres().orElseThrow().least());
    assertEquals(litres, need.litres().orElseThrow().most());
    assertEquals(Optional.of(2), need.cans());
    assertEquals(Optional.of(Rational.of(18, 1)), need.cost());
  }

  @Test
  void aKindAloneGivesARange() {
    SupplyNeed need = plan("glue: {product: yellow glue, kind: pva}\n").needs().getFirst();
    Rational area = need.squareMetres();
    assertEquals(area.dividedBy(Rational.of(6, 1)), need.litres().orElseThrow().least());
    assertEquals(area.dividedBy(Rational.of(4, 1)), need.litres().orElseThrow().most());
    assertEquals(Optional.empty(), need.cans());
  }

  @Test
  void aProductOfNoKnownKindGivesNoAmount() {
    SupplyNeed need = plan("finish: {product: limewash}\n").needs().getFirst();
    assertEquals(Optional.empty(), need.litres());
    assertEquals(Optional.empty(), need.cost());
  }

  @Test
  void woodIsSandedThroughTheGritsUpToTheLast() {
    assertEquals(
        List.of(new Abrasive(120, 1), new Abrasive(150, 1), new Abrasive(180, 1)),
        plan("finish: {product: varnish, sand-to: 180}\n").abrasives());
    assertEquals(
        List.of(new Abrasive(80, 1)), plan("finish: {product: paint, sand-to: 80}\n").abrasives());
    assertEquals(List.of(), plan("").abrasives());
  }

  @Test
  void sandpaperIsBoughtInPacksOfEachGrit() {
    SupplyPlan plan =
        plan("finish: {product: varnish, sand-to: 180, sandpaper: {pack: 5, price: 4.50}}\n");
    assertEquals(
        List.of(Optional.of(1), Optional.of(1), Optional.of(1)),
        plan.abrasives().stream().map(each -> each.packs().map(Packs::count)).toList());
    assertEquals(Optional.of(Rational.of(27, 2)), plan.sandpaperCost());
    assertEquals(Optional.empty(), plan("finish: {product: varnish}\n").sandpaperCost());
  }
}
