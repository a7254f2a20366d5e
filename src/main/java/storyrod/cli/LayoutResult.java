package storyrod.cli;

import java.math.BigDecimal;
import java.util.Locale;
import storyrod.cli.lists.ListedJob;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutPlan;
import storyrod.words.Words;

/** What came of one instance. */
record LayoutResult(ListedJob listed, LayoutPlan plan, double seconds) {
  boolean isComplete() {
    return plan.missing().isEmpty();
  }

  /**
   * The row of the summary: pieces, cost and bound are empty where the stock does not give all
   * parts, the cost also where no costs are listed.
   */
  String row() {
    return String.join(
        ",",
        quoted(listed.name()),
        isComplete() ? Integer.toString(plan.pieces().size()) : "",
        isComplete() && listed.costPlaces() >= 0 ? money(cost()) : "",
        isComplete() ? inUnits(plan.lowerBound()) : "",
        plan.proved() ? "1" : "0",
        String.format(Locale.ROOT, "%.3f", seconds));
  }

  private static String quoted(String name) {
    return name.chars().anyMatch(c -> ",\"\r\n".indexOf(c) >= 0)
        ? '"' + name.replace("\"", "\"\"") + '"'
        : name;
  }

  private long cost() {
    LayoutJob job = listed.job();
    return plan.pieces().stream().mapToLong(piece -> job.stock().get(piece.stock()).cost()).sum();
  }

  private String inUnits(long value) {
    return listed.job().least() == Least.COST ? money(value) : Long.toString(value);
  }

  private String money(long cost) {
    return BigDecimal.valueOf(cost, Math.max(0, listed.costPlaces())).toPlainString();
  }

  /** What the maker at the keyboard is told. */
  String told(Words words) {
    String name = listed.name().isEmpty() ? "" : listed.name() + ": ";
    return name + (isComplete() ? found(words) : words.say("told.missing"));
  }

  private String found(Words words) {
    boolean byCost = listed.job().least() == Least.COST;
    int count = plan.pieces().size();
    String pieces = count == 1 ? words.say("told.piece") : words.say("told.pieces", count);
    String value = byCost ? words.say("told.for", pieces, words.figures(money(cost()))) : pieces;
    if (plan.proved()) {
      return words.say(byCost ? "told.less" : "told.fewer", value);
    }
    boolean one = plan.lowerBound() == 1 && !byCost;
    String least = words.figures(inUnits(plan.lowerBound()));
    return words.say(one ? "told.at-least-one" : "told.at-least", value, least);
  }
}
