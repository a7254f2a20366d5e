package storyrod.stock;

import java.util.List;
import java.util.Optional;
import storyrod.description.Description.Price;
import storyrod.description.Description.PriceUnit;
import storyrod.description.Description.SheetSize;
import storyrod.description.Description.StockEntry;
import storyrod.description.ShopEntry;
import storyrod.measure.Rational;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.CutSequence.Sawing;
import storyrod.stock.CutSequence.Spot;
import storyrod.stock.LayoutReplay.Wanted;
import storyrod.stock.SheetProblem.Rectangle;
import storyrod.stock.SheetProblem.Sheet;
import storyrod.stock.SheetProblem.Trim;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** Lays the parts of one sheet stock out, and has the saw run over the result before it is used. */
final class SheetPlanner {
  private final StockEntry stock;
  private final SheetSize size;
  private final ShopEntry shop;
  private final Piece piece;
  private final List<Part> parts;

  SheetPlanner(StockEntry stock, SheetSize size, Piece piece, List<Part> parts) {
    this.stock = stock;
    this.size = size;
    this.shop = piece.description().shop();
    this.piece = piece;
    this.parts = List.copyOf(parts);
  }

  /** The parts that no sheet of this stock can give. */
  List<Part> tooLarge() {
    SheetProblem problem = problem();
    return parts.stream().filter(part -> !problem.fits(rectangle(part))).toList();
  }

  SheetPlan plan(Effort effort) {
    SheetProblem problem = problem();
    LayoutEngine.Result result = LayoutEngine.solve(problem, effort);
    List<SheetLayout> sheets =
        result.sheets().stream()
            .map(tree -> layout(CutSequence.of(tree, result.sizes(), problem.sheet())))
            .toList();
    check(sheets);
    return new SheetPlan(stock, sheets, result.lowerBound(), cost(sheets.size()));
  }

  private SheetProblem problem() {
    Sheet sheet =
        new Sheet(
            size.length().ticks(),
            size.width().ticks(),
            shop.kerf().ticks(),
            Trim.all(shop.edgeTrim().ticks()));
    return new SheetProblem(sheet, parts.stream().map(this::rectangle).toList());
  }

  private Rectangle rectangle(Part part) {
    return new Rectangle(
        part.finishedLength().ticks(), piece.blankWidth(part).ticks(), !stock.grained());
  }

  private SheetLayout layout(Sawing sawing) {
    return new SheetLayout(
        size.length(),
        size.width(),
        sawing.spots().stream().map(this::placed).toList(),
        sawing.cuts(),
        sawing.offcuts());
  }

  private Placed placed(Spot spot) {
    Part part = parts.get(spot.part());
    return new Placed(part.mark(), part.name(), spot.area(), spot.turned());
  }

  private void check(List<SheetLayout> sheets) {
    List<Wanted> wanted =
        parts.stream()
            .map(
                part ->
                    new Wanted(
                        part.name(),
                        part.finishedLength(),
                        piece.blankWidth(part),
                        !stock.grained()))
            .toList();
    List<String> faults = LayoutReplay.faults(sheets, shop.kerf(), wanted);
    if (!faults.isEmpty()) {
      throw new IllegalStateException("bug: layout of " + stock.name() + ": " + faults);
    }
  }

  private Optional<Rational> cost(int sheets) {
    return stock
        .price()
        .filter(price -> price.per() == PriceUnit.SHEET)
        .map(Price::amount)
        .map(amount -> amount.times(Rational.of(sheets, 1)));
  }
}
