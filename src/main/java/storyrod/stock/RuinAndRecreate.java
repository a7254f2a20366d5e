package storyrod.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Betters a layout by taking some pieces of some sheets apart and putting their parts back, over and
 * over. A layout may leave parts out for a while; how much area is left out is what it strives to
 * lower. A step that is no worse than the layout some steps ago is kept (late acceptance, Burke and
 * Bykov 2017), as in the goal-driven search of Gardeyn and Wauters (2022).
 */
final class RuinAndRecreate {
  private static final int MEMORY = 200;
  private static final int MOST_PIECES = 4;
  private static final int ONE_SKIPPED_IN = 30;

  private final Enlarged sizes;
  private final Chance chance;
  private final BestFit fit;
  private final List<SheetTree> sheets = new ArrayList<>();
  private final List<Integer> out = new ArrayList<>();

  RuinAndRecreate(Enlarged sizes, List<SheetTree> start, Chance chance) {
    this.sizes = sizes;
    this.chance = chance;
    this.fit = new BestFit(sizes, BestFit.Worth.AREA_TO_THREE_HALVES, BestFit.Split.EITHER);
    start.forEach(sheet -> sheets.add(sheet.copy()));
  }

  /** A layout with one sheet less, or an empty list if none was found. */
  List<SheetTree> withOneLess(int steps) {
    dropOneSheet();
    return search(steps, true) && out.isEmpty() ? sheets : List.of();
  }

  /** The layout with the largest offcut that was found, the number of sheets being no greater. */
  List<SheetTree> polish(int steps) {
    List<SheetTree> best = copy();
    long[] memory = new long[1];
    memory[0] = cost();
    for (int step = 0; step < steps; step++) {
      if (step(memory, 0) && out.isEmpty() && rank().compare(sheets, best) < 0) {
        best = copy();
      }
    }
    return best;
  }

  private java.util.Comparator<List<SheetTree>> rank() {
    return LayoutRank.of(sizes);
  }

  private List<SheetTree> copy() {
    return new ArrayList<>(sheets.stream().map(SheetTree::copy).toList());
  }

  private void dropOneSheet() {
    int least = 0;
    for (int i = 1; i < sheets.size(); i++) {
      least = usedArea(sheets.get(i)) < usedArea(sheets.get(least)) ? i : least;
    }
    boolean[] all = new boolean[sizes.size()];
    Arrays.fill(all, true);
    sheets.remove(least).prune(all, out);
  }

  private long usedArea(SheetTree sheet) {
    return sheet.nodes().stream()
        .filter(CutNode::isPart)
        .mapToLong(node -> sizes.area(node.part))
        .sum();
  }

  private boolean search(int steps, boolean stopWhenIn) {
    long[] memory = new long[MEMORY];
    Arrays.fill(memory, cost());
    for (int step = 0; step < steps && !(stopWhenIn && out.isEmpty()); step++) {
      step(memory, step % MEMORY);
    }
    return true;
  }

  private long cost() {
    long left = out.stream().mapToLong(sizes::area).sum();
    return left > 0 ? left : -LayoutRank.largestOffcut(sheets, sizes);
  }

  /** One round; true if it was kept. */
  private boolean step(long[] memory, int slot) {
    List<SheetTree> sheetsBefore = new ArrayList<>(sheets);
    List<Integer> outBefore = new ArrayList<>(out);
    long before = cost();
    sheets.replaceAll(SheetTree::copy);
    ruin();
    recreate();
    long after = cost();
    boolean kept = after <= before || after <= memory[slot];
    if (!kept) {
      sheets.clear();
      sheets.addAll(sheetsBefore);
      out.clear();
      out.addAll(outBefore);
    }
    memory[slot] = Math.min(memory[slot], kept ? after : before);
    return kept;
  }

  private void ruin() {
    boolean[] marked = new boolean[sizes.size()];
    int pieces = 1 + chance.below(MOST_PIECES);
    for (int i = 0; i < pieces; i++) {
      SheetTree sheet = sheets.get(chance.below(sheets.size()));
      List<CutNode> nodes = sheet.nodes();
      mark(nodes.get(chance.below(nodes.size())), marked);
      sheet.prune(marked, out);
    }
  }

  private static void mark(CutNode node, boolean[] marked) {
    if (node.isPart()) {
      marked[node.part] = true;
    }
    node.children.forEach(child -> mark(child, marked));
  }

  private void recreate() {
    PartOrder[] orders = PartOrder.values();
    orders[chance.below(orders.length)].shuffle(out, sizes, chance);
    out.removeIf(part -> fit.insert(part, sheets, () -> chance.onceIn(ONE_SKIPPED_IN)));
  }
}
