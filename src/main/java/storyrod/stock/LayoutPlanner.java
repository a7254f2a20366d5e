package storyrod.stock;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import storyrod.description.OnHandEntry;
import storyrod.description.StockEntry;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Missing;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.layout.search.Neighbours;
import storyrod.measure.Rational;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** Lays the parts of one stock out on what there is of it and on what can be bought. */
final class LayoutPlanner {
  private final StockEntry stock;
  private final Piece piece;
  private final Sources sources;
  private final Blanks blanks;

  LayoutPlanner(StockEntry stock, Piece piece, List<Part> parts) {
    this.stock = stock;
    this.piece = piece;
    this.sources = new Sources(piece, stock);
    this.blanks = new Blanks(piece, stock, parts);
  }

  /** Whether it is known from what the parts are sawn. */
  boolean hasSources() {
    return !sources.isEmpty();
  }

  SheetPlan plan(Budget budget) {
    LayoutJob job =
        new LayoutJob(
            blanks.blanks(), sources.stock(), piece.description().shop().kerf(), sources.least());
    LayoutPlan plan = Neighbours.plan(job, blanks.groups(), budget);
    List<SheetLayout> sheets = sawnAlike(plan.pieces().stream().map(this::layout).toList());
    int bought = (int) sheets.stream().filter(each -> each.onHand().isEmpty()).count();
    return new SheetPlan(
        stock,
        sheets,
        plan.missing().stream().map(this::missing).toList(),
        sources.fewestBought(plan),
        sources.costOfBought().map(each -> each.times(Rational.of(bought, 1))));
  }

  /**
   * Where the same lies in the same places, it is sawn in the same order: one setting does for all.
   */
  private static List<SheetLayout> sawnAlike(List<SheetLayout> sheets) {
    Map<SheetLayout, SheetLayout> first = new HashMap<>();
    return sheets.stream()
        .map(sheet -> sheet.sawnAs(first.computeIfAbsent(sheet.places(), places -> sheet)))
        .toList();
  }

  private SheetLayout layout(Sawn sawn) {
    return new SheetLayout(
        sources.onHand(sawn.stock()).map(OnHandEntry::name),
        sources.length(sawn.stock()),
        sources.width(sawn.stock()),
        sawn.spots().stream().map(this::placed).toList(),
        sawn.cuts(),
        sawn.offcuts());
  }

  private Placed placed(Spot spot) {
    Blanks.Of blank = blanks.get(spot.blank());
    Part part = blank.part();
    return new Placed(part.mark(), part.name(), blank.number(), spot.area(), spot.turned());
  }

  private StockPlan.Missing missing(Missing missing) {
    Part part = blanks.get(missing.blank()).part();
    return new StockPlan.Missing(
        part.mark(), part.name(), blanks.length(part), blanks.width(part), missing.fits());
  }
}
