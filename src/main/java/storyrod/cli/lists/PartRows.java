package storyrod.cli.lists;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.layout.LayoutJob.Blank;
import storyrod.measure.Length;

/**
 * Reads the list of parts: {@code item}, its sizes, and if wanted {@code quantity}, {@code grain}.
 */
final class PartRows {
  static final int MOST = 20_000;
  private static final String QUANTITY = "quantity";
  private static final String GRAIN = "grain";

  /** What stands for the size across where only lengths are listed. */
  static final Length NO_WIDTH = Length.mm(1);

  private final Columns columns;
  private final Values values;
  private final boolean turn;

  private PartRows(Columns columns, Values values, boolean turn) {
    this.columns = columns;
    this.values = values;
    this.turn = turn;
  }

  /** A row with the instance that it is for. */
  record PartRow(Cell instance, Blank blank, Span at) {}

  /** The rows of a list, which has sizes across or only lengths. */
  record Parts(List<PartRow> rows, boolean lengthsOnly, boolean hasInstances) {}

  static Optional<Parts> read(SourceText source, ListOptions options, Diagnostics diagnostics) {
    return TableReader.read(source, diagnostics)
        .flatMap(table -> Columns.of(table, Columns.ITEM, List.of(QUANTITY, GRAIN), diagnostics))
        .map(
            columns -> {
              Values values = new Values(options.unit(), diagnostics);
              return new PartRows(columns, values, options.turn()).parts();
            });
  }

  private Parts parts() {
    boolean lengthsOnly = !columns.has(columns.across());
    List<PartRow> rows = columns.table().rows().stream().flatMap(this::part).toList();
    return new Parts(rows, lengthsOnly, columns.has(Columns.INSTANCE));
  }

  private Stream<PartRow> part(List<Cell> row) {
    Cell item = columns.get(row, Columns.ITEM);
    Optional<Cell> instance = columns.find(row, Columns.INSTANCE);
    Optional<String> known =
        instance.map(cell -> values.text(cell, Columns.INSTANCE)).orElse(Optional.of(""));
    Optional<String> name = values.text(item, Columns.ITEM);
    Optional<Length> length = values.size(columns.get(row, columns.along()));
    Optional<Length> width =
        columns.find(row, columns.across()).map(values::size).orElse(Optional.of(NO_WIDTH));
    Optional<Integer> count = count(row);
    Optional<Integer> grain = grain(row);
    if (Stream.of(known, name, length, width, count, grain).anyMatch(Optional::isEmpty)) {
      return Stream.empty();
    }
    boolean mayTurn = turn && grain.get() == 0 && columns.has(columns.across());
    Blank blank = new Blank(name.get(), length.get(), width.get(), count.get(), mayTurn);
    return Stream.of(new PartRow(instance.orElse(item), blank, item.at()));
  }

  private Optional<Integer> count(List<Cell> row) {
    return given(row, QUANTITY)
        .map(cell -> values.whole(cell, 1, MOST, "take a row of none out; part a longer list"))
        .orElse(Optional.of(1));
  }

  private Optional<Integer> grain(List<Cell> row) {
    return given(row, GRAIN)
        .map(cell -> values.whole(cell, 0, 1, "1: its grain runs along; 0: it may be turned"))
        .orElse(Optional.of(0));
  }

  private Optional<Cell> given(List<Cell> row, String column) {
    return columns.find(row, column).filter(cell -> !cell.isEmpty());
  }
}
