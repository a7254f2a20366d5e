package storyrod.description;

import java.util.Map;
import java.util.Optional;
import storyrod.measure.Length;

/** A saw can cut with its kerf, and what is trimmed off a sheet is neither dust nor all of it. */
final class ShopCheck {
  private static final String TRIM = "edge-trim";
  private static final String KERF = "kerf";
  private static final String HOURS = "hours-per-day";

  /** No saw blade for wood cuts wider (common practice). */
  private static final Length WIDEST_KERF = Length.mm(13);

  private static final int HOURS_OF_A_DAY = 24;

  private final Context context;
  private final Optional<Entry> entry;
  private final ShopEntry shop;

  ShopCheck(Context context, Entry project) {
    this.context = context;
    this.entry = project.find("shop", Entry.class);
    this.shop = new ShopDefaults(context.figures().unit()).shop(entry);
  }

  void check(Map<String, Entry> stocks) {
    if (shop.kerf().isLongerThan(WIDEST_KERF)) {
      entry.ifPresent(this::tooWide);
    } else if (shop.edgeTrim().isPositive() && shop.edgeTrim().isShorterThan(shop.kerf())) {
      entry.ifPresent(this::lessThanTheKerf);
    }
    if (shop.hoursPerDay() > HOURS_OF_A_DAY) {
      entry.ifPresent(this::tooLong);
    }
    stocks.forEach(this::leavesSome);
  }

  private void tooLong(Entry written) {
    add(
        Diagnostic.error(
                HOURS, written.at(HOURS), "expected hours of one day, found " + shop.hoursPerDay())
            .hint("write how long the maker works in a day, such as `hours-per-day: 6`"));
  }

  private void tooWide(Entry written) {
    add(
        Diagnostic.error(
                KERF,
                written.at(KERF),
                "expected the cut of a saw blade, found " + print(shop.kerf()))
            .hint("a blade cuts about 1/8 in or 3 mm; write the unit if it is not the project's"));
  }

  private void lessThanTheKerf(Entry written) {
    String message =
        "an edge trim of %s is less than the saw's kerf of %s"
            .formatted(print(shop.edgeTrim()), print(shop.kerf()));
    add(
        Diagnostic.error(TRIM, written.at(written.has(TRIM) ? TRIM : KERF), message)
            .hint("trim as much as the kerf or more, or write `edge-trim: 0`"));
  }

  private void leavesSome(String name, Entry stock) {
    Length both = shop.edgeTrim().times(2);
    stock
        .find("sheet", SheetSize.class)
        .filter(sheet -> !sheet.length().min(sheet.width()).isLongerThan(both))
        .ifPresent(sheet -> add(leavesNothing(name, stock, sheet)));
  }

  private Diagnostic leavesNothing(String name, Entry stock, SheetSize sheet) {
    String size = print(sheet.length()) + " x " + print(sheet.width());
    String message =
        "an edge trim of %s leaves nothing of a sheet of %s: %s"
            .formatted(print(shop.edgeTrim()), name, size);
    Optional<Entry> trim = entry.filter(each -> each.has(TRIM));
    Span at = trim.map(each -> each.at(TRIM)).orElse(stock.at("sheet"));
    return Diagnostic.error(TRIM, at, message)
        .also(stock.at("sheet"), "the sheet's size")
        .hint("trim less, or correct the sheet's size");
  }

  private String print(Length length) {
    return context.figures().of(length);
  }

  private void add(Diagnostic diagnostic) {
    context.diagnostics().add(diagnostic);
  }
}
