package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/**
 * Proves how little stock can do by column generation (Gilmore and Gomory 1965) over all sheets
 * that can be cut right across, in any number of stages. The linear program only proposes what
 * parts are worth; the bound of Farley (1990) then follows in whole numbers from what a sheet can
 * be worth at most. The sheets that are found are handed on to the search for a layout.
 */
final class CutBound implements Search.Way {
  /** What a whole sheet is worth, about, where parts are not worth too much for it. */
  private static final double SHEET = 1 << 26;

  private static final long[] TURNS = {5_000_000L, 40_000_000L, 200_000_000L, 1_000_000_000L};

  /** Turns of a knapsack's loops in a step. */
  private static final long TURNS_A_STEP = 2_000;

  /** How near the worths that proved most the next are chosen (smoothing as of Wentges 1997). */
  private static final double CENTRE = 0.6;

  private static final double GAIN = 1e-6;

  private final Enlarged sizes;
  private final Proof proof;
  private final StepCount steps;
  private final PatternSearch search;
  private final StockCover cover;
  private final int[] wanted;
  private final int[] left;
  private Master master;
  private List<CutKnapsack> knapsacks = List.of();
  private List<CutKnapsack> real = List.of();
  private double[] centre = {};
  private double highest;
  private int level;
  private boolean done;

  /**
   * @param search where the linear program begins, and whom new patterns are given to
   */
  CutBound(Enlarged sizes, Proof proof, StepCount steps, PatternSearch search) {
    this.sizes = sizes;
    this.proof = proof;
    this.steps = steps;
    this.search = search;
    cover = new StockCover(sizes.kinds);
    wanted = sizes.types.stream().mapToInt(Type::count).toArray();
    left = sizes.kinds.stream().mapToInt(Kind::available).toArray();
    master = new Master(sizes);
  }

  @Override
  public Found look(Found best, long mostSteps) {
    long until = steps.taken() + 2 * mostSteps;
    search.add(best);
    while (!done && steps.taken() < until && !steps.over() && begin(mostSteps)) {
      if (!round()) {
        end(knapsacks.stream().allMatch(CutKnapsack::isExact));
      }
    }
    return best;
  }

  /** Sets knapsacks up unless they are; false if they would take too long for now. */
  private boolean begin(long mostSteps) {
    if (!knapsacks.isEmpty()) {
      return true;
    }
    if (TURNS[level] / TURNS_A_STEP > mostSteps) {
      return false;
    }
    List<CutKnapsack> found = new ArrayList<>();
    for (int kind = 0; kind < sizes.kinds.size(); kind++) {
      CutKnapsack.within(sizes, kind, TURNS[level] / sizes.kinds.size()).ifPresent(found::add);
      steps.look(sizes.kinds.get(kind).length() + sizes.kinds.get(kind).width());
    }
    if (found.size() < sizes.kinds.size()) {
      end(false);
      return !done && begin(mostSteps);
    }
    knapsacks = found;
    real = found.stream().map(each -> each.isReal() ? each : each.roundedUp()).toList();
    highest = 0;
    master = new Master(sizes);
    search.patterns().forEach(master::add);
    return true;
  }

  private void end(boolean exact) {
    level++;
    done = exact || level == TURNS.length;
    knapsacks = List.of();
  }

  /** Proves a bound, and says whether better sheets were found. */
  private boolean round() {
    master.solve(wanted, left, steps);
    double[] values = new double[wanted.length];
    Arrays.setAll(values, master::value);
    return centre.length > 0 && price(between(values)) || price(values);
  }

  private double[] between(double[] values) {
    double[] between = new double[values.length];
    Arrays.setAll(between, type -> CENTRE * centre[type] + (1 - CENTRE) * values[type]);
    return between;
  }

  /** Proves a bound by some worths of parts, and says whether sheets were found that are of use. */
  private boolean price(double[] values) {
    double scale = scale(values);
    int[] worths = new int[values.length];
    Arrays.setAll(worths, type -> (int) (values[type] * scale));
    long[] gives = new long[left.length];
    boolean better = false;
    for (int kind = 0; kind < gives.length; kind++) {
      CutKnapsack knapsack = knapsacks.get(kind);
      gives[kind] = knapsack.fill(worths, steps);
      better |= add(knapsack);
      if (!knapsack.isReal()) {
        real.get(kind).fill(worths, steps);
        better |= add(real.get(kind));
      }
    }
    long need = 0;
    for (int type = 0; type < worths.length; type++) {
      need += (long) worths[type] * wanted[type];
    }
    proof.raise(cover.least(need, gives));
    double about = cover.share(need, gives);
    if (about > highest) {
      highest = about;
      centre = values;
    }
    return better;
  }

  private boolean add(CutKnapsack knapsack) {
    Pattern pattern = knapsack.pattern();
    double worth = 0;
    for (int type = 0; type < wanted.length; type++) {
      worth += pattern.counts()[type] * master.value(type);
    }
    boolean better = master.gain(pattern.kind(), worth) > GAIN;
    if (better) {
      master.add(pattern);
      if (knapsack.isReal() && sizes.kinds.get(pattern.kind()).defects().isEmpty()) {
        search.add(pattern);
      }
    }
    return better;
  }

  /** What a worth of one becomes. */
  private double scale(double[] values) {
    double most = knapsacks.stream().mapToDouble(each -> each.atMost(values)).max().orElse(1);
    return Math.min(SHEET, CutKnapsack.MOST_WORTH / Math.max(1, most));
  }
}
