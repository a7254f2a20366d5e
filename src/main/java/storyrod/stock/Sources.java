package storyrod.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.OnHandEntry;
import storyrod.description.Price;
import storyrod.description.SheetSize;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.layout.LayoutPlan;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Piece;

/**
 * What the parts of one stock can be sawn from: what is on hand, and what can be bought. A piece on
 * hand counts next to nothing unless it has a price, so buying less always comes first.
 */
final class Sources {
  /** What a bought piece counts; one on hand without a price counts 1. */
  private static final long BOUGHT = 1_000_000;

  private final Piece piece;
  private final StockEntry stock;
  private final Optional<SheetSize> bought;
  private final List<OnHandEntry> onHand;

  Sources(Piece piece, StockEntry stock) {
    this.piece = piece;
    this.stock = stock;
    this.bought = stock.sheet().or(() -> stock.figures().board());
    this.onHand =
        piece.description().onHand().stream()
            .filter(each -> each.stock().value().equals(stock.name()))
            .toList();
  }

  boolean isEmpty() {
    return bought.isEmpty() && onHand.isEmpty();
  }

  /** The size of a piece where it is bought. */
  Optional<SheetSize> bought() {
    return bought;
  }

  /** The pieces on hand first, in the order of the description; then what can be bought. */
  List<Stock> stock() {
    List<Stock> all = new ArrayList<>();
    for (OnHandEntry each : onHand) {
      all.add(
          new Stock(
              each.name(),
              each.length(),
              each.width(),
              each.count(),
              cost(each),
              Trim.NONE,
              each.defects().stream().map(Sources::area).toList()));
    }
    bought.ifPresent(
        size ->
            all.add(
                new Stock(
                    stock.name(),
                    size.length(),
                    size.width(),
                    Stock.UNLIMITED,
                    onHand.isEmpty() ? 1 : BOUGHT,
                    trim(),
                    List.of())));
    return all;
  }

  /** The edges of sheets are trimmed; those of boards are jointed later, with their allowance. */
  private Trim trim() {
    boolean isSheet = stock.kind() == StockKind.SHEET;
    return isSheet ? Trim.all(piece.description().shop().edgeTrim()) : Trim.NONE;
  }

  private static Area area(OnHandEntry.Defect defect) {
    return new Area(defect.x().from(), defect.y().from(), defect.x().length(), defect.y().length());
  }

  private long cost(OnHandEntry each) {
    if (bought.isEmpty()) {
      return squareCentimetres(each);
    }
    return each.price()
        .flatMap(price -> costOfBought().map(whole -> ratio(price, whole)))
        .orElse(1L);
  }

  private static long ratio(Rational price, Rational whole) {
    return Math.max(1, Math.round(BOUGHT * price.dividedBy(whole).toDouble()));
  }

  private static long squareCentimetres(OnHandEntry each) {
    return Math.max(1, Math.round(each.length().toMm() * each.width().toMm() / 100));
  }

  Least least() {
    return onHand.isEmpty() ? Least.PIECES : Least.COST;
  }

  /** The entry of a piece on hand, or nothing for one that is bought. */
  Optional<OnHandEntry> onHand(int source) {
    return source < onHand.size() ? Optional.of(onHand.get(source)) : Optional.empty();
  }

  Length length(int source) {
    return onHand(source).map(OnHandEntry::length).orElseGet(() -> bought.orElseThrow().length());
  }

  Length width(int source) {
    return onHand(source).map(OnHandEntry::width).orElseGet(() -> bought.orElseThrow().width());
  }

  /** The fewest pieces that have to be bought, given the least that all layouts can cost. */
  int fewestBought(LayoutPlan plan) {
    if (onHand.isEmpty()) {
      return Math.toIntExact(plan.lowerBound());
    }
    if (bought.isEmpty()) {
      return 0;
    }
    long free = 0;
    for (OnHandEntry each : onHand) {
      free += cost(each) * each.count();
    }
    return Math.toIntExact(Math.max(0, Math.ceilDiv(plan.lowerBound() - free, BOUGHT)));
  }

  /** What one bought piece costs, where its price is given and there is one to buy. */
  Optional<Rational> costOfBought() {
    return bought.isEmpty() ? Optional.empty() : stock.price().map(this::costOfBought);
  }

  private Rational costOfBought(Price price) {
    return switch (price.per()) {
      case SHEET -> price.amount();
      case BOARD_FOOT -> price.amount().times(boardFeet());
    };
  }

  /** The board feet of one bought board. */
  Rational boardFeet() {
    SheetSize size = bought.orElseThrow();
    Length thickness = stock.boughtAs().orElse(stock.thickness().value());
    return BoardFeet.of(size.length(), size.width(), thickness);
  }
}
