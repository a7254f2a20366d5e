package storyrod.stock;

import java.util.List;
import java.util.Optional;
import storyrod.description.Description.Price;
import storyrod.description.Description.PriceUnit;
import storyrod.description.Description.SheetSize;
import storyrod.description.Description.StockEntry;
import storyrod.description.ShopEntry;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.layout.Layouts;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** Lays the parts of one sheet stock out. */
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
    return parts.stream().filter(part -> !fits(part)).toList();
  }

  private boolean fits(Part part) {
    Length length = part.finishedLength();
    Length width = piece.blankWidth(part);
    return fits(length, width) || !stock.grained() && fits(width, length);
  }

  private boolean fits(Length length, Length width) {
    Length trim = shop.edgeTrim().times(2);
    return !length.plus(trim).isLongerThan(size.length())
        && !width.plus(trim).isLongerThan(size.width());
  }

  SheetPlan plan(Budget budget) {
    LayoutPlan plan = Layouts.plan(job(), budget);
    List<SheetLayout> sheets = plan.pieces().stream().map(this::layout).toList();
    return new SheetPlan(stock, sheets, Math.toIntExact(plan.lowerBound()), cost(sheets.size()));
  }

  private LayoutJob job() {
    Stock sheet =
        new Stock(
            stock.name(),
            size.length(),
            size.width(),
            Stock.UNLIMITED,
            1,
            Trim.all(shop.edgeTrim()),
            List.of());
    List<Blank> blanks = parts.stream().map(this::blank).toList();
    return new LayoutJob(blanks, List.of(sheet), shop.kerf(), Least.PIECES);
  }

  private Blank blank(Part part) {
    return new Blank(
        part.name(), part.finishedLength(), piece.blankWidth(part), 1, !stock.grained());
  }

  private SheetLayout layout(Sawn sawn) {
    return new SheetLayout(
        size.length(),
        size.width(),
        sawn.spots().stream().map(this::placed).toList(),
        sawn.cuts(),
        sawn.offcuts());
  }

  private Placed placed(Spot spot) {
    Part part = parts.get(spot.blank());
    return new Placed(part.mark(), part.name(), spot.area(), spot.turned());
  }

  private Optional<Rational> cost(int sheets) {
    return stock
        .price()
        .filter(price -> price.per() == PriceUnit.SHEET)
        .map(Price::amount)
        .map(amount -> amount.times(Rational.of(sheets, 1)));
  }
}
