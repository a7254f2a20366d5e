package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Schedule;
import storyrod.description.Diagnostic;
import storyrod.description.Severity;
import storyrod.measure.Rational;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlan.BoardNeed;
import storyrod.stock.StockPlan.HardwareNeed;
import storyrod.stock.StockPlan.SheetPlan;
import storyrod.words.Words;

/**
 * Variants of one piece side by side: what has to be bought, what it costs and weighs, how long it
 * takes, and what was found.
 *
 * @param rows one for each figure, with one cell for each variant
 */
public record Comparison(List<String> variants, List<Row> rows) {
  public Comparison {
    variants = List.copyOf(variants);
    rows = List.copyOf(rows);
  }

  /** What one variant came to; it has no plan if there are errors among what was found. */
  public record Variant(String name, Optional<Plan> plan, List<Diagnostic> findings) {
    public Variant {
      findings = List.copyOf(findings);
    }
  }

  /** What was planned. */
  public record Plan(Piece piece, StockPlan stock, BuildPlan build) {}

  /**
   * A figure of all variants.
   *
   * @param key names it for programs
   * @param label names it for a reader, with its unit
   * @param cells empty where a figure is not known
   */
  public record Row(String key, String label, List<String> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** The variants in the order given, labelled in one language. */
  public static Comparison of(List<Variant> variants, Words words) {
    List<Row> rows = new ArrayList<>();
    for (Figure figure : Figure.values()) {
      List<String> cells = variants.stream().map(figure.of).toList();
      rows.add(new Row(figure.key(), words.say("compare." + figure.key()), cells));
    }
    return new Comparison(variants.stream().map(Variant::name).toList(), rows);
  }

  private enum Figure {
    PARTS(planned(plan -> count(plan.piece().wood().size()))),
    SHEETS(planned(plan -> count(sheets(plan)))),
    BOARD_FEET(planned(plan -> Optional.of(Texts.decimal(boardFeet(plan), 1)))),
    COST(planned(Comparison::cost)),
    WEIGHT(planned(Comparison::kilograms)),
    STEPS(planned(plan -> count(plan.build().steps().size()))),
    WORKING_HOURS(
        planned(plan -> hours(plan.build().steps().stream().mapToInt(Step::minutes).sum()))),
    WAITING_HOURS(
        planned(plan -> hours(plan.build().steps().stream().mapToInt(Step::waitMinutes).sum()))),
    DAYS(
        planned(
            plan -> count(Schedule.of(plan.build(), plan.piece().description().shop()).days()))),
    ERRORS(found(Severity.ERROR)),
    WARNINGS(found(Severity.WARNING)),
    ADVICE(found(Severity.ADVICE));

    private final Function<Variant, String> of;

    Figure(Function<Variant, String> of) {
      this.of = of;
    }

    String key() {
      return Words.hyphenated(this);
    }
  }

  private static Function<Variant, String> planned(Function<Plan, Optional<String>> figure) {
    return variant -> variant.plan().flatMap(figure).orElse("");
  }

  private static Function<Variant, String> found(Severity severity) {
    return variant ->
        String.valueOf(
            variant.findings().stream().filter(each -> each.severity() == severity).count());
  }

  private static Optional<String> count(int number) {
    return Optional.of(String.valueOf(number));
  }

  private static int sheets(Plan plan) {
    return Shopping.sheets(plan.stock()).mapToInt(SheetPlan::bought).sum();
  }

  private static Rational boardFeet(Plan plan) {
    return plan.stock().boards().stream()
        .map(BoardNeed::toBuy)
        .reduce(Rational.ZERO, Rational::plus);
  }

  /** The cost of everything to buy; none if the price of anything is not known. */
  private static Optional<String> cost(Plan plan) {
    List<Optional<Rational>> costs =
        Stream.of(
                plan.stock().boards().stream().map(BoardNeed::cost),
                Shopping.sheets(plan.stock()).map(SheetPlan::cost),
                plan.stock().hardware().stream().map(HardwareNeed::cost))
            .flatMap(each -> each)
            .toList();
    boolean complete = costs.stream().allMatch(Optional::isPresent);
    Rational sum = costs.stream().flatMap(Optional::stream).reduce(Rational.ZERO, Rational::plus);
    return Optional.of(Texts.decimal(sum, 2)).filter(all -> complete);
  }

  private static Optional<String> kilograms(Plan plan) {
    return Figures.of(plan.piece()).massKg().map(kg -> String.format(Locale.ROOT, "%.1f", kg));
  }

  private static Optional<String> hours(int minutes) {
    return Optional.of(Texts.decimal(Rational.of(minutes, 60), 1));
  }

  /** A table for the screen, its columns aligned, each line ended by {@code \n}. */
  public String text() {
    List<List<String>> lines = new ArrayList<>();
    lines.add(line("", variants));
    rows.forEach(row -> lines.add(line(row.label(), row.cells())));
    int columns = lines.getFirst().size();
    int[] widths = new int[columns];
    for (List<String> line : lines) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], line.get(i).length());
      }
    }
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(aligned(line, widths)).append('\n'));
    return text.toString();
  }

  private static List<String> line(String label, List<String> cells) {
    Stream<String> shown = cells.stream().map(cell -> cell.isEmpty() ? "-" : cell);
    return Stream.concat(Stream.of(label), shown).toList();
  }

  private static String aligned(List<String> line, int[] widths) {
    StringBuilder text = new StringBuilder(line.getFirst());
    text.append(" ".repeat(widths[0] - line.getFirst().length()));
    for (int i = 1; i < widths.length; i++) {
      text.append(" ".repeat(widths[i] - line.get(i).length() + 2)).append(line.get(i));
    }
    return text.toString();
  }

  /** A table for a spreadsheet: a row for each variant, a column for each figure. */
  public String csv() {
    String[] header =
        Stream.concat(Stream.of("variant"), rows.stream().map(Row::key)).toArray(String[]::new);
    Csv csv = new Csv(header);
    for (int i = 0; i < variants.size(); i++) {
      int column = i;
      csv.row(
          Stream.concat(
                  Stream.of(variants.get(i)), rows.stream().map(row -> row.cells().get(column)))
              .toList());
    }
    return new String(csv.bytes(), java.nio.charset.StandardCharsets.UTF_8);
  }
}
