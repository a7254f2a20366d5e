package storyrod.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.cli.lists.ListedJob;
import storyrod.description.Diagnostic;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Missing;
import storyrod.layout.search.Layouts;

/** Stock that does not give all parts, and how much more of it would. */
record Shortage(ListedJob listed, List<Missing> missing) {
  private static final int MOST_TOLD = 5;
  private static final long STEPS = Budget.STEPS_A_SECOND / 2;

  Diagnostic told() {
    Missing first = missing.getFirst();
    Diagnostic fault =
        Diagnostic.error(
            "too-little-stock",
            listed.partsAt().get(first.blank()),
            "the stock that is available has no room for %d of '%s'"
                .formatted(first.count(), name(first)));
    for (Missing further : missing.stream().skip(1).limit(MOST_TOLD).toList()) {
      fault =
          fault.also(
              listed.partsAt().get(further.blank()),
              "and %d of '%s'".formatted(further.count(), name(further)));
    }
    return fault.hint(wayOut());
  }

  private String name(Missing missing) {
    return listed.job().blanks().get(missing.blank()).name();
  }

  /** The least further pieces with which every part finds room. */
  private String wayOut() {
    LayoutJob job = listed.job();
    LayoutPlan plan = Layouts.plan(withMore(job), Budget.ofSteps(STEPS));
    Map<String, Integer> more = new LinkedHashMap<>();
    plan.pieces().stream()
        .filter(piece -> piece.stock() >= job.stock().size())
        .map(piece -> job.stock().get(piece.stock() - job.stock().size()).name())
        .forEach(name -> more.merge(name, 1, Integer::sum));
    return more.entrySet().stream()
        .map(each -> "%d more of '%s'".formatted(each.getValue(), each.getKey()))
        .collect(Collectors.joining(" and ", "with ", " all parts find room"));
  }

  /** The job with what is there for nothing, and any number of further pieces at one price. */
  private static LayoutJob withMore(LayoutJob job) {
    List<Stock> stock = new ArrayList<>();
    job.stock().forEach(each -> stock.add(priced(each, each.available(), 0)));
    job.stock().forEach(each -> stock.add(priced(each, Stock.UNLIMITED, 1)));
    return new LayoutJob(job.blanks(), stock, job.kerf(), Least.COST);
  }

  private static Stock priced(Stock stock, int available, long cost) {
    return new Stock(
        stock.name(),
        stock.length(),
        stock.width(),
        available,
        cost,
        stock.trim(),
        stock.defects());
  }
}
