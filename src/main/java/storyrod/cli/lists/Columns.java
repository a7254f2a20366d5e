package storyrod.cli.lists;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Nearest;
import storyrod.description.Span;

/** Which column of a list holds what; the head decides the order. */
final class Columns {
  static final String INSTANCE = "instance";
  static final String ITEM = "item";
  static final String STOCK = "stock";
  static final String LENGTH = "length";
  static final String WIDTH = "width";
  static final String HEIGHT = "height";

  private static final String ADD = "add it to the first line and to every row";

  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final Table table;

  private Columns(Table table) {
    this.table = table;
  }

  /**
   * The columns of a list, or nothing and the reasons.
   *
   * @param name the column that says what a row is
   * @param further the columns that may be there beside it and the sizes
   */
  static Optional<Columns> of(
      Table table, String name, List<String> further, Diagnostics diagnostics) {
    Set<String> known = new LinkedHashSet<>(List.of(INSTANCE, name, LENGTH, WIDTH, HEIGHT));
    known.addAll(further);
    Columns columns = new Columns(table);
    Diagnostics found = new Diagnostics();
    List<String> words = table.head().stream().map(Columns::word).toList();
    if (words.stream().noneMatch(known::contains)) {
      found.add(noHead(table, name + ",width,height"));
    } else if (words.contains(other(name)) && !words.contains(name)) {
      found.add(columns.missing(name).hint("give the list of parts first, the stock second"));
    } else {
      table.head().forEach(cell -> columns.take(cell, known, found));
      columns.fault(name).ifPresent(found::add);
    }
    diagnostics.addAll(found.sorted());
    return found.hasErrors() ? Optional.empty() : Optional.of(columns);
  }

  /** The columns of a list without sizes, or nothing and the reasons. */
  static Optional<Columns> plain(
      Table table, String name, List<String> further, Diagnostics diagnostics) {
    Set<String> known = new LinkedHashSet<>(List.of(name));
    known.addAll(further);
    Columns columns = new Columns(table);
    Diagnostics found = new Diagnostics();
    if (table.head().stream().map(Columns::word).noneMatch(known::contains)) {
      found.add(noHead(table, String.join(",", known)));
    } else {
      table.head().forEach(cell -> columns.take(cell, known, found));
      if (!columns.has(name)) {
        found.add(columns.missing(name).hint(ADD));
      }
    }
    diagnostics.addAll(found.sorted());
    return found.hasErrors() ? Optional.empty() : Optional.of(columns);
  }

  private static String word(Cell cell) {
    return cell.text().toLowerCase(java.util.Locale.ROOT).replace(' ', '_').replace('-', '_');
  }

  private static Diagnostic noHead(Table table, String line) {
    Cell first = table.head().getFirst();
    return Diagnostic.error(
            "no-head",
            first.at(),
            "expected the names of the columns in the first line, found '%s'"
                .formatted(first.text()))
        .hint("put a line such as `%s` above the rows".formatted(line));
  }

  private void take(Cell cell, Set<String> known, Diagnostics found) {
    String word = word(cell);
    if (!known.contains(word)) {
      found.add(unknown(cell, known));
    } else if (places.containsKey(word)) {
      Span first = table.head().get(places.get(word)).at();
      found.add(
          Diagnostic.error("column-twice", cell.at(), "two columns are called '%s'".formatted(word))
              .also(first, "the first of them")
              .hint("rename one, or take it out"));
    } else {
      places.put(word, table.head().indexOf(cell));
    }
  }

  private static Diagnostic unknown(Cell cell, Set<String> known) {
    Diagnostic unknown =
        Diagnostic.error("unknown-column", cell.at(), "no column is called '" + cell.text() + "'");
    return Nearest.to(word(cell), known)
        .map(near -> unknown.hint("did you mean `" + near + "`?"))
        .orElseGet(() -> unknown.hint("take it out; the columns are " + String.join(", ", known)));
  }

  private Optional<Diagnostic> fault(String name) {
    if (has(LENGTH) && has(HEIGHT)) {
      Cell height = table.head().get(places.get(HEIGHT));
      return Optional.of(
          Diagnostic.error("unknown-column", height.at(), "a 'height' beside a 'length'")
              .hint("call the sizes `length` and `width`, or `width` and `height`"));
    }
    return Stream.of(name, along())
        .filter(each -> !has(each))
        .findFirst()
        .map(each -> missing(each).hint(ADD));
  }

  private Diagnostic missing(String column) {
    return Diagnostic.error(
        "missing-column",
        table.head().getFirst().at(),
        "there is no column '%s'".formatted(column));
  }

  private static String other(String name) {
    return name.equals(ITEM) ? STOCK : ITEM;
  }

  boolean has(String column) {
    return places.containsKey(column);
  }

  /** The column of the sizes along the stock: {@code length}, or else {@code width}. */
  String along() {
    return has(LENGTH) ? LENGTH : WIDTH;
  }

  /** The column of the sizes across the stock, which a list of lengths does without. */
  String across() {
    return has(LENGTH) ? WIDTH : HEIGHT;
  }

  Table table() {
    return table;
  }

  /** The cell of a row, if the list has the column. */
  Optional<Cell> find(List<Cell> row, String column) {
    return Optional.ofNullable(places.get(column)).map(row::get);
  }

  Cell get(List<Cell> row, String column) {
    return row.get(places.get(column));
  }
}
