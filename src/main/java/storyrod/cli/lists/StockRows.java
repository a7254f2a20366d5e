package storyrod.cli.lists;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.measure.Length;

/** Reads the list of stock: {@code stock}, its sizes, and what else is known of it. */
final class StockRows {
  static final int MOST = 1_000_000;
  private static final String AVAILABLE = "available";
  private static final String COST = "cost";
  private static final String KERF = "kerf";
  private static final List<String> TRIMS =
      List.of("trim_left", "trim_right", "trim_bottom", "trim_top");
  private static final List<String> FURTHER =
      Stream.concat(Stream.of(AVAILABLE, COST, KERF), TRIMS.stream()).toList();

  /** A table saw's blade, common practice; a project is taken to have the same. */
  private static final Length USUAL_KERF = Length.inch(1, 8);

  private final Columns columns;
  private final Values values;

  private StockRows(Columns columns, Values values) {
    this.columns = columns;
    this.values = values;
  }

  /**
   * A row with the instance that it is for.
   *
   * @param stock with a cost of zero, for the costs of all rows are counted in one unit
   */
  record StockRow(Cell instance, Cell name, Stock stock, Length kerf, BigDecimal cost) {}

  /** The rows of a list, which has sizes across or only lengths. */
  record Stocks(List<StockRow> rows, boolean lengthsOnly, boolean hasInstances, boolean hasCosts) {}

  static Optional<Stocks> read(SourceText source, ListOptions options, Diagnostics diagnostics) {
    Optional<Columns> columns =
        TableReader.read(source, diagnostics)
            .flatMap(table -> Columns.of(table, Columns.STOCK, FURTHER, diagnostics));
    if (columns.isPresent() && options.least() == Least.COST && !columns.get().has(COST)) {
      Cell first = columns.get().table().head().getFirst();
      diagnostics.add(
          Diagnostic.error("missing-column", first.at(), "there is no column 'cost'")
              .hint("the least cost is wanted: add what a piece costs, or leave --least out"));
    }
    return columns.map(
        each -> new StockRows(each, new Values(options.unit(), diagnostics)).stocks());
  }

  private Stocks stocks() {
    boolean lengthsOnly = !columns.has(columns.across());
    List<StockRow> rows = columns.table().rows().stream().flatMap(this::stock).toList();
    return new Stocks(rows, lengthsOnly, columns.has(Columns.INSTANCE), columns.has(COST));
  }

  private Stream<StockRow> stock(List<Cell> row) {
    Cell cell = columns.get(row, Columns.STOCK);
    Optional<Cell> instance = columns.find(row, Columns.INSTANCE);
    Optional<String> known =
        instance.map(each -> values.text(each, Columns.INSTANCE)).orElse(Optional.of(""));
    Optional<String> name = values.text(cell, Columns.STOCK);
    Optional<Length> length = values.size(columns.get(row, columns.along()));
    Optional<Length> width =
        columns
            .find(row, columns.across())
            .map(values::size)
            .orElse(Optional.of(PartRows.NO_WIDTH));
    Optional<Integer> available = available(row);
    Optional<BigDecimal> cost =
        columns.find(row, COST).map(values::cost).orElse(Optional.of(BigDecimal.ZERO));
    Optional<Length> kerf =
        columns
            .find(row, KERF)
            .filter(each -> !each.isEmpty())
            .map(each -> values.allowance(each, KERF))
            .orElse(Optional.of(USUAL_KERF));
    Optional<Trim> trim = trim(row);
    if (Stream.of(known, name, length, width, available, cost, kerf, trim)
        .anyMatch(Optional::isEmpty)) {
      return Stream.empty();
    }
    Stock stock =
        new Stock(name.get(), length.get(), width.get(), available.get(), 0, trim.get(), List.of());
    return Stream.of(new StockRow(instance.orElse(cell), cell, stock, kerf.get(), cost.get()));
  }

  private Optional<Integer> available(List<Cell> row) {
    return columns
        .find(row, AVAILABLE)
        .filter(cell -> !cell.isEmpty())
        .map(cell -> values.whole(cell, Stock.UNLIMITED, MOST, "-1: as many as wanted"))
        .orElse(Optional.of(Stock.UNLIMITED));
  }

  private Optional<Trim> trim(List<Cell> row) {
    List<Length> trims =
        TRIMS.stream()
            .flatMap(
                column ->
                    columns
                        .find(row, column)
                        .map(cell -> values.allowance(cell, column))
                        .orElse(Optional.of(Length.ZERO))
                        .stream())
            .toList();
    return trims.size() == TRIMS.size()
        ? Optional.of(new Trim(trims.get(0), trims.get(1), trims.get(2), trims.get(3)))
        : Optional.empty();
  }
}
