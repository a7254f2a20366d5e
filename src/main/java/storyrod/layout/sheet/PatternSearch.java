package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.List;
import storyrod.layout.sheet.Enlarged.Kind;

/**
 * Lays equal parts out by whole pieces of stock: patterns are found by column generation (Gilmore
 * and Gomory 1961), then used one after the other, the one that the linear program likes best
 * first, the rest being solved anew each time (the diving of Belov and Scheithauer 2002).
 */
final class PatternSearch implements Search.Way {
  private static final int MOST_TURNS = 400;
  private static final int TURNS_WITHIN = 6;
  private static final double GAIN = 1e-6;

  private final Bench bench;
  private final Enlarged sizes;
  private final StepCount steps;
  private final Master master;
  private final List<StripPatterns> finders = new ArrayList<>();
  private final int[] wanted;
  private final int[] left;
  private final double enough;
  private final Proof proof;
  private long until;
  private boolean solved;

  /**
   * @param proof the least any layout takes; a linear program that gets there is solved
   */
  PatternSearch(Bench bench, Proof proof, StepCount steps) {
    this.bench = bench;
    this.sizes = bench.sizes;
    this.steps = steps;
    this.proof = proof;
    master = new Master(sizes);
    wanted = sizes.types.stream().mapToInt(Enlarged.Type::count).toArray();
    left = sizes.kinds.stream().mapToInt(Kind::available).toArray();
    long dearest = sizes.kinds.stream().mapToLong(Kind::worth).max().orElse(1);
    enough = proof.least() / (double) Math.max(1, dearest) + 1e-5;
    for (int kind = 0; kind < sizes.kinds.size(); kind++) {
      if (sizes.kinds.get(kind).defects().isEmpty()) {
        finders.add(new StripPatterns(sizes, kind, 0, steps));
        finders.add(new StripPatterns(sizes, kind, 1, steps));
      }
    }
  }

  @Override
  public Found look(Found best, long mostSteps) {
    add(best);
    if (!solved) {
      reset();
      until = steps.taken() + mostSteps / 2;
      solved = generate(MOST_TURNS);
    }
    long end = steps.taken() + mostSteps / 3;
    Found found = best;
    while (steps.taken() < end && !steps.over()) {
      Found next = dive();
      found = next.isComplete() && next.value() < found.value() ? next : found;
      if (found.value() <= proof.least()) {
        return found;
      }
    }
    return found;
  }

  List<Pattern> patterns() {
    return master.patterns();
  }

  /** Takes a pattern that betters the linear program. */
  void add(Pattern pattern) {
    master.add(pattern);
  }

  void add(Found found) {
    for (Found.Laid laid : found.sheets()) {
      if (sizes.kinds.get(laid.kind()).defects().isEmpty()) {
        master.add(Pattern.of(laid.kind(), laid.tree(), wanted.length));
      }
    }
  }

  /** One complete way down, or as far as the steps went. */
  private Found dive() {
    reset();
    until = Long.MAX_VALUE;
    while (!bench.isComplete() && !steps.over()) {
      master.solve(wanted, left, steps);
      generate(TURNS_WITHIN);
      if (!use()) {
        break;
      }
    }
    return bench.found();
  }

  private void reset() {
    bench.clear();
    System.arraycopy(bench.out, 0, wanted, 0, wanted.length);
    for (int i = 0; i < left.length; i++) {
      left[i] = sizes.kinds.get(i).available();
    }
  }

  /** Adds patterns that better the linear program, and says whether there are no more. */
  private boolean generate(int mostTurns) {
    double[] values = new double[wanted.length];
    for (int turn = 0; turn < mostTurns && !steps.over() && steps.taken() < until; turn++) {
      master.solve(wanted, left, steps);
      if (mostTurns == MOST_TURNS && master.total() <= enough) {
        return true;
      }
      for (int i = 0; i < values.length; i++) {
        values[i] = master.value(i);
      }
      if (!add(values)) {
        return true;
      }
    }
    return false;
  }

  private boolean add(double[] values) {
    boolean added = false;
    for (StripPatterns finder : finders) {
      double value = finder.find(values, wanted);
      if (master.gain(finder.kind(), value) > GAIN) {
        Pattern pattern = finder.pattern();
        double worth = 0;
        for (int i = 0; i < values.length; i++) {
          worth += pattern.counts()[i] * values[i];
        }
        if (master.gain(finder.kind(), worth) > GAIN) {
          master.add(pattern);
          added = true;
        }
      }
    }
    return added;
  }

  /** Uses all patterns as often as the linear program wholly does, or else one that it likes. */
  private boolean use() {
    double[] uses = master.uses();
    int best = -1;
    double most = 0;
    boolean whole = false;
    for (int i = 0; i < uses.length; i++) {
      Pattern pattern = master.patterns().get(i);
      for (int times = (int) (uses[i] + 1e-6); times > 0; times--) {
        whole |= useWithin(pattern);
      }
      double use = uses[i] * (0.8 + 0.4 * bench.chance.part());
      if (use > most && left[pattern.kind()] > 0) {
        most = use;
        best = i;
      }
    }
    if (!whole && best >= 0) {
      use(master.patterns().get(best));
    }
    return whole || best >= 0;
  }

  private boolean useWithin(Pattern pattern) {
    boolean possible = left[pattern.kind()] > 0 && pattern.isWithin(wanted);
    if (possible) {
      use(pattern);
    }
    return possible;
  }

  private void use(Pattern pattern) {
    int at = bench.open(pattern.kind());
    OpenSheet sheet = bench.sheets[at];
    sheet.tree.copyFrom(pattern.tree());
    left[pattern.kind()]--;
    boolean dropped = false;
    int[] counts = pattern.counts();
    for (int type = 0; type < counts.length; type++) {
      for (int i = counts[type]; i > wanted[type]; i--) {
        sheet.tree.removeOne(type);
        dropped = true;
      }
      int taken = Math.min(counts[type], wanted[type]);
      wanted[type] -= taken;
      bench.out[type] -= taken;
    }
    if (dropped) {
      fill(at);
    }
  }

  /** Puts other parts where those that were too many lay. */
  private void fill(int at) {
    for (int type : bench.byArea()) {
      while (wanted[type] > 0 && bench.fit.insert(type, bench.sheets, at, at + 1)) {
        wanted[type]--;
        bench.out[type]--;
      }
    }
  }
}
