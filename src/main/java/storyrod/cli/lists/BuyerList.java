package storyrod.cli.lists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.planset.Stamp;

/**
 * Reads a list of buyers: {@code name}, and if wanted the {@code number} of the copy. Copies
 * without a number are counted on from the one before.
 */
public final class BuyerList {
  /** So many copies come from one list. */
  static final int MOST = 100_000;

  private static final String NAME = "name";
  private static final String NUMBER = "number";

  private final Columns columns;
  private final Values values;
  private final Diagnostics diagnostics;
  private final Map<Integer, Span> taken = new HashMap<>();
  private int last;

  private BuyerList(Columns columns, Diagnostics diagnostics) {
    this.columns = columns;
    this.diagnostics = diagnostics;
    this.values = new Values(storyrod.measure.Unit.MM, diagnostics);
  }

  /** The stamps in the order of the list; none where there are errors among the diagnostics. */
  public static List<Stamp> read(SourceText source, Diagnostics diagnostics) {
    List<Stamp> stamps =
        TableReader.read(source, diagnostics)
            .flatMap(table -> Columns.plain(table, NAME, List.of(NUMBER), diagnostics))
            .map(columns -> new BuyerList(columns, diagnostics).stamps())
            .orElse(List.of());
    return diagnostics.hasErrors() ? List.of() : stamps;
  }

  private List<Stamp> stamps() {
    List<Stamp> stamps = new ArrayList<>();
    for (List<Cell> row : columns.table().rows()) {
      Optional<String> name = name(columns.get(row, NAME));
      Optional<Integer> number = number(row);
      if (name.isPresent() && number.isPresent()) {
        stamps.add(new Stamp(name.get(), number.get()));
      }
    }
    return stamps;
  }

  private Optional<String> name(Cell cell) {
    return values.text(cell, NAME).filter(name -> isShort(name, cell));
  }

  private boolean isShort(String name, Cell cell) {
    boolean isShort = name.codePointCount(0, name.length()) <= Stamp.LONGEST;
    if (!isShort) {
      diagnostics.add(
          Diagnostic.error(
                  "name-too-long",
                  cell.at(),
                  "a name of more than %d characters does not fit under a page"
                      .formatted(Stamp.LONGEST))
              .hint("write it shorter"));
    }
    return isShort;
  }

  private Optional<Integer> number(List<Cell> row) {
    Optional<Cell> given = columns.find(row, NUMBER).filter(cell -> !cell.isEmpty());
    Optional<Integer> number =
        given.isEmpty()
            ? Optional.of(last + 1)
            : values.whole(given.get(), 1, MOST, "number the copies from 1");
    number.ifPresent(each -> take(each, given.orElse(columns.get(row, NAME)).at()));
    return number;
  }

  private void take(int number, Span at) {
    last = number;
    Span first = taken.putIfAbsent(number, at);
    if (first != null) {
      diagnostics.add(
          Diagnostic.error("number-twice", at, "two copies have the number " + number)
              .also(first, "the first of them")
              .hint("give each copy a number of its own, or leave the numbers out"));
    }
  }
}
