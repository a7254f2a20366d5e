package storyrod.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Description;
import storyrod.description.Description.SheetSize;
import storyrod.description.Description.StockEntry;
import storyrod.description.Description.StockKind;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.layout.Budget;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
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
    List<SheetPlanner> planners = new ArrayList<>();
    boolean possible = true;
    for (StockEntry stock : description.stock().values()) {
      List<Part> parts = partsOf(stock);
      if (stock.kind() == StockKind.SHEET && !parts.isEmpty()) {
        Optional<SheetPlanner> planner = planner(stock, parts);
        planner.ifPresent(planners::add);
        possible &= planner.isPresent();
      }
    }
    return possible ? Optional.of(plan(planners)) : Optional.empty();
  }

  private StockPlan plan(List<SheetPlanner> planners) {
    RoughSizes rough = new RoughSizes(piece);
    List<SheetPlan> layouts = planners.stream().map(each -> each.plan(SEARCH)).toList();
    return new StockPlan(rough.parts(), rough.boards(), layouts, HardwareNeeds.of(piece));
  }

  private List<Part> partsOf(StockEntry stock) {
    return piece.parts().stream()
        .filter(part -> part.stock().name().equals(stock.name()))
        .filter(part -> piece.keptAs(part.name()).isEmpty())
        .toList();
  }

  private Optional<SheetPlanner> planner(StockEntry stock, List<Part> parts) {
    if (stock.sheet().isEmpty()) {
      diagnostics.add(
          Diagnostic.error("sheet-without-size", stock.at(), stock.name() + " has no sheet size")
              .hint("write its sheet's length and width, such as `sheet: 96 x 48`"));
      return Optional.empty();
    }
    SheetSize size = stock.sheet().orElseThrow();
    SheetPlanner planner = new SheetPlanner(stock, size, piece, parts);
    List<Part> tooLarge = planner.tooLarge();
    tooLarge.forEach(part -> diagnostics.add(tooLarge(part, stock, size)));
    return tooLarge.isEmpty() ? Optional.of(planner) : Optional.empty();
  }

  private Diagnostic tooLarge(Part part, StockEntry stock, SheetSize size) {
    Length trim = description.shop().edgeTrim().times(2);
    Length length = size.length().minus(trim);
    Length width = size.width().minus(trim);
    String message =
        "%s is %s, but a sheet of %s gives at most %s"
            .formatted(
                part.name(),
                sizes(part.finishedLength(), piece.blankWidth(part)),
                stock.name(),
                sizes(length, width));
    Diagnostic error =
        Diagnostic.error("part-larger-than-sheet", part.at(), message)
            .also(stock.at(), "the sheet is " + sizes(size.length(), size.width()))
            .hint("make the part smaller, build it from two parts, or buy larger sheets");
    boolean fitsTurned =
        !piece.blankWidth(part).isLongerThan(length) && !part.finishedLength().isLongerThan(width);
    return fitsTurned
        ? error.hint("turned it would fit: let its grain run along the other axis")
        : error;
  }

  private String sizes(Length length, Length width) {
    LengthFormat format = description.format();
    return format.format(length) + " x " + format.formatWithUnit(width);
  }
}
