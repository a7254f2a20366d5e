package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Branch and bound over a given set of patterns, depth first. Two sizes wanted once each lie on one
 * piece or on two (Ryan and Foster 1981); where no such pair is undecided, a pattern is sawn once
 * more or no more. The bound of every node is worked out in whole numbers.
 */
final class Branching {
  private static final long UNIT = 1L << 36;
  private static final double NOTHING = 1e-3;

  private final Bars bars;
  private final PatternSet set;
  private final Rows rows;
  private final long highestPrice;
  private final Meter meter;
  private final Simplex simplex;
  private final int firstColumn;
  private final List<Pattern> fixed = new ArrayList<>();
  private final int[] wanted;
  private final int[] left;
  private long priceLeft;
  private boolean gaveUp;

  Branching(Bars bars, List<Pattern> patterns, long price, Meter meter) {
    this.bars = bars;
    this.meter = meter;
    this.priceLeft = price;
    highestPrice = bars.highestPrice();
    wanted = bars.wanted().clone();
    left = bars.available();
    rows = new Rows(bars);
    set = new PatternSet(bars, rows, patterns);
    simplex = new Simplex(rows.right(wanted, left));
    firstColumn = simplex.size();
    for (int i = 0; i < set.size(); i++) {
      Rows.Column column = set.column(i);
      simplex.add(column.rows(), column.counts(), set.price(i) / (double) highestPrice);
    }
  }

  /** What a search can say. */
  enum Answer {
    FOUND,
    NONE,
    UNKNOWN
  }

  List<Pattern> found() {
    return fixed;
  }

  Answer run() {
    if (explore()) {
      return Answer.FOUND;
    }
    return gaveUp || meter.isEnded() ? Answer.UNKNOWN : Answer.NONE;
  }

  /** Whether a layout is found below this node; then it stands in the fixed patterns. */
  private boolean explore() {
    boolean solved = simplex.solve(meter);
    gaveUp |= !solved;
    if (!solved || priceLeft < 0) {
      return false;
    }
    int mark = set.mark();
    boolean found = !isHopeless() && branch();
    undo(mark);
    return found;
  }

  private void undo(int mark) {
    set.undo(mark, i -> simplex.cost(firstColumn + i, set.price(i) / (double) highestPrice));
  }

  private void bar(int pattern) {
    if (set.bar(pattern)) {
      simplex.cost(firstColumn + pattern, Simplex.FORBIDDING);
    }
  }

  /** Tries to prove that nothing lies below; bars what the bound rules out. */
  private boolean isHopeless() {
    long[] worth = new long[bars.kinds()];
    for (int size = 0; size < worth.length; size++) {
      worth[size] = (long) (Math.max(0, simplex.dual(size)) * UNIT);
    }
    Reduced reduced = new Reduced(bars, set, worth, UNIT / highestPrice);
    long gap = reduced.gap(priceLeft, wanted, left);
    meter.spend(set.size() * 8L);
    if (gap < 0) {
      return true;
    }
    for (int i = 0; i < set.size(); i++) {
      if (!set.isBarred(i) && reduced.reduced(i) > gap) {
        bar(i);
      }
    }
    return false;
  }

  private boolean branch() {
    double[] levels = simplex.levels();
    int[] pair = new Pairs(bars.kinds(), set, wanted).undecided(levels, firstColumn);
    if (pair.length == 2) {
      return withTogether(pair) || withApart(pair);
    }
    int most = -1;
    for (int i = 0; i < set.size(); i++) {
      double level = set.isBarred(i) ? 0 : levels[firstColumn + i];
      if (level > NOTHING && (most < 0 || level > levels[firstColumn + most])) {
        most = i;
      }
    }
    if (most < 0) {
      return Arrays.stream(wanted).allMatch(count -> count == 0);
    }
    return withOneMore(most) || withNoMore(most);
  }

  private boolean withTogether(int[] pair) {
    int mark = set.mark();
    for (int i = 0; i < set.size(); i++) {
      if (set.holds(i, pair[0]) != set.holds(i, pair[1])) {
        bar(i);
      }
    }
    boolean found = explore();
    undo(mark);
    return found;
  }

  private boolean withApart(int[] pair) {
    int mark = set.mark();
    for (int i = 0; i < set.size(); i++) {
      if (set.holds(i, pair[0]) && set.holds(i, pair[1])) {
        bar(i);
      }
    }
    boolean found = !meter.isEnded() && explore();
    undo(mark);
    return found;
  }

  private boolean withOneMore(int pattern) {
    int mark = set.mark();
    int[] wantedBefore = wanted.clone();
    int stock = set.pattern(pattern).stock();
    fixed.add(set.pattern(pattern).taking(wanted));
    left[stock] -= bars.bars().get(stock).isLimited() ? 1 : 0;
    priceLeft -= set.price(pattern);
    barMisfits();
    simplex.right(rows.right(wanted, left));
    boolean found =
        Arrays.stream(wanted).allMatch(count -> count == 0) && priceLeft >= 0 || explore();
    if (!found) {
      fixed.removeLast();
      System.arraycopy(wantedBefore, 0, wanted, 0, wanted.length);
      left[stock] += bars.bars().get(stock).isLimited() ? 1 : 0;
      priceLeft += set.price(pattern);
      undo(mark);
      simplex.right(rows.right(wanted, left));
    }
    return found;
  }

  private void barMisfits() {
    for (int i = 0; i < set.size(); i++) {
      if (!set.fits(i, wanted, left)) {
        bar(i);
      }
    }
  }

  private boolean withNoMore(int pattern) {
    int mark = set.mark();
    bar(pattern);
    boolean found = !meter.isEnded() && explore();
    undo(mark);
    return found;
  }
}
