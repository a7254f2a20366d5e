package storyrod.layout.length;

import java.util.Arrays;
import java.util.List;

/**
 * A job in whole numbers. A part and a clear span are each longer by a kerf than they measure, so
 * parts fit a span exactly if their sum does not exceed it.
 *
 * @param sizes of the parts, the largest first, each once
 * @param wanted how many of each size
 * @param bars the kinds of stock
 */
record Bars(long[] sizes, int[] wanted, List<Bar> bars) {
  /**
   * Equal pieces of stock.
   *
   * @param spans the clear spans, in their order along the stock
   * @param available how many there are, {@link Integer#MAX_VALUE} for as many as wanted
   * @param price what one piece counts
   */
  record Bar(long[] spans, int available, long price) {
    boolean isLimited() {
      return available < Integer.MAX_VALUE;
    }

    long widest() {
      return Arrays.stream(spans).max().orElse(0);
    }

    long total() {
      return Arrays.stream(spans).sum();
    }
  }

  int kinds() {
    return sizes.length;
  }

  Bar bar(Pattern pattern) {
    return bars.get(pattern.stock());
  }

  int[] available() {
    return bars.stream().mapToInt(Bar::available).toArray();
  }

  long widest() {
    return bars.stream().mapToLong(Bar::widest).max().orElse(0);
  }

  long highestPrice() {
    return Math.max(1, bars.stream().mapToLong(Bar::price).max().orElse(1));
  }

  boolean hasOneSpanEach() {
    return bars.stream().allMatch(bar -> bar.spans().length == 1);
  }

  long price(List<Pattern> patterns) {
    return patterns.stream().mapToLong(pattern -> bar(pattern).price()).sum();
  }

  long sum(int[] sizesOfSpan) {
    return Arrays.stream(sizesOfSpan).mapToLong(size -> sizes[size]).sum();
  }

  long sumOfWanted() {
    long sum = 0;
    for (int i = 0; i < sizes.length; i++) {
      sum = Math.addExact(sum, Math.multiplyExact(sizes[i], wanted[i]));
    }
    return sum;
  }

  int partsWanted() {
    return Arrays.stream(wanted).sum();
  }

  /** The same job with as much of all stock as wanted. */
  Bars withoutLimits() {
    return new Bars(
        sizes,
        wanted,
        bars.stream().map(bar -> new Bar(bar.spans, Integer.MAX_VALUE, bar.price)).toList());
  }
}
