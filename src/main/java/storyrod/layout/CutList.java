package storyrod.layout;

import java.util.ArrayList;
import java.util.List;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;

/** The cuts of one piece of stock in their order, numbered as they come; lengths in ticks. */
public final class CutList {
  private final List<SawCut> cuts = new ArrayList<>();

  /** A cut as {@link SawCut} describes it. */
  public void cut(boolean alongLength, long at, long from, long to, long fence) {
    cuts.add(
        new SawCut(
            cuts.size() + 1,
            alongLength,
            new Length(at),
            new Length(from),
            new Length(to),
            new Length(fence)));
  }

  /** Near edges are trimmed with the fence on the far one: the first fence keeps what is good. */
  public void trim(Stock stock, Length kerf) {
    long length = stock.length().ticks();
    long width = stock.width().ticks();
    long left = stock.trim().left().ticks();
    long right = length - stock.trim().right().ticks();
    long bottom = stock.trim().bottom().ticks();
    long top = width - stock.trim().top().ticks();
    if (bottom > 0) {
      cut(true, bottom - kerf.ticks(), 0, length, width - bottom);
    }
    if (top < width) {
      cut(true, top, 0, length, top - bottom);
    }
    if (left > 0) {
      cut(false, left - kerf.ticks(), bottom, top, length - left);
    }
    if (right < length) {
      cut(false, right, bottom, top, right - left);
    }
  }

  public List<SawCut> cuts() {
    return List.copyOf(cuts);
  }
}
