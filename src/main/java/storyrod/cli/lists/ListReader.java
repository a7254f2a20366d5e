package storyrod.cli.lists;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.cli.lists.PartRows.PartRow;
import storyrod.cli.lists.PartRows.Parts;
import storyrod.cli.lists.StockRows.StockRow;
import storyrod.cli.lists.StockRows.Stocks;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Nearest;
import storyrod.description.SourceText;
import storyrod.description.Span;

/** Reads a list of parts and a list of stock into the jobs that they are. */
public final class ListReader {
  private final Parts parts;
  private final Stocks stocks;
  private final Diagnostics diagnostics;
  private final String stockFile;
  private final String partsFile;

  private ListReader(Parts parts, Stocks stocks, Diagnostics diagnostics) {
    this.parts = parts;
    this.stocks = stocks;
    this.diagnostics = diagnostics;
    this.partsFile = parts.rows().getFirst().at().source().file();
    this.stockFile = stocks.rows().getFirst().name().at().source().file();
  }

  /** The jobs in the order of the parts; none where there are errors among the diagnostics. */
  public static List<ListedJob> read(
      SourceText parts, SourceText stock, ListOptions options, Diagnostics diagnostics) {
    Optional<Parts> partRows = PartRows.read(parts, options, diagnostics);
    Optional<Stocks> stockRows = StockRows.read(stock, options, diagnostics);
    if (diagnostics.hasErrors()) {
      return List.of();
    }
    List<ListedJob> jobs =
        new ListReader(partRows.orElseThrow(), stockRows.orElseThrow(), diagnostics).jobs(options);
    return diagnostics.hasErrors() ? List.of() : jobs;
  }

  private List<ListedJob> jobs(ListOptions options) {
    if (parts.lengthsOnly() != stocks.lengthsOnly()) {
      diagnostics.add(sizesDiffer());
    }
    if (stocks.hasInstances() && !parts.hasInstances()) {
      diagnostics.add(instancesDiffer());
    }
    if (diagnostics.hasErrors()) {
      return List.of();
    }
    Map<String, List<PartRow>> wanted = new LinkedHashMap<>();
    parts.rows().forEach(row -> group(wanted, parts.hasInstances(), row.instance()).add(row));
    Map<String, List<StockRow>> given = new LinkedHashMap<>();
    stocks.rows().forEach(row -> group(given, stocks.hasInstances(), row.instance()).add(row));
    given.forEach((name, rows) -> requireParts(name, rows, wanted));
    List<ListedJob> jobs = new ArrayList<>();
    JobMaker maker = new JobMaker(options, stocks, diagnostics);
    wanted.forEach(
        (name, rows) ->
            stockFor(name, rows, given)
                .flatMap(s -> maker.job(name, rows, s))
                .ifPresent(jobs::add));
    return jobs;
  }

  private static <T> List<T> group(Map<String, List<T>> groups, boolean named, Cell instance) {
    return groups.computeIfAbsent(named ? instance.text() : "", name -> new ArrayList<>());
  }

  private Diagnostic sizesDiffer() {
    boolean isPart = parts.lengthsOnly();
    Span at = (isPart ? parts.rows().getFirst().at() : stocks.rows().getFirst().name().at());
    return Diagnostic.error(
            "missing-column",
            Span.startOf(at.source()),
            "%s has lengths only, but %s has a size across"
                .formatted(isPart ? partsFile : stockFile, isPart ? stockFile : partsFile))
        .hint("give both sizes in both lists, or lengths alone in both");
  }

  private Diagnostic instancesDiffer() {
    return Diagnostic.error(
            "missing-column",
            Span.startOf(parts.rows().getFirst().at().source()),
            "%s has a column 'instance', but this list has none".formatted(stockFile))
        .hint("say of every part for which instance it is, or take the column out of the stock");
  }

  private void requireParts(String name, List<StockRow> rows, Map<String, List<PartRow>> wanted) {
    if (stocks.hasInstances() && !wanted.containsKey(name)) {
      diagnostics.add(
          lonely("instance-without-parts", rows.getFirst().instance(), partsFile, wanted));
    }
  }

  private Optional<List<StockRow>> stockFor(
      String name, List<PartRow> rows, Map<String, List<StockRow>> given) {
    List<StockRow> stock = given.get(stocks.hasInstances() ? name : "");
    if (stock == null) {
      diagnostics.add(
          lonely("instance-without-stock", rows.getFirst().instance(), stockFile, given));
    }
    return Optional.ofNullable(stock);
  }

  private static Diagnostic lonely(String code, Cell instance, String other, Map<String, ?> there) {
    Diagnostic fault =
        Diagnostic.error(
            code, instance.at(), "instance '%s' is not in %s".formatted(instance.text(), other));
    return Nearest.to(instance.text(), there.keySet())
        .map(near -> fault.hint("did you mean `" + near + "`?"))
        .orElseGet(() -> fault.hint("add its rows there, or take these out"));
  }
}
