package storyrod.layout.sheet;

import java.util.Arrays;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/**
 * Betters a layout by taking some pieces of some sheets apart and putting their parts back, over
 * and over, on sheets that take less than the best layout so far. A layout may leave parts out for
 * a while; how much area is left out is what it strives to lower. This is the goal-driven search of
 * Gardeyn and Wauters (2022); a step that is no worse than the layout some steps ago is kept (late
 * acceptance, Burke and Bykov 2017).
 */
final class RuinAndRecreate implements Search.Way {
  private static final int MEMORY = 200;
  private static final int MOST_PIECES = 4;
  private static final int ONE_SKIPPED_IN = 30;

  /** What a round costs beside its looks at places, in looks. */
  private static final int ROUND = 60;

  /** How much of a layout's merit is the worth of its free places, beside the area left out. */
  private static final double FREE = 0.02;

  private final Bench bench;
  private final StepCount steps;
  private final Proof proof;
  private final Type[] types;
  private final Kind[] kinds;
  private final double unit;
  private final double[] memory = new double[MEMORY];
  private final double[] keys;
  private int[] order = new int[16];
  private double[] orderKeys = new double[16];
  private Found best = Found.NOTHING;
  private long limit;
  private double cost;
  private int round;
  private int from;

  /**
   * @param proof the least any layout takes; a layout that takes no more is not bettered
   */
  RuinAndRecreate(Bench bench, Proof proof, StepCount steps) {
    this.bench = bench;
    this.proof = proof;
    this.steps = steps;
    this.types = bench.sizes.types.toArray(Type[]::new);
    this.kinds = bench.sizes.kinds.toArray(Kind[]::new);
    this.unit = 1.0 / Arrays.stream(kinds).mapToLong(Kind::area).max().orElse(1);
    this.keys = new double[types.length];
  }

  @Override
  public Found look(Found from, long mostSteps) {
    if (best.value() > from.value() || !best.isComplete()) {
      best = from;
      begin();
    }
    long until = steps.taken() + mostSteps;
    while ((best.value() > proof.least() || !best.isComplete()) && reach(until)) {
      best = bench.found();
      begin();
    }
    return best.isComplete() ? best : bench.found();
  }

  /** Takes a complete layout to be changed by {@link #change}. */
  void hold(Found found, int skipOneIn) {
    bench.load(found);
    limit = found.value();
    bench.fit.skip(skipOneIn);
  }

  /** Takes pieces apart and puts their parts back, on stock that takes no more. */
  void change() {
    steps.look(ROUND);
    ruin();
    recreate();
  }

  /**
   * Looks for a complete layout that takes no more than a limit from the bench's present state.
   *
   * @param frozen how many sheets at the start stay as they are
   */
  boolean aim(long most, int frozen, long until) {
    limit = most;
    from = frozen;
    start();
    boolean reached = bench.isComplete() || reach(until);
    from = 0;
    return reached;
  }

  private boolean reach(long until) {
    while (!bench.isComplete()) {
      if (steps.taken() >= until || steps.over()) {
        return false;
      }
      round();
    }
    return true;
  }

  /** Sets the goal to less than the best, and takes sheets away until it can be met. */
  private void begin() {
    bench.load(best);
    limit = best.isComplete() ? Math.max(0, best.value() - 1) : Long.MAX_VALUE;
    while (bench.value > limit) {
      bench.close(leastUsed());
    }
    start();
  }

  private void start() {
    bench.keep();
    bench.fit.skip(ONE_SKIPPED_IN);
    cost = cost();
    Arrays.fill(memory, cost);
  }

  private OpenSheet leastUsed() {
    OpenSheet least = bench.sheets[0];
    double leastUse = Double.POSITIVE_INFINITY;
    for (OpenSheet sheet : bench.sheets) {
      if (sheet.kind != OpenSheet.CLOSED) {
        double use = sheet.tree.used() / (double) Math.max(1, kinds[sheet.kind].worth());
        if (use < leastUse) {
          leastUse = use;
          least = sheet;
        }
      }
    }
    return least;
  }

  private double cost() {
    double free = 0;
    for (OpenSheet sheet : bench.sheets) {
      if (sheet.kind != OpenSheet.CLOSED) {
        free += bench.fit.freeWorth(sheet);
      }
    }
    return unit * bench.areaOut() - FREE * free;
  }

  private void round() {
    change();
    double after = cost();
    round = (round + 1) % MEMORY;
    if (after <= cost || after <= memory[round]) {
      bench.keep();
      cost = after;
    } else {
      bench.goBack();
    }
    memory[round] = Math.min(memory[round], cost);
  }

  private void ruin() {
    if (from >= bench.sheets.length) {
      return;
    }
    int pieces = 1 + bench.chance.below(MOST_PIECES);
    for (int i = 0; i < pieces; i++) {
      OpenSheet sheet = anySheet();
      if (sheet.kind != OpenSheet.CLOSED && sheet.tree.parts() > 0) {
        ruin(sheet);
      }
    }
    if (kinds.length > 1 && bench.chance.onceIn(8)) {
      OpenSheet sheet = anySheet();
      if (sheet.kind != OpenSheet.CLOSED) {
        bench.close(sheet);
      }
    }
  }

  private OpenSheet anySheet() {
    return bench.sheets[from + bench.chance.below(bench.sheets.length - from)];
  }

  private void ruin(OpenSheet sheet) {
    CutTree tree = sheet.tree;
    int slots = tree.end() / tree.step();
    int node = bench.chance.below(slots) * tree.step();
    while (!tree.exists(node)) {
      node = bench.chance.below(slots) * tree.step();
    }
    sheet.touch();
    sheet.tree.remove(node, bench.out);
    if (sheet.tree.parts() == 0) {
      bench.close(sheet);
    }
  }

  private void recreate() {
    int count = sorted();
    for (int i = 0; i < count; i++) {
      int part = order[i];
      if (bench.fit.insert(part, bench.sheets, 0, bench.sheets.length) || open(part)) {
        bench.out[part]--;
      }
    }
  }

  private boolean open(int part) {
    int chosen = -1;
    int seen = 0;
    for (int kind = 0; kind < kinds.length; kind++) {
      if (bench.mayOpen(kind, limit)
          && kinds[kind].holds(types[part])
          && bench.chance.below(++seen) == 0) {
        chosen = kind;
      }
    }
    if (chosen < 0) {
      return false;
    }
    int sheet = bench.open(chosen);
    if (bench.fit.insert(part, bench.sheets, sheet, sheet + 1)) {
      return true;
    }
    bench.close(bench.sheets[sheet]);
    return false;
  }

  /** Brings the parts that are out in an order, by a measure that chance disturbs a little. */
  private int sorted() {
    int measure = bench.chance.below(6);
    int count = 0;
    for (int part = 0; part < types.length; part++) {
      for (int i = bench.out[part]; i > 0; i--) {
        double key = measure(types[part], measure) * (0.6 + 0.8 * bench.chance.part());
        count = add(count, part, key);
      }
    }
    return count;
  }

  private int add(int count, int part, double key) {
    if (count == order.length) {
      order = Arrays.copyOf(order, 2 * count);
      orderKeys = Arrays.copyOf(orderKeys, 2 * count);
    }
    int at = count;
    for (; at > 0 && orderKeys[at - 1] < key; at--) {
      order[at] = order[at - 1];
      orderKeys[at] = orderKeys[at - 1];
    }
    order[at] = part;
    orderKeys[at] = key;
    return count + 1;
  }

  private static double measure(Type type, int measure) {
    return switch (measure) {
      case 0 -> type.area();
      case 1 -> Math.max(type.length(), type.width());
      case 2 -> Math.min(type.length(), type.width());
      case 3 -> type.length();
      case 4 -> type.width();
      default -> type.length() + type.width();
    };
  }
}
