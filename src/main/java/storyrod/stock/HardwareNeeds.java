package storyrod.stock;

import java.util.List;
import java.util.Optional;
import storyrod.description.ItemEntry;
import storyrod.measure.Rational;
import storyrod.piece.HardwareUse;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.HardwareNeed;

/** Adds up the hardware that joints use and that is mounted, with the screws it needs. */
final class HardwareNeeds {
  private HardwareNeeds() {}

  /** One row for each item in use, in the order of the description's items. */
  static List<HardwareNeed> of(Piece piece) {
    return HardwareUse.of(piece).counts().entrySet().stream()
        .map(use -> need(piece.item(use.getKey()).orElseThrow(), use.getValue()))
        .toList();
  }

  private static HardwareNeed need(ItemEntry item, int count) {
    int packs = Math.ceilDiv(count, item.pack());
    Optional<Rational> cost = item.price().map(price -> price.times(Rational.of(packs, 1)));
    return new HardwareNeed(item.name(), item.title(), count, packs, item.pack(), cost);
  }
}
