package storyrod.layout;

/** Looks for the best layout of one job within a budget. */
final class Search {
  private final Enlarged sizes;
  private final StepCount steps;
  private final Bench bench;
  private final long bound;

  Search(Enlarged sizes, Budget budget) {
    this.sizes = sizes;
    steps = new StepCount(budget);
    bench = new Bench(sizes, new Chance(budget.seed()), steps);
    bound = new LayoutBounds(sizes).best();
  }

  /** The least that any layout can take. */
  long bound() {
    return bound;
  }

  Found run() {
    if (sizes.types.isEmpty()) {
      return new Found(java.util.List.of(), new int[0], 0);
    }
    Found first = FirstLayout.of(bench, steps);
    RuinAndRecreate search = new RuinAndRecreate(bench, steps, first);
    search.run(bound, Long.MAX_VALUE);
    return search.best();
  }
}
