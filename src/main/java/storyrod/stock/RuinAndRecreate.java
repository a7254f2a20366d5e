package storyrod.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Betters a layout by taking some pieces of some sheets apart and putting their parts back, over
 * and over. A layout may leave parts out for a while; how much area is left out is what it strives
 * to lower. A step that is no worse than the layout some steps ago is kept (late acceptance, Burke
 * and Bykov 2017), as in the goal-driven search of Gardeyn and Wauters (2022).
 */
final class RuinAndRecreate {
  private static final int MEMORY = 200;
  private static final int MOST_PIECES = 4;
  private static final int ONE_SKIPPED_IN = 30;

  private final Enlarged sizes;
  private final Chance chance;
  private final BestFit fit;
  private final Sheets sheets;
  private final List<Integer> out = new ArrayList<>();
  private long cost;

  private RuinAndRecreate(Enlarged sizes, List<SheetTree> start, long seed) {
    this.sizes = sizes;
    this.chance = new Chance(seed);
    this.fit = new BestFit(sizes, Worth.AREA_TO_THREE_HALVES, BestFit.Split.EITHER);
    this.sheets = new Sheets(start);
  }

  /** A layout with one sheet less, or an empty list if none was found. */
  static List<SheetTree> withOneLess(Enlarged sizes, List<SheetTree> start, Effort effort) {
    List<SheetTree> kept = new ArrayList<>(start);
    SheetTree dropped = leastUsed(start, sizes);
    kept.remove(dropped);
    RuinAndRecreate search = new RuinAndRecreate(sizes, kept, effort.seed());
    dropped.nodes().stream().filter(CutNode::isPart).forEach(node -> search.out.add(node.part));
    return search.bringAllIn(effort.steps()) ? search.sheets.asKept() : List.of();
  }

  /** The layout with the largest offcut that was found on the same sheets. */
  static List<SheetTree> polish(Enlarged sizes, List<SheetTree> start, Effort effort) {
    return new RuinAndRecreate(sizes, start, effort.seed()).polish(effort.polish());
  }

  private static SheetTree leastUsed(List<SheetTree> sheets, Enlarged sizes) {
    return sheets.stream()
        .min(Comparator.comparingLong(sheet -> usedArea(sheet, sizes)))
        .orElseThrow();
  }

  private static long usedArea(SheetTree sheet, Enlarged sizes) {
    return sheet.nodes().stream()
        .filter(CutNode::isPart)
        .mapToLong(node -> sizes.area(node.part))
        .sum();
  }

  private boolean bringAllIn(int steps) {
    long[] memory = new long[MEMORY];
    cost = areaOut();
    Arrays.fill(memory, cost);
    for (int step = 0; step < steps && cost > 0; step++) {
      int slot = step % MEMORY;
      step(Math.max(cost, memory[slot]), false);
      memory[slot] = Math.min(memory[slot], cost);
    }
    return cost == 0;
  }

  private List<SheetTree> polish(int steps) {
    cost = offcutCost();
    for (int step = 0; step < steps; step++) {
      step(cost, true);
    }
    return sheets.asKept();
  }

  /** One round, kept if it costs no more than is allowed. */
  private void step(long allowed, boolean forOffcut) {
    List<Integer> outBefore = List.copyOf(out);
    ruin();
    recreate();
    long after = out.isEmpty() && forOffcut ? offcutCost() : areaOut();
    if (after <= allowed) {
      sheets.keep();
      cost = after;
    } else {
      sheets.goBack();
      out.clear();
      out.addAll(outBefore);
    }
  }

  private long areaOut() {
    return out.stream().mapToLong(sizes::area).sum();
  }

  /** Below zero, so that a layout with parts left out never costs less. */
  private long offcutCost() {
    return -LayoutRank.largestOffcut(sheets.current(), sizes);
  }

  private void ruin() {
    boolean[] marked = new boolean[sizes.size()];
    int pieces = 1 + chance.below(MOST_PIECES);
    for (int i = 0; i < pieces; i++) {
      SheetTree sheet = sheets.changed(chance.below(sheets.count()));
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
