package storyrod.stock;

import java.util.List;
import java.util.Optional;
import storyrod.description.Price;
import storyrod.description.PriceUnit;
import storyrod.description.StockEntry;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.BoardNeed;
import storyrod.stock.StockPlan.Missing;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** What the boards of one solid stock come to when its parts have been laid out on them. */
final class BoardUse {
  private final SheetPlan plan;
  private final Rational net;
  private final int allowance;
  private final Sources sources;

  BoardUse(Piece piece, SheetPlan plan, Rational net) {
    this.plan = plan;
    this.net = net;
    this.allowance = piece.description().shop().wastePercent();
    this.sources = new Sources(piece, plan.stock());
  }

  BoardNeed need() {
    Rational lacking =
        plan.missing().stream().map(this::boardFeet).reduce(Rational.ZERO, Rational::plus);
    if (sources.bought().isEmpty()) {
      return estimated(plan.stock(), net, lacking, allowance).with(boardFeet(onHand()));
    }
    Rational bought = sources.boardFeet().times(Rational.of(plan.bought(), 1));
    BoardNeed rest = estimated(plan.stock(), net, lacking, allowance);
    return new BoardNeed(
        plan.stock(),
        net,
        boardFeet(onHand()),
        bought.plus(rest.toBuy()),
        wastePercent(lacking),
        Optional.of(plan.bought()),
        plan.cost().flatMap(cost -> rest.cost().map(cost::plus)));
  }

  private Rational boardFeet(Missing missing) {
    return BoardFeet.of(missing.length(), missing.width(), rough(plan.stock()));
  }

  /** What the boards have more than their blanks, in per cent of the blanks. */
  private int wastePercent(Rational lacking) {
    Rational boards = boardFeet(plan.sheets());
    Rational blanks = net.minus(lacking);
    return blanks.signum() == 0
        ? 0
        : (int)
            Math.round(
                boards.minus(blanks).times(Rational.of(100, 1)).dividedBy(blanks).toDouble());
  }

  private List<SheetLayout> onHand() {
    return plan.sheets().stream().filter(board -> board.onHand().isPresent()).toList();
  }

  private Rational boardFeet(List<SheetLayout> boards) {
    return boards.stream().map(this::boardFeet).reduce(Rational.ZERO, Rational::plus);
  }

  private Rational boardFeet(SheetLayout board) {
    return BoardFeet.of(board.length(), board.width(), rough(plan.stock()));
  }

  private static Length rough(StockEntry stock) {
    return stock.boughtAs().orElse(stock.thickness().value());
  }

  /** What has to be bought of boards whose sizes nobody knows yet. */
  static BoardNeed estimated(StockEntry stock, Rational net, Rational lacking, int wastePercent) {
    Rational toBuy = BoardFeet.toBuy(lacking, wastePercent);
    Optional<Rational> cost =
        stock
            .price()
            .filter(price -> price.per() == PriceUnit.BOARD_FOOT)
            .map(Price::amount)
            .map(toBuy::times);
    return new BoardNeed(stock, net, Rational.ZERO, toBuy, wastePercent, Optional.empty(), cost);
  }
}
