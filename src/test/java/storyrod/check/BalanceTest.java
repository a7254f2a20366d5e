package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.check.Balance.Load;

/**
 * A dresser worked by hand: carcase 28 kg 240 mm behind the line of its feet, four drawers of 3 kg
 * 230 mm behind it that come 320 mm forward, and 60 lb (27.2155 kg, the child of the standard for
 * clothing storage, 16 CFR 1261, from memory) 330 mm before it.
 */
class BalanceTest {
  private static final Load CASE = new Load(28, 240);
  private static final Load DRAWER = new Load(3, 230);
  private static final Load CHILD = new Load(27.2155, -330);

  private static List<Load> withOpen(int open) {
    List<Load> loads = new ArrayList<>(List.of(CASE));
    for (int i = 0; i < 4; i++) {
      loads.add(i < open ? DRAWER.forward(320) : DRAWER);
    }
    return loads;
  }

  @Test
  void closedItStands() {
    assertEquals(9480, Balance.of(withOpen(0)).restoring(), 1e-9);
    assertEquals(Double.POSITIVE_INFINITY, Balance.of(withOpen(0)).ratio());
  }

  @Test
  void withAllDrawersOpenItStands() {
    assertEquals(6720, Balance.of(withOpen(4)).restoring(), 1e-9);
    assertEquals(1080, Balance.of(withOpen(4)).overturning(), 1e-9);
    assertEquals(6.222, Balance.of(withOpen(4)).ratio(), 5e-4);
  }

  @Test
  void aChildOnOneDrawerTipsIt() {
    assertEquals(8790, Balance.of(withOpen(1), CHILD).restoring(), 1e-9);
    assertEquals(9251, Balance.of(withOpen(1), CHILD).overturning(), 0.5);
    assertEquals(0.950, Balance.of(withOpen(1), CHILD).ratio(), 5e-4);
    assertEquals(0.668, Balance.of(withOpen(4), CHILD).ratio(), 5e-4);
  }

  @Test
  void ballastAtTheBackHoldsIt() {
    Balance tips = Balance.of(withOpen(1), CHILD);
    assertEquals(1.048, tips.ballast(1, 440), 5e-4);
    assertEquals(5.253, tips.ballast(1.2, 440), 5e-4);
  }

  /** A bookcase of 60 kg, 150 mm behind the line, pulled at 56 in. */
  @Test
  void aPullAtTheTopTipsABookcase() {
    assertEquals(62.05, Balance.of(List.of(new Load(60, 150))).pullAt(1422.4), 5e-3);
  }
}
