package storyrod.layout.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Missing;
import storyrod.layout.LayoutPlan.Sawn;

/** Lays out jobs in which length and width matter. */
public final class SheetLayouts {
  private final LayoutJob job;
  private final Enlarged sizes;
  private final List<Deque<Integer>> blanks = new ArrayList<>();

  private SheetLayouts(LayoutJob job) {
    this.job = job;
    this.sizes = new Enlarged(job);
    for (Enlarged.Type type : sizes.types) {
      Deque<Integer> each = new ArrayDeque<>();
      type.blanks().forEach((blank, count) -> addTimes(each, blank, count));
      blanks.add(each);
    }
  }

  private static void addTimes(Deque<Integer> to, int blank, int count) {
    for (int i = 0; i < count; i++) {
      to.add(blank);
    }
  }

  /**
   * The best layouts of a job that are found within a budget. Equal jobs, steps and seeds give
   * equal plans, and more steps never a worse one.
   */
  public static LayoutPlan plan(LayoutJob job, Budget budget) {
    return new SheetLayouts(job).plan(budget);
  }

  private LayoutPlan plan(Budget budget) {
    Search search = new Search(sizes, budget);
    Found found = search.run();
    List<Sawn> pieces =
        found.sheets().stream()
            .sorted(
                Comparator.comparingInt(Found.Laid::kind)
                    .thenComparing(each -> -each.tree().used()))
            .map(each -> CutSequence.of(sizes, each, job, type -> blanks.get(type).remove()))
            .toList();
    return new LayoutPlan(pieces, missing(), found.value(), bound(search, found));
  }

  /** Where the stock does not give all parts, what they take of more of the same. */
  private long bound(Search search, Found found) {
    return found.isComplete()
        ? search.bound()
        : new LayoutBounds(new Enlarged(job.withoutLimits())).best();
  }

  /** What is left of the blanks when all sheets are sawn. */
  private List<Missing> missing() {
    int[] counts = new int[job.blanks().size()];
    blanks.forEach(type -> type.forEach(blank -> counts[blank]++));
    sizes.tooLarge.forEach(blank -> counts[blank] = job.blanks().get(blank).count());
    List<Missing> missing = new ArrayList<>();
    for (int blank = 0; blank < counts.length; blank++) {
      if (counts[blank] > 0) {
        missing.add(new Missing(blank, counts[blank], !sizes.tooLarge.contains(blank)));
      }
    }
    return missing;
  }
}
