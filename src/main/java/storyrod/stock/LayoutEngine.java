package storyrod.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Lays rectangles out on as few sheets as it can, every cut right across a piece. First the parts
 * are inserted in many orders and by many rules; if the best of that is above the lower bound, parts
 * are taken out and put back again and again with one sheet less. Of layouts with equally few sheets
 * the one with the largest offcut wins.
 */
final class LayoutEngine {
  private final Enlarged sizes;
  private final Effort effort;

  private LayoutEngine(Enlarged sizes, Effort effort) {
    this.sizes = sizes;
    this.effort = effort;
  }

  /**
   * A layout with the fewest sheets that any layout can use.
   *
   * @param sheets none of them empty
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
    List<SheetTree> polished =
        new RuinAndRecreate(sizes, best, new Chance(effort.seed())).polish(effort.polish());
    return new Result(sizes, polished.stream().filter(sheet -> !sheet.isEmpty()).toList(), bound);
  }

  private List<SheetTree> withFewer(List<SheetTree> start, int bound) {
    List<SheetTree> best = start;
    while (best.size() > bound) {
      RuinAndRecreate search = new RuinAndRecreate(sizes, best, new Chance(effort.seed()));
      List<SheetTree> fewer = search.withOneLess(effort.steps());
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
    return Stream.of(BestFit.Worth.values())
        .flatMap(
            worth ->
                Stream.of(BestFit.Split.values())
                    .map(split -> insert(order, new BestFit(sizes, worth, split))));
  }

  private List<SheetTree> insert(List<Integer> order, BestFit fit) {
    List<SheetTree> sheets = new ArrayList<>();
    for (int part : order) {
      if (!fit.insert(part, sheets, () -> false)) {
        SheetTree fresh = SheetTree.empty(sizes);
        fit.insert(part, List.of(fresh), () -> false);
        sheets.add(fresh);
      }
    }
    return sheets;
  }
}
