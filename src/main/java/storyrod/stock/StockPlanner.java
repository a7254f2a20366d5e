package storyrod.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Description;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.layout.Budget;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.SheetPlan;

/** Plans what the parts are sawn from and what has to be bought. */
public final class StockPlanner {
  /** How hard to look for each layout: half a second of search where the bound is not reached. */
  private static final Budget SEARCH = Budget.ofSteps(Budget.STEPS_A_SECOND / 2);

  private final Piece piece;
  private final Description description;
  private final Diagnostics diagnostics;

  private StockPlanner(Piece piece, Diagnostics diagnostics) {
    this.piece = piece;
    this.description = piece.description();
    this.diagnostics = diagnostics;
  }

  /** The plan for a piece; where its stock cannot give it, none and the reasons as diagnostics. */
  public static Optional<StockPlan> plan(Piece piece, Diagnostics diagnostics) {
    return new StockPlanner(piece, diagnostics).plan();
  }

  private Optional<StockPlan> plan() {
    List<SheetPlan> layouts = new ArrayList<>();
    boolean possible = true;
    for (Searched searched : searched()) {
      StockEntry stock = searched.stock();
      if (searched.isWithoutSize()) {
        diagnostics.add(withoutSize(stock));
        possible = false;
      } else if (searched.layout().isPresent()) {
        SheetPlan layout = searched.layout().get();
        layouts.add(layout);
        new Shortage(piece, layout).tell(diagnostics);
        possible &= stock.kind() == StockKind.SOLID || layout.missing().isEmpty();
      }
    }
    return possible ? Optional.of(plan(layouts)) : Optional.empty();
  }

  /** A stock with the layout that was found for it, if parts are sawn from it. */
  private record Searched(StockEntry stock, boolean isWithoutSize, Optional<SheetPlan> layout) {}

  /** Each stock's search knows nothing of the others, so they run side by side. */
  private List<Searched> searched() {
    return description.stock().values().parallelStream().map(this::searched).toList();
  }

  private Searched searched(StockEntry stock) {
    List<Part> parts = partsOf(stock);
    boolean isWithoutSize =
        !parts.isEmpty() && stock.kind() == StockKind.SHEET && stock.sheet().isEmpty();
    LayoutPlanner planner = new LayoutPlanner(stock, piece, parts);
    boolean isSawn = !parts.isEmpty() && !isWithoutSize && planner.hasSources();
    return new Searched(
        stock, isWithoutSize, isSawn ? Optional.of(planner.plan(SEARCH)) : Optional.empty());
  }

  private static Diagnostic withoutSize(StockEntry stock) {
    return Diagnostic.error("sheet-without-size", stock.at(), stock.name() + " has no sheet size")
        .hint("write its sheet's length and width, such as `sheet: 96 x 48`");
  }

  private StockPlan plan(List<SheetPlan> layouts) {
    RoughSizes rough = new RoughSizes(piece);
    return new StockPlan(
        rough.parts(),
        GluedBlank.of(piece),
        rough.boards(layouts),
        layouts,
        HardwareNeeds.of(piece),
        SupplyNeeds.of(piece));
  }

  private List<Part> partsOf(StockEntry stock) {
    return piece.wood().stream()
        .filter(part -> part.stock().name().equals(stock.name()))
        .filter(part -> piece.keptAs(part.name()).isEmpty())
        .toList();
  }
}
