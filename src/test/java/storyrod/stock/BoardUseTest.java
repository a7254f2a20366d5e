package storyrod.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostics;
import storyrod.measure.Rational;
import storyrod.piece.Pieces;
import storyrod.stock.StockPlan.BoardNeed;

class BoardUseTest {
  /** Three rails of 900 x 100 x 20 mm; in the rough 925 x 106 x 25. */
  private static final String RAILS =
      """
      parts:
        one: {stock: ash, x: 0 to 900, y: 0 to 20, z: 0 to 100, grain: x}
        two: {stock: ash, x: 0 to 900, y: 0 to 20, z: 100 to 200, grain: x}
        three: {stock: ash, x: 0 to 900, y: 0 to 20, z: 200 to 300, grain: x}
      """;

  private static BoardNeed need(String more) {
    Diagnostics diagnostics = new Diagnostics();
    StockPlan plan = StockPlanner.plan(Pieces.of(RAILS + more), diagnostics).orElseThrow();
    assertFalse(diagnostics.hasErrors());
    return plan.boards().getFirst();
  }

  @Test
  void whatTheBoardsOnHandGiveIsNotBought() {
    // A board of 2000 x 110 x 25 mm gives two of them, end to end; one is left to buy, with 20 %.
    BoardNeed need = need("on-hand:\n  b: {stock: ash, length: 2000, width: 110}\n");
    double squareMm = 144 * 25.4 * 25.4; // 25 mm boards count as an inch
    assertEquals(2000 * 110 / squareMm, need.onHand().toDouble(), 1e-9);
    assertEquals(3 * 925 * 106 / squareMm, need.net().toDouble(), 1e-9);
    double lacking = 1.2 * 925 * 106 / squareMm;
    assertEquals(Math.ceil(10 * lacking) / 10, need.toBuy().toDouble(), 1e-9);
  }

  @Test
  void withoutBoardsOnHandNothingComesFromThem() {
    assertEquals(Rational.ZERO, need("").onHand());
    assertEquals(Optional.empty(), need("").boards());
  }
}
