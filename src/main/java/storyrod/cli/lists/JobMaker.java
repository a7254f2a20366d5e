package storyrod.cli.lists;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.cli.lists.PartRows.PartRow;
import storyrod.cli.lists.StockRows.StockRow;
import storyrod.cli.lists.StockRows.Stocks;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Stock;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/** Makes the rows of one instance a job, and reports what no layout could mend. */
final class JobMaker {
  private static final int FINEST = 64;

  private final ListOptions options;
  private final Diagnostics diagnostics;
  private final LengthFormat format;
  private final int costPlaces;

  JobMaker(ListOptions options, Stocks stocks, Diagnostics diagnostics) {
    this.options = options;
    this.diagnostics = diagnostics;
    this.format = new LengthFormat(options.unit(), FINEST);
    int places = stocks.rows().stream().mapToInt(row -> row.cost().scale()).max().orElse(0);
    this.costPlaces = stocks.hasCosts() ? Math.max(0, places) : ListedJob.NO_COSTS;
  }

  Optional<ListedJob> job(String name, List<PartRow> parts, List<StockRow> rows) {
    List<Stock> stock = rows.stream().map(this::withCost).toList();
    Length kerf = rows.getFirst().kerf();
    List<Blank> blanks = parts.stream().map(part -> asItFits(part.blank(), stock)).toList();
    LayoutJob job = new LayoutJob(blanks, stock, kerf, options.least());
    List<Diagnostic> faults =
        Stream.of(
                tooMany(parts),
                noneAvailable(rows),
                rows.stream().flatMap(row -> trims(row).stream()),
                rows.stream().flatMap(row -> otherKerf(row, rows.getFirst()).stream()))
            .flatMap(each -> each)
            .toList();
    diagnostics.addAll(
        faults.isEmpty()
            ? parts.stream().flatMap(part -> tooLarge(part, rows).stream()).toList()
            : faults);
    return Optional.of(
        new ListedJob(
            name,
            job,
            lengthsOnly(job),
            costPlaces,
            parts.stream().map(PartRow::at).toList(),
            rows.stream().map(row -> row.name().at()).toList()));
  }

  private Stock withCost(StockRow row) {
    Stock stock = row.stock();
    long cost =
        costPlaces == ListedJob.NO_COSTS
            ? 1
            : row.cost().movePointRight(costPlaces).longValueExact();
    return new Stock(
        stock.name(),
        stock.length(),
        stock.width(),
        stock.available(),
        cost,
        stock.trim(),
        stock.defects());
  }

  private static boolean lengthsOnly(LayoutJob job) {
    Length width = job.stock().getFirst().width();
    return job.blanks().stream().allMatch(each -> each.width().equals(width) && !each.mayTurn())
        && job.stock().stream()
            .allMatch(
                each ->
                    each.width().equals(width)
                        && each.trim().bottom().isZero()
                        && each.trim().top().isZero());
  }

  /** A part that fits nowhere turned may as well not be turned. */
  private static Blank asItFits(Blank blank, List<Stock> stock) {
    boolean mayTurn =
        blank.mayTurn()
            && stock.stream().anyMatch(each -> fits(blank.width(), blank.length(), each));
    return new Blank(blank.name(), blank.length(), blank.width(), blank.count(), mayTurn);
  }

  private static Stream<Diagnostic> tooMany(List<PartRow> parts) {
    int count = 0;
    for (PartRow part : parts) {
      count += part.blank().count();
      if (count > PartRows.MOST) {
        return Stream.of(
            Diagnostic.error(
                    "too-many-parts",
                    part.at(),
                    "more than %d parts at a time".formatted(PartRows.MOST))
                .hint("lay them out in several runs, sorted by size"));
      }
    }
    return Stream.empty();
  }

  private static Stream<Diagnostic> noneAvailable(List<StockRow> rows) {
    return rows.stream().anyMatch(row -> row.stock().available() != 0)
        ? Stream.empty()
        : Stream.of(
            Diagnostic.error(
                    "too-little-stock",
                    rows.getFirst().name().at(),
                    "none of the stock is available")
                .hint("write how many pieces there are, or -1 for what can be bought"));
  }

  private static Optional<Diagnostic> trims(StockRow row) {
    boolean isLeft =
        usableLength(row.stock()).isPositive() && usableWidth(row.stock()).isPositive();
    return isLeft
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "trim-too-large",
                    row.name().at(),
                    "nothing is left of '%s' when its edges are trimmed"
                        .formatted(row.stock().name()))
                .hint("trim less, or take the row out"));
  }

  private Optional<Diagnostic> otherKerf(StockRow row, StockRow first) {
    return row.kerf().equals(first.kerf())
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "kerfs-differ",
                    row.name().at(),
                    "a kerf of %s, but %s above"
                        .formatted(
                            format.formatWithUnit(row.kerf()), format.formatWithUnit(first.kerf())))
                .also(first.name().at(), "the first kerf")
                .hint("one blade saws one list: write the same kerf in every row"));
  }

  private static Length usableLength(Stock stock) {
    return stock.length().minus(stock.trim().left()).minus(stock.trim().right());
  }

  private static Length usableWidth(Stock stock) {
    return stock.width().minus(stock.trim().bottom()).minus(stock.trim().top());
  }

  private Optional<Diagnostic> tooLarge(PartRow part, List<StockRow> rows) {
    List<Stock> there =
        rows.stream().map(StockRow::stock).filter(stock -> stock.available() != 0).toList();
    Blank blank = part.blank();
    boolean fits = there.stream().anyMatch(stock -> fits(blank, stock, blank.mayTurn()));
    if (fits) {
      return Optional.empty();
    }
    Diagnostic fault =
        Diagnostic.error("part-larger-than-stock", part.at(), tooLarge(blank, there))
            .hint("make it smaller, make it of two parts, or get larger stock");
    boolean fitsTurned = there.stream().anyMatch(stock -> fits(blank, stock, true));
    return Optional.of(fitsTurned ? fault.hint("turned it would fit: " + howToTurn()) : fault);
  }

  private String howToTurn() {
    return options.turn() ? "write 0 for its grain if it may lie so" : "leave --turn on";
  }

  private String tooLarge(Blank blank, List<Stock> there) {
    String part = "'%s' is %s".formatted(blank.name(), sizes(blank.length(), blank.width()));
    return there.stream()
        .max(
            java.util.Comparator.comparing(JobMaker::usableLength)
                .thenComparing(JobMaker::usableWidth))
        .map(
            stock ->
                "%s, but no stock can give it; the longest, '%s', gives at most %s"
                    .formatted(part, stock.name(), sizes(usableLength(stock), usableWidth(stock))))
        .orElse(part + ", but no stock is there");
  }

  private String sizes(Length length, Length width) {
    return format.format(length) + " x " + format.formatWithUnit(width);
  }

  private static boolean fits(Blank blank, Stock stock, boolean turned) {
    return fits(blank.length(), blank.width(), stock)
        || turned && fits(blank.width(), blank.length(), stock);
  }

  private static boolean fits(Length length, Length width, Stock stock) {
    return !length.isLongerThan(usableLength(stock)) && !width.isLongerThan(usableWidth(stock));
  }
}
