package storyrod.cli;

import java.math.BigDecimal;
import java.util.Locale;
import storyrod.cli.lists.ListedJob;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutPlan;

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
  String told() {
    String name = listed.name().isEmpty() ? "" : listed.name() + ": ";
    return name + (isComplete() ? found() : "the stock does not give all parts");
  }

  private String found() {
    boolean byCost = listed.job().least() == Least.COST;
    String pieces = plan.pieces().size() == 1 ? "1 piece" : plan.pieces().size() + " pieces";
    String value = byCost ? "%s for %s".formatted(pieces, money(cost())) : pieces;
    return plan.proved()
        ? "%s; %s is impossible".formatted(value, byCost ? "less" : "fewer")
        : "%s; at least %s needed"
            .formatted(
                value,
                inUnits(plan.lowerBound()) + (plan.lowerBound() == 1 && !byCost ? " is" : " are"));
  }
}
