package storyrod.description;

import java.util.Optional;
import storyrod.description.Node.Mapping;
import storyrod.measure.Length;

/** What a stock's keys must keep among each other. */
final class StockCheck {
  private static final Length THICKEST = Length.mm(150);
  private static final Length THINNEST = Length.mm(1);

  private final Context context;
  private final Mapping text;

  /** For the stocks of a description, whose text says which keys were written. */
  StockCheck(Context context, Mapping text) {
    this.context = context;
    this.text = text;
  }

  void check(String name, Entry stock) {
    boolean sheet = stock.find("kind", String.class).filter("sheet"::equals).isPresent();
    boolean solid = stock.find("kind", String.class).filter("solid"::equals).isPresent();
    if (sheet && !isWritten(name, "sheet")) {
      add(
          Diagnostic.error(
                  "missing-key", stock.at(), "the sheet stock '" + name + "' has no 'sheet'")
              .hint("write `sheet:` with its size, such as `96 x 48`"));
    }
    if (solid && stock.has("sheet")) {
      add(
          Diagnostic.error(
                  "stock-kind",
                  stock.at("sheet"),
                  "solid wood comes in boards and has no sheet size")
              .hint("take `sheet` away, or write `kind: sheet`"));
    }
    if (sheet && stock.has("boards")) {
      add(
          Diagnostic.error(
                  "stock-kind", stock.at("boards"), "sheets do not come in boards of their own")
              .hint("give the sheet's size as `sheet`, or write `kind: solid`"));
    }
    if (sheet && stock.has("bought-as")) {
      add(
          Diagnostic.error(
                  "stock-kind", stock.at("bought-as"), "a sheet is bought as thick as it is")
              .hint("take `bought-as` away, or write `kind: solid`"));
    }
    thickness(stock);
    price(stock, sheet ? PriceUnit.SHEET : PriceUnit.BOARD_FOOT, sheet || solid);
  }

  /** Wood for furniture is between a veneer and a beam thick (common practice). */
  private void thickness(Entry stock) {
    Length thick = stock.findLength("thickness").orElse(Length.inches(1));
    boolean odd = thick.isLongerThan(THICKEST) || thick.isShorterThan(THINNEST);
    Span at = stock.at("thickness");
    String written = at.source().text().substring(at.start(), at.end());
    if (odd) {
      String hint =
          UnitMixUp.hint(written, context.figures().unit(), 6)
              .orElse("look at its unit; the thickness is that of a board or a sheet");
      add(
          Diagnostic.warning(
                  "odd-thickness",
                  at,
                  "a stock " + context.figures().of(thick) + " thick is unusual")
              .hint(hint));
    }
  }

  private boolean isWritten(String stock, String key) {
    return text.get("stock").orElse(text) instanceof Mapping stocks
        && stocks.get(stock).orElse(text) instanceof Mapping keys
        && keys.get(key).isPresent();
  }

  private void price(Entry stock, PriceUnit expected, boolean kindKnown) {
    Optional<PriceUnit> per = stock.find("price", Price.class).map(Price::per);
    if (kindKnown && per.isPresent() && per.get() != expected) {
      add(
          Diagnostic.error(
                  "price",
                  stock.at("price"),
                  "this stock is not sold per " + ValueType.Choice.word(per.get()))
              .hint("give its price per " + ValueType.Choice.word(expected)));
    }
  }

  private void add(Diagnostic diagnostic) {
    context.diagnostics().add(diagnostic);
  }
}
