package storyrod.stock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.description.Description;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.PartEntry;
import storyrod.description.SheetSize;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.Missing;
import storyrod.stock.StockPlan.SheetPlan;

/** Tells of parts that no piece of their stock gives, and the nearest way out. */
final class Shortage {
  private final Piece piece;
  private final Description description;
  private final SheetPlan plan;
  private final StockEntry stock;
  private final SheetSize largest;

  Shortage(Piece piece, SheetPlan plan) {
    this.piece = piece;
    this.description = piece.description();
    this.plan = plan;
    this.stock = plan.stock();
    this.largest = largest(new Sources(piece, stock));
  }

  /** What the longest and the widest piece give, edges trimmed; perhaps not one piece. */
  private static SheetSize largest(Sources sources) {
    return new SheetSize(
        sources.stock().stream()
            .map(each -> each.length().minus(each.trim().left()).minus(each.trim().right()))
            .reduce(Length.ZERO, Length::max),
        sources.stock().stream()
            .map(each -> each.width().minus(each.trim().bottom()).minus(each.trim().top()))
            .reduce(Length.ZERO, Length::max));
  }

  void tell(Diagnostics diagnostics) {
    Map<String, Missing> tooLarge = new LinkedHashMap<>();
    plan.missing().stream()
        .filter(each -> !each.fits())
        .forEach(each -> tooLarge.putIfAbsent(told(each), each));
    tooLarge.values().forEach(each -> diagnostics.add(tooLarge(each)));
    List<Missing> runOut = plan.missing().stream().filter(Missing::fits).toList();
    if (!runOut.isEmpty()) {
      diagnostics.add(runsOut(runOut));
    }
  }

  /** By what a blank that is too large is told once: its match, or its part. */
  private String told(Missing missing) {
    return match(missing)
        .flatMap(PartEntry::match)
        .map(word -> "match " + word.value())
        .orElse(missing.part());
  }

  /** The part's entry, if it is too large only with the other parts of its match. */
  private Optional<PartEntry> match(Missing missing) {
    return description
        .part(missing.part())
        .filter(entry -> entry.match().isPresent())
        .filter(entry -> fits(missing.length(), missing.width()));
  }

  private Diagnostic tooLarge(Missing missing) {
    return match(missing)
        .map(part -> match(missing, part))
        .orElseGet(() -> stock.kind() == StockKind.SHEET ? noSheet(missing) : noBoard(missing));
  }

  private boolean fits(Length length, Length width) {
    return !length.isLongerThan(largest.length()) && !width.isLongerThan(largest.width());
  }

  private Diagnostic match(Missing missing, PartEntry part) {
    return Diagnostic.error(
            "match-too-large",
            part.match().orElseThrow().at(),
            "no piece of %s gives %s with all parts of the same match: the largest gives %s"
                .formatted(stock.name(), missing.part(), size(largest)))
        .also(stock.at(), "the stock")
        .hint("let the grain run on over fewer of them, or get a larger piece");
  }

  private Diagnostic noSheet(Missing missing) {
    Part part = piece.part(missing.part());
    String message =
        "%s is %s, but a sheet of %s gives at most %s"
            .formatted(
                part.name(), sizes(missing.length(), missing.width()), stock.name(), size(largest));
    Diagnostic error =
        Diagnostic.error("part-larger-than-sheet", part.at(), message)
            .also(stock.at(), stock.sheet().map(this::isOfSize).orElse("the stock"))
            .hint("make the part smaller, build it from two parts, or buy larger sheets");
    return fits(missing.width(), missing.length())
        ? error.hint("turned it would fit: let its grain run along the other axis")
        : error;
  }

  private String isOfSize(SheetSize size) {
    return "the sheet is " + size(size);
  }

  private Diagnostic noBoard(Missing missing) {
    Part part = piece.part(missing.part());
    String message =
        "%s takes a board of %s in the rough, but those of %s give at most %s"
            .formatted(
                part.name(), sizes(missing.length(), missing.width()), stock.name(), size(largest));
    Diagnostic warning =
        Diagnostic.warning("part-larger-than-board", part.at(), message)
            .also(stock.at(), "the stock");
    Length allowance = description.shop().extraWidth(part.finishedLength());
    boolean canBeGluedUp =
        !missing.length().isLongerThan(largest.length()) && largest.width().isLongerThan(allowance);
    long staves =
        Math.ceilDiv(
            piece.blankWidth(part).plus(allowance).ticks(),
            Math.max(1, largest.width().minus(allowance).ticks()));
    return canBeGluedUp
        ? warning.hint("glue it up from narrower boards: `staves: " + staves + "`")
        : warning.hint("find a longer board, or build the part from two");
  }

  private Diagnostic runsOut(List<Missing> lacking) {
    String what =
        lacking.stream()
            .collect(Collectors.groupingBy(this::named, LinkedHashMap::new, Collectors.counting()))
            .entrySet()
            .stream()
            .map(each -> each.getKey() + (each.getValue() > 1 ? " (" + each.getValue() + ")" : ""))
            .collect(Collectors.joining(", "));
    return Diagnostic.warning(
            "boards-run-out",
            stock.at(),
            "what is on hand of %s does not give: %s".formatted(stock.name(), what))
        .hint("write `boards:` with the size of a usual board, and the rest is laid out on those")
        .hint("or add what there is under `on-hand`");
  }

  private String named(Missing missing) {
    return missing.part() + " " + sizes(missing.length(), missing.width());
  }

  private String size(SheetSize size) {
    return sizes(size.length(), size.width());
  }

  private String sizes(Length length, Length width) {
    LengthFormat format = description.format();
    return format.format(length) + " x " + format.formatWithUnit(width);
  }
}
