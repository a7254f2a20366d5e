package storyrod.layout.length;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import storyrod.layout.CutList;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.measure.Length;

/**
 * Turns patterns into numbered cuts, placed parts and offcuts, from the near end to the far one.
 */
final class Sawing {
  private final Measured measured;
  private final long kerf;
  private final List<Deque<Integer>> blanks = new ArrayList<>();

  Sawing(Measured measured) {
    this.measured = measured;
    this.kerf = measured.job().kerf().ticks();
    for (int size = 0; size < measured.bars().kinds(); size++) {
      blanks.add(new ArrayDeque<>(measured.blanks(size)));
    }
  }

  Sawn saw(Pattern pattern) {
    return new Piece(pattern).saw();
  }

  /** One piece of stock on the bench; what is left of it starts at {@link #near}. */
  private final class Piece {
    private final Pattern pattern;
    private final Stock stock;
    private final long far;
    private final long bottom;
    private final long top;
    private final CutList cuts = new CutList();
    private final List<Spot> spots = new ArrayList<>();
    private final List<Area> offcuts = new ArrayList<>();
    private long near;

    Piece(Pattern pattern) {
      this.pattern = pattern;
      stock = measured.stock(pattern.stock());
      near = stock.trim().left().ticks();
      far = stock.length().ticks() - stock.trim().right().ticks();
      bottom = stock.trim().bottom().ticks();
      top = stock.width().ticks() - stock.trim().top().ticks();
    }

    Sawn saw() {
      cuts.trim(stock, measured.job().kerf());
      List<Measured.Span> spans = measured.spans(stock);
      for (int i = 0; i < spans.size(); i++) {
        saw(spans.get(i), pattern.spans()[i]);
      }
      offcuts.sort(Comparator.comparing(Area::length).reversed());
      return new Sawn(pattern.stock(), spots, cuts.cuts(), offcuts);
    }

    private void saw(Measured.Span span, int[] sizes) {
      if (sizes.length == 0 && !isWorthKeeping(span)) {
        return;
      }
      cutOffDefect(span.from());
      for (int size : sizes) {
        part(blanks.get(size).removeFirst());
      }
      keepRest(span);
    }

    private boolean isWorthKeeping(Measured.Span span) {
      long from = Math.max(near, span.from());
      return from < span.to() && (span.to() == far && from == near || isLong(span.to() - from));
    }

    private boolean isLong(long length) {
      return length >= measured.shortest();
    }

    private void cutOffDefect(long start) {
      if (near < start) {
        long at = start - kerf;
        // What the blade takes whole has no near edge to set the fence from.
        crosscut(at, at < near ? far - start : at - near);
        near = start;
      }
    }

    private void part(int blank) {
      Length length = measured.job().blanks().get(blank).length();
      spots.add(new Spot(blank, area(near, length.ticks()), false));
      cutAfter(length.ticks());
    }

    private void keepRest(Measured.Span span) {
      long rest = span.to() - near;
      if (rest > 0 && (span.to() == far || isLong(rest))) {
        offcuts.add(area(near, rest));
        cutAfter(rest);
      }
    }

    /** Cuts off a length, unless it is all that is left. */
    private void cutAfter(long length) {
      if (near + length < far) {
        crosscut(near + length, length);
      }
      near += length + kerf;
    }

    private void crosscut(long at, long fence) {
      cuts.cut(false, at, bottom, top, fence);
    }

    private Area area(long x, long length) {
      return new Area(
          new Length(x), new Length(bottom), new Length(length), new Length(top - bottom));
    }
  }
}
