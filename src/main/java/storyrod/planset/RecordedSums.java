package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.build.RecordSteps;
import storyrod.description.RecordEntry;
import storyrod.description.RecordEntry.Paid;
import storyrod.description.RecordEntry.Spent;
import storyrod.measure.Rational;
import storyrod.planset.Recorded.Sum;
import storyrod.planset.Recorded.Sums;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlan.BoardNeed;
import storyrod.stock.StockPlan.HardwareNeed;
import storyrod.stock.StockPlan.SheetPlan;
import storyrod.stock.SupplyNeed;

/** Hours by stage and costs by group, planned beside done. */
record RecordedSums(PlanSet set, Texts texts) {
  private static final int MINUTES = 60;

  /** A planned and a recorded amount, each if it is known. */
  private record Amounts(Optional<Rational> planned, Optional<Rational> done, String say) {
    /** The same as printed, so that a reader who adds up or takes off finds what stands there. */
    Amounts rounded(int places) {
      return new Amounts(
          planned.map(each -> Texts.rounded(each, places)),
          done.map(each -> Texts.rounded(each, places)),
          say);
    }

    /** Whether it was planned, and nobody has written down what it came to. */
    boolean isOpen() {
      return planned.isPresent() && done.isEmpty();
    }
  }

  Sums hours() {
    Map<String, Amounts> rows = new LinkedHashMap<>();
    stages().forEach((stage, minutes) -> rows.put(title(stage), hours(stage, minutes)));
    return sums(texts.say("shopping.total"), rows, 1);
  }

  /** The minutes of each stage, also where it comes twice. */
  private Map<Stage, Integer> stages() {
    Map<Stage, Integer> minutes = new LinkedHashMap<>();
    for (Step step : set.build().steps()) {
      minutes.merge(step.stage(), step.minutes(), Integer::sum);
    }
    return minutes;
  }

  private String title(Stage stage) {
    return StepPages.stageTitle(stage, texts);
  }

  private Amounts hours(Stage stage, int minutes) {
    Predicate<Spent> its = spent -> RecordSteps.is(stage, spent.stage().value());
    List<Spent> spent = record().hours().stream().filter(its).toList();
    return new Amounts(
        Optional.of(Rational.of(minutes, MINUTES)),
        sum(spent.stream().map(Spent::hours)),
        said(spent.stream().map(Spent::say)));
  }

  Sums costs() {
    Map<String, Amounts> rows = new LinkedHashMap<>();
    Map<String, Optional<Rational>> planned = plannedCosts(set.stock());
    for (String group : RecordEntry.GROUPS) {
      List<Paid> paid =
          record().paid().stream().filter(each -> each.group().equals(group)).toList();
      Optional<Rational> plan = planned.getOrDefault(group, Optional.empty());
      if (plan.isPresent() || !paid.isEmpty()) {
        Optional<Rational> done = sum(paid.stream().map(Paid::amount));
        String say = said(paid.stream().map(Paid::say));
        rows.put(texts.say("record.group." + group), new Amounts(plan, done, say));
      }
    }
    return sums(costTotal(), rows, 2);
  }

  /** With the currency, if it is known. */
  private String costTotal() {
    return set.piece()
        .description()
        .about()
        .currency()
        .map(currency -> texts.say("shopping.total.in", currency))
        .orElseGet(() -> texts.say("shopping.total"));
  }

  /** What the shopping list comes to, group by group; lines without a cost count nothing. */
  private static Map<String, Optional<Rational>> plannedCosts(StockPlan stock) {
    Map<String, Optional<Rational>> costs = new LinkedHashMap<>();
    costs.put("boards", known(stock.boards().stream().map(BoardNeed::cost)));
    costs.put("sheets", known(Shopping.sheets(stock).map(SheetPlan::cost)));
    costs.put("hardware", known(stock.hardware().stream().map(HardwareNeed::cost)));
    costs.put(
        "supplies",
        known(
            Stream.concat(
                stock.supplies().needs().stream().map(SupplyNeed::cost),
                Stream.of(stock.supplies().sandpaperCost()))));
    return costs;
  }

  private static Optional<Rational> known(Stream<Optional<Rational>> costs) {
    return sum(costs.flatMap(Optional::stream).map(Texts::cents));
  }

  private static Optional<Rational> sum(Stream<Rational> amounts) {
    return amounts.reduce(Rational::plus);
  }

  private static String said(Stream<Optional<String>> words) {
    return words.flatMap(Optional::stream).collect(Collectors.joining(" "));
  }

  private Sums sums(String title, Map<String, Amounts> rows, int places) {
    rows.replaceAll((name, each) -> each.rounded(places));
    List<Amounts> all = List.copyOf(rows.values());
    Optional<Rational> planned = sum(all.stream().flatMap(each -> each.planned().stream()));
    Optional<Rational> done = sum(all.stream().flatMap(each -> each.done().stream()));
    return new Sums(
        rows.entrySet().stream().map(each -> row(each.getKey(), each.getValue(), places)).toList(),
        total(row(title, new Amounts(planned, done, ""), places), all),
        done.isPresent());
  }

  /** The total, which says that it is not the last while some rows are open. */
  private Sum total(Sum sum, List<Amounts> all) {
    String soFar = sum.done().isEmpty() ? "" : texts.say("record.so-far");
    return all.stream().anyMatch(Amounts::isOpen)
        ? new Sum(sum.title(), sum.planned(), sum.done(), "", soFar)
        : sum;
  }

  private Sum row(String title, Amounts amounts, int places) {
    return new Sum(
        title,
        amounts.planned().map(each -> texts.figures(each, places)).orElse(""),
        amounts.done().map(each -> texts.figures(each, places)).orElse(""),
        new Differences(texts).of(amounts.planned(), amounts.done(), places),
        amounts.say());
  }

  private RecordEntry record() {
    return set.piece().description().record();
  }
}
