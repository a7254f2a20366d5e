package storyrod.stock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.measure.Rational;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.HardwareNeed;

/** Adds up the hardware that joints use and that is mounted, with the screws it needs. */
final class HardwareNeeds {
  private final Map<String, Integer> counts = new LinkedHashMap<>();

  private HardwareNeeds() {}

  /** One row for each item in use, in the order of the description's items. */
  static List<HardwareNeed> of(Piece piece) {
    HardwareNeeds needs = new HardwareNeeds();
    piece.joints().stream()
        .flatMap(joint -> joint.fasteners().stream())
        .forEach(each -> needs.add(each.item(), each.count()));
    piece.description().hardware().forEach(needs::add);
    return piece.description().items().values().stream()
        .filter(item -> needs.counts.getOrDefault(item.name(), 0) > 0)
        .map(item -> need(item, needs.counts.get(item.name())))
        .toList();
  }

  private void add(HardwareEntry entry) {
    add(entry.item().value(), entry.count());
    int screws = Math.multiplyExact(entry.count(), entry.screwsEach());
    entry.screw().ifPresent(screw -> add(screw, screws));
  }

  private void add(String item, int count) {
    counts.merge(item, count, Math::addExact);
  }

  private static HardwareNeed need(ItemEntry item, int count) {
    int packs = Math.ceilDiv(count, item.pack());
    Optional<Rational> cost = item.price().map(price -> price.times(Rational.of(packs, 1)));
    return new HardwareNeed(item.name(), item.title(), count, packs, item.pack(), cost);
  }
}
