package storyrod.layout.search;

import java.util.List;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutReplay;
import storyrod.layout.length.Lengths;
import storyrod.layout.sheet.SheetLayouts;

/**
 * Lays out jobs of any kind; every plan is sawn again by {@link LayoutReplay} before it is told.
 */
public final class Layouts {
  private Layouts() {}

  /**
   * The best layouts of a job that are found within a budget. Equal jobs, steps and seeds give
   * equal plans, and more steps never a worse one.
   */
  public static LayoutPlan plan(LayoutJob job, Budget budget) {
    LayoutPlan plan =
        Lengths.fits(job) ? Lengths.plan(job, budget) : SheetLayouts.plan(job, budget);
    List<String> faults = LayoutReplay.faults(job, plan);
    if (!faults.isEmpty()) {
      throw new IllegalStateException("bug: layouts that cannot be sawn: " + faults);
    }
    return plan;
  }
}
