package storyrod.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.description.ShopEntry;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Rational;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.BoardNeed;
import storyrod.stock.StockPlan.RoughPart;
import storyrod.stock.StockPlan.SheetPlan;

/** The sizes to which parts are sawn before they are milled, and the boards that takes. */
final class RoughSizes {
  private final Piece piece;
  private final ShopEntry shop;

  RoughSizes(Piece piece) {
    this.piece = piece;
    this.shop = piece.description().shop();
  }

  List<RoughPart> parts() {
    return sawn().map(this::rough).toList();
  }

  /** The marks of all parts but those that are cut out of another part's blank. */
  private Stream<Mark> sawn() {
    return piece.marks().stream().filter(mark -> piece.keptAs(mark.shown().name()).isEmpty());
  }

  private RoughPart rough(Mark mark) {
    Part part = mark.shown();
    StockEntry stock = part.stock();
    return switch (stock.kind()) {
      case SHEET ->
          new RoughPart(
              mark.mark(),
              mark.count(),
              part.finishedLength(),
              piece.blankWidth(part),
              part.finishedThickness());
      case SOLID ->
          new RoughPart(
              mark.mark(),
              mark.count() * piece.blanks(part),
              part.finishedLength().plus(shop.extraLength()),
              piece.staveWidth(part).plus(shop.extraWidth(part.finishedLength())),
              stock.boughtAs().orElse(part.finishedThickness()));
    };
  }

  /** The boards of each solid stock in use, in the order of the description. */
  List<BoardNeed> boards(List<SheetPlan> layouts) {
    List<BoardNeed> needs = new ArrayList<>();
    for (StockEntry stock : piece.description().stock().values()) {
      Rational net = net(stock);
      if (stock.kind() == StockKind.SOLID && net.signum() > 0) {
        needs.add(
            layouts.stream()
                .filter(plan -> plan.stock().name().equals(stock.name()))
                .findFirst()
                .map(plan -> new BoardUse(piece, plan, net).need())
                .orElseGet(() -> BoardUse.estimated(stock, net, net, shop.wastePercent())));
      }
    }
    return needs;
  }

  private Rational net(StockEntry stock) {
    return sawn()
        .filter(mark -> mark.shown().stock().name().equals(stock.name()))
        .map(this::rough)
        .map(RoughSizes::boardFeet)
        .reduce(Rational.ZERO, Rational::plus);
  }

  private static Rational boardFeet(RoughPart part) {
    return BoardFeet.of(part.length(), part.width(), part.thickness())
        .times(Rational.of(part.count(), 1));
  }
}
