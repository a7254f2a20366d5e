package storyrod.stock;

import java.util.List;
import java.util.stream.Stream;

/**
 * Lays rectangles out on as few sheets as it can, every cut right across a piece. First the parts
 * are inserted in many orders and by many rules; if the best of that is above the lower bound,
 * parts are taken out and put back again and again with one sheet less. Of layouts with equally few
 * sheets the one with the largest offcut wins.
 */
final class LayoutEngine {
  private final Enlarged sizes;
  private final Effort effort;

  private LayoutEngine(Enlarged sizes, Effort effort) {
    this.sizes = sizes;
    this.effort = effort;
  }

  /**
   * A layout and its proof.
   *
   * @param sheets the sheets found, none of them empty
   * @param lowerBound the fewest sheets that any layout can use
   */
  record Result(Enlarged sizes, List<SheetTree> sheets, int lowerBound) {}

  /** Lays out a problem of which every part fits on a sheet. */
  static Result solve(SheetProblem problem, Effort effort) {
    Enlarged sizes = new Enlarged(problem);
    return new LayoutEngine(sizes, effort).solve();
  }

  private Result solve() {
    List<SheetTree> best = inserted();
    int bound = LayoutBounds.byArea(sizes);
    if (best.size() > bound) {
      bound = LayoutBounds.best(sizes);
      best = withFewer(best, bound);
    }
    List<SheetTree> polished = RuinAndRecreate.polish(sizes, best, effort);
    return new Result(sizes, polished.stream().filter(sheet -> !sheet.isEmpty()).toList(), bound);
  }

  private List<SheetTree> withFewer(List<SheetTree> start, int bound) {
    List<SheetTree> best = start;
    while (best.size() > bound) {
      List<SheetTree> fewer = RuinAndRecreate.withOneLess(sizes, best, effort);
      if (fewer.isEmpty()) {
        return best;
      }
      best = fewer;
    }
    return best;
  }

  private List<SheetTree> inserted() {
    return Stream.of(PartOrder.values())
        .flatMap(order -> inserted(order.sorted(sizes)))
        .min(LayoutRank.of(sizes))
        .orElseThrow();
  }

  private Stream<List<SheetTree>> inserted(List<Integer> order) {
    return Stream.of(Worth.values())
        .flatMap(
            worth ->
                Stream.of(BestFit.Split.values())
                    .map(split -> insert(order, new BestFit(sizes, worth, split))));
  }

  private List<SheetTree> insert(List<Integer> order, BestFit fit) {
    Sheets sheets = new Sheets(List.of());
    for (int part : order) {
      if (!fit.insert(part, sheets, () -> false)) {
        sheets.add(SheetTree.empty(sizes));
        fit.insert(part, sheets, () -> false);
      }
    }
    return sheets.current();
  }
}
