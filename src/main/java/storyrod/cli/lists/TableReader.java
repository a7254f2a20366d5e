package storyrod.cli.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Span;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** Reads comma-separated values as RFC 4180 has them, with either end of line. */
final class TableReader {
  private static final CsvFactory CSV =
      CsvFactory.builder()
          .enable(CsvReadFeature.WRAP_AS_ARRAY)
          .enable(CsvReadFeature.SKIP_EMPTY_LINES)
          .build();

  private static final String OTHER_SEPARATORS = ";\t|";
  private static final List<String> SEPARATOR_WORDS = List.of("semicolons", "tabs", "bars");

  private final SourceText source;
  private final Diagnostics diagnostics;

  private TableReader(SourceText source, Diagnostics diagnostics) {
    this.source = source;
    this.diagnostics = diagnostics;
  }

  /** The list, or nothing and the reasons. */
  static Optional<Table> read(SourceText source, Diagnostics diagnostics) {
    return new TableReader(source, diagnostics).read();
  }

  private Optional<Table> read() {
    if (source.text().isBlank()) {
      return fault(
          Diagnostic.error("empty-list", Span.startOf(source), "there is nothing in this list")
              .hint("write the names of the columns first, then a line for each entry"));
    }
    Optional<Diagnostic> foreign = noText().or(this::otherSeparator);
    if (foreign.isPresent()) {
      return fault(foreign.get());
    }
    return rows().flatMap(this::table);
  }

  private Optional<Table> table(List<List<Cell>> rows) {
    List<Cell> head = rows.getFirst();
    List<List<Cell>> filled =
        rows.stream()
            .skip(1)
            .filter(row -> !row.stream().allMatch(Cell::isEmpty))
            .filter(row -> hasLengthOf(head, row))
            .toList();
    if (rows.size() > 1 && filled.isEmpty() && diagnostics.hasErrors()) {
      return Optional.empty();
    }
    if (filled.isEmpty()) {
      return fault(
          Diagnostic.error("empty-list", head.getFirst().at(), "the list has no rows, only a head")
              .hint("write a line for each part or stock below the names of the columns"));
    }
    return Optional.of(new Table(source, head, filled));
  }

  private boolean hasLengthOf(List<Cell> head, List<Cell> row) {
    if (row.size() == head.size()) {
      return true;
    }
    Cell place = row.get(Math.min(row.size() - 1, head.size()));
    Diagnostic fault =
        Diagnostic.error(
                "row-length",
                place.at(),
                "expected %d cells as in the head, found %d".formatted(head.size(), row.size()))
            .also(head.getFirst().at(), "the head");
    diagnostics.add(
        row.size() > head.size()
            ? fault.hint("write a decimal with a point, and a text with a comma in quotes")
            : fault.hint("write a comma for every cell, also for an empty one"));
    return false;
  }

  /** A character that only other files have, as those of a spreadsheet's own kind. */
  private Optional<Diagnostic> noText() {
    return IntStream.range(0, source.text().length())
        .filter(i -> source.text().charAt(i) < ' ' && "\t\n\r".indexOf(source.text().charAt(i)) < 0)
        .mapToObj(
            i ->
                Diagnostic.error(
                        "not-a-list",
                        new Span(source, i, i),
                        "a character that no text should have")
                    .hint("save the list as CSV in UTF-8; is this the right file?"))
        .findFirst();
  }

  /** What parts the columns, where the first line holds no comma but another such sign. */
  private Optional<Diagnostic> otherSeparator() {
    int start = source.text().length() - source.text().stripLeading().length();
    int end = source.text().indexOf('\n', start);
    String first = source.text().substring(start, end < 0 ? source.text().length() : end);
    for (int i = 0; i < SEPARATOR_WORDS.size() && first.indexOf(',') < 0; i++) {
      int at = first.indexOf(OTHER_SEPARATORS.charAt(i));
      if (at >= 0) {
        return Optional.of(otherSeparator(start + at, SEPARATOR_WORDS.get(i)));
      }
    }
    return Optional.empty();
  }

  private Diagnostic otherSeparator(int at, String word) {
    return Diagnostic.error(
            "separator",
            new Span(source, at, at + 1),
            "the columns are parted by %s, expected commas".formatted(word))
        .hint("save the list as CSV with commas between the columns and points in decimals");
  }

  private Optional<List<List<Cell>>> rows() {
    List<List<Cell>> rows = new ArrayList<>();
    try (JsonParser parser = CSV.createParser(ObjectReadContext.empty(), source.text())) {
      List<Cell> row = new ArrayList<>();
      Span last = Span.startOf(source);
      try {
        for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
          if (token == JsonToken.END_ARRAY && !row.isEmpty()) {
            rows.add(List.copyOf(row));
            row.clear();
          } else if (token.isScalarValue()) {
            row.add(cell(parser));
            last = row.getLast().at();
          }
        }
      } catch (StreamReadException e) {
        return fault(quotes(e, last));
      }
    }
    return Optional.of(rows);
  }

  private Cell cell(JsonParser parser) {
    String text = parser.getString();
    int start = (int) parser.currentTokenLocation().getCharOffset();
    while (start < source.text().length() && source.text().charAt(start) == ' ') {
      start++;
    }
    boolean isQuoted = start < source.text().length() && source.text().charAt(start) == '"';
    int length = isQuoted ? (int) parser.currentLocation().getCharOffset() - start : 0;
    String stripped = text.strip();
    return new Cell(stripped, new Span(source, start, start + Math.max(stripped.length(), length)));
  }

  /** Quotes are the only thing that such a text can have wrong. */
  private Diagnostic quotes(StreamReadException e, Span last) {
    boolean isOpen = e.getOriginalMessage().startsWith("Missing closing");
    TokenStreamLocation where = e.getLocation();
    int offset = Math.clamp(where.getCharOffset(), 0, source.text().length());
    int at = isOpen ? Math.max(source.text().indexOf('"', last.end()), last.end()) : offset - 1;
    return Diagnostic.error(
            "quotes",
            new Span(source, at, at + 1),
            isOpen ? "a quote that is never closed" : "text goes on behind a closing quote")
        .hint("close every quote; write a quote inside quotes twice, such as \"5\"\" wide\"");
  }

  private <T> Optional<T> fault(Diagnostic fault) {
    diagnostics.add(fault);
    return Optional.empty();
  }
}
