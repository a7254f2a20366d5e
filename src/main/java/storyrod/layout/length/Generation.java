package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Column generation of Gilmore and Gomory (1961): the linear relaxation over patterns, whose
 * columns come from a knapsack problem. Its bound is worked out in whole numbers from rounded
 * duals, by what each kind of stock really holds of them, so it needs no trust in floating point.
 *
 * <p>At first a part may stand in for the next smaller size, which keeps the duals in order and
 * brings them home in a third of the time (dual cuts of Valério de Carvalho 2005).
 */
final class Generation {
  private static final int MOST_COLUMNS_A_ROUND = 10;

  private final Bars bars;
  private final Rows rows;
  private final Meter meter;
  private final long highestPrice;
  private final Simplex simplex;
  private final List<Pattern> patterns = new ArrayList<>();
  private final int firstPattern;
  private int[] wanted;
  private int[] left;
  private Joined joined;
  private Pricing pricing;

  Generation(Bars bars, Meter meter) {
    this.bars = bars;
    this.meter = meter;
    rows = new Rows(bars);
    joined = Joined.none(bars);
    pricing = new Pricing(bars, rows, meter);
    highestPrice = bars.highestPrice();
    wanted = bars.wanted().clone();
    left = bars.available();
    simplex = new Simplex(rows.right(wanted, left));
    for (int size = 1; size < bars.kinds(); size++) {
      simplex.add(new int[] {size - 1, size}, new int[] {-1, 1}, 0);
    }
    firstPattern = simplex.size();
  }

  /** From now on a part that stands in for a smaller one costs as much as a piece of stock. */
  void endExchanges() {
    for (int column = rows.count(); column < firstPattern; column++) {
      simplex.cost(column, 1);
    }
  }

  /** Adds a pattern to those known, unless it holds nothing. */
  void add(Pattern pattern) {
    Rows.Column column = rows.column(pattern);
    if (!pattern.isEmpty()) {
      simplex.add(column.rows(), column.counts(), cost(pattern));
      patterns.add(pattern);
    }
  }

  private double cost(Pattern pattern) {
    return bars.bar(pattern).price() / (double) highestPrice;
  }

  /** Where a run has ended, to start from again. */
  Simplex.Basis basis() {
    return simplex.basis();
  }

  /** Goes back to all parts and all stock, and to where a run for them has ended. */
  void restart(Simplex.Basis basis) {
    if (!joined.isNone()) {
      joined = Joined.none(bars);
      pricing = new Pricing(bars, rows, meter);
    }
    simplex.restore(basis);
    reset(bars.wanted(), bars.available());
  }

  /** Bars patterns that do not hold together what is joined, from now until the next restart. */
  void join(Joined job) {
    joined = job;
    pricing = new Pricing(job.bars(), new Rows(job.bars()), meter);
    for (int i = 0; i < patterns.size(); i++) {
      boolean allowed = job.allows(patterns.get(i));
      simplex.cost(firstPattern + i, allowed ? cost(patterns.get(i)) : Simplex.FORBIDDING);
    }
  }

  /**
   * Sets the parts still wanted and the stock still left; patterns that give too much are barred.
   */
  void reset(int[] newWanted, int[] newLeft) {
    wanted = newWanted.clone();
    left = newLeft.clone();
    for (int i = 0; i < patterns.size(); i++) {
      Pattern pattern = patterns.get(i);
      boolean fits = left[pattern.stock()] > 0 && isWanted(pattern);
      simplex.cost(firstPattern + i, fits ? cost(pattern) : Simplex.FORBIDDING);
    }
    simplex.right(rows.right(wanted, left));
  }

  private boolean isWanted(Pattern pattern) {
    boolean fits = true;
    for (int[] span : pattern.spans()) {
      for (int size : span) {
        fits &= --wanted[size] >= 0;
      }
    }
    for (int[] span : pattern.spans()) {
      for (int size : span) {
        wanted[size]++;
      }
    }
    return fits;
  }

  /** Generates patterns until none can make the relaxation cheaper. */
  void run(Meter meter) {
    while (simplex.solve(meter) && addPatterns()) {
      continue;
    }
  }

  /** The same, but ends as soon as the bound is as high as a whole number can be. */
  long bound(Meter meter) {
    long bound = 0;
    boolean more = true;
    while (more && simplex.solve(meter)) {
      more = addPatterns();
      bound = Math.max(bound, pricing.bound());
      more &= bound < roundedValue();
    }
    return bound;
  }

  private boolean addPatterns() {
    int[] partsWanted = joined.isNone() ? wanted : joined.bars().wanted();
    List<Pricing.Candidate> candidates = pricing.price(joined.duals(duals()), partsWanted, left);
    candidates.stream()
        .sorted(Comparator.comparingLong(candidate -> -candidate.gain()))
        .limit(MOST_COLUMNS_A_ROUND)
        .forEach(candidate -> add(joined.apart(candidate.pattern())));
    return !candidates.isEmpty();
  }

  private double[] duals() {
    double[] duals = new double[rows.count()];
    Arrays.setAll(duals, simplex::dual);
    return duals;
  }

  /** All patterns that a layout at some price may use, after a run; none if there are too many. */
  List<Pattern> within(long price, int most) {
    return pricing.within(price, most);
  }

  /** The price of the relaxation, rounded up unless it is nearly whole: a guide, no proof. */
  long roundedValue() {
    return (long) Math.ceil(simplex.value() * highestPrice - 1e-4 * highestPrice);
  }

  Pattern pattern(int i) {
    return patterns.get(i);
  }

  /** How often the relaxation uses each pattern. */
  double[] levels() {
    double[] levels = simplex.levels();
    return Arrays.copyOfRange(levels, firstPattern, levels.length);
  }
}
