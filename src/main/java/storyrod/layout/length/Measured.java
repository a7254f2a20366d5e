package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.measure.Length;

/**
 * A job as bars, and the way back: which blanks have a size, where the clear spans lie. Lengths are
 * counted in the largest unit in which all parts with their kerf are whole; stock is rounded down
 * to it, of which no layout could use more.
 */
final class Measured {
  private final LayoutJob job;
  private final long kerf;
  private final TreeMap<Long, List<Integer>> blanksBySize =
      new TreeMap<>(Comparator.reverseOrder());
  private final List<Integer> tooLong = new ArrayList<>();
  private final long unit;
  private final List<Map.Entry<Long, List<Integer>>> sizes;

  /** A clear part of a piece of stock, in ticks from its near end. */
  record Span(long from, long to) {}

  Measured(LayoutJob job) {
    this.job = job;
    this.kerf = job.kerf().ticks();
    long longest =
        job.stock().stream()
            .filter(stock -> stock.available() != 0)
            .flatMap(stock -> spans(stock, kerf).stream())
            .mapToLong(span -> span.to - span.from)
            .max()
            .orElse(0);
    for (int i = 0; i < job.blanks().size(); i++) {
      long length = job.blanks().get(i).length().ticks();
      if (length > longest) {
        tooLong.add(i);
      } else if (job.blanks().get(i).count() > 0) {
        blanksBySize.computeIfAbsent(length + kerf, size -> new ArrayList<>()).add(i);
      }
    }
    sizes = List.copyOf(blanksBySize.entrySet());
    unit = Math.max(1, blanksBySize.keySet().stream().reduce(0L, Measured::divisor));
  }

  private static long divisor(long a, long b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  LayoutJob job() {
    return job;
  }

  Stock stock(int number) {
    return job.stock().get(number);
  }

  int count(int blank) {
    return job.blanks().get(blank).count();
  }

  /** Blanks longer than any clear span. */
  List<Integer> tooLong() {
    return tooLong;
  }

  /** The shortest length wanted, in ticks. */
  long shortest() {
    return job.blanks().stream().mapToLong(blank -> blank.length().ticks()).min().orElse(0);
  }

  /** The blanks of a size, each as often as it is wanted. */
  List<Integer> blanks(int size) {
    List<Integer> all = new ArrayList<>();
    for (int blank : sizes.get(size).getValue()) {
      for (int i = 0; i < count(blank); i++) {
        all.add(blank);
      }
    }
    return all;
  }

  /** Which blanks are short if so many of each size are: the last ones. */
  Map<Integer, Integer> last(int[] countOfSize) {
    Map<Integer, Integer> last = new TreeMap<>();
    for (int size = 0; size < countOfSize.length; size++) {
      List<Integer> all = blanks(size);
      all.subList(all.size() - countOfSize[size], all.size())
          .forEach(blank -> last.merge(blank, 1, Integer::sum));
    }
    return last;
  }

  Bars bars() {
    return bars(kerf);
  }

  /** Bars at least as long as they can be used where a defect is narrower than the blade. */
  Bars barsAtMost() {
    return bars(0);
  }

  private Bars bars(long narrowest) {
    return new Bars(
        sizes.stream().mapToLong(size -> size.getKey() / unit).toArray(),
        sizes.stream()
            .mapToInt(size -> size.getValue().stream().mapToInt(this::count).sum())
            .toArray(),
        job.stock().stream().map(stock -> bar(stock, narrowest)).toList());
  }

  private Bars.Bar bar(Stock stock, long narrowest) {
    long[] spans =
        spans(stock, narrowest).stream()
            .mapToLong(span -> (span.to - span.from + kerf) / unit)
            .toArray();
    return new Bars.Bar(
        spans,
        stock.available() == Stock.UNLIMITED ? Integer.MAX_VALUE : stock.available(),
        job.least() == Least.COST ? stock.cost() : 1);
  }

  boolean hasNarrowDefects() {
    return job.stock().stream()
        .anyMatch(stock -> stock.defects().stream().anyMatch(each -> each.length().ticks() < kerf));
  }

  /** The clear spans of a piece of stock, parts beside each other always a kerf apart. */
  List<Span> spans(Stock stock) {
    return spans(stock, kerf);
  }

  /** The clear spans if every defect is taken to be no narrower than something. */
  private static List<Span> spans(Stock stock, long narrowest) {
    long from = stock.trim().left().ticks();
    long end = stock.length().ticks() - stock.trim().right().ticks();
    List<Span> spans = new ArrayList<>();
    for (LayoutJob.Area defect : acrossParts(stock)) {
      long x = defect.x().ticks();
      if (x > from) {
        spans.add(new Span(from, Math.min(x, end)));
      }
      from = Math.max(from, x + Math.max(defect.length().ticks(), narrowest));
    }
    if (from < end) {
      spans.add(new Span(from, end));
    }
    return spans.stream().filter(span -> span.to > span.from).toList();
  }

  /** The defects that lie between the trims across, the nearest first. */
  private static List<LayoutJob.Area> acrossParts(Stock stock) {
    long bottom = stock.trim().bottom().ticks();
    long top = stock.width().ticks() - stock.trim().top().ticks();
    return stock.defects().stream()
        .filter(each -> each.y().ticks() < top)
        .filter(each -> each.y().ticks() + each.width().ticks() > bottom)
        .sorted(Comparator.comparing(LayoutJob.Area::x))
        .toList();
  }

  static Length clearWidth(Stock stock) {
    return stock.width().minus(stock.trim().bottom()).minus(stock.trim().top());
  }

  static boolean hasPartlyClearWidth(Stock stock) {
    Length top = stock.width().minus(stock.trim().top());
    return acrossParts(stock).stream()
        .anyMatch(
            each ->
                each.y().isLongerThan(stock.trim().bottom())
                    || each.y().plus(each.width()).isShorterThan(top));
  }
}
