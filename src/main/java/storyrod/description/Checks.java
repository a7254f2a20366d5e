package storyrod.description;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Description.PriceUnit;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Sequence;
import storyrod.measure.Length;

/** What a description must keep across its keys and sections. */
final class Checks {
  private static final Length THICKEST = Length.mm(150);
  private static final Length THINNEST = Length.mm(1);

  private final Context context;
  private final Mapping root;

  Checks(Context context, Mapping root) {
    this.context = context;
    this.root = root;
  }

  void check(Entry project) {
    Map<String, Entry> stocks = project.entries("stock");
    stocks.forEach(this::stock);
    if (root.get("hardware").orElse(root) instanceof Sequence hardware) {
      hardware.items().forEach(this::screws);
    }
    Map<String, Length> thickness = new LinkedHashMap<>();
    stocks.forEach(
        (name, stock) -> stock.findLength("thickness").ifPresent(t -> thickness.put(name, t)));
    ThicknessCheck check = new ThicknessCheck(context, thickness);
    project.entries("parts").forEach(check::check);
    project
        .entries("assemblies")
        .forEach(
            (name, assembly) ->
                assembly
                    .entries("parts")
                    .forEach((part, entry) -> check.check(name + "." + part, entry)));
    new ShopCheck(context, project).check(stocks);
    someParts(project);
    names(project);
  }

  private void stock(String name, Entry stock) {
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
    return root.get("stock").orElse(root) instanceof Mapping stocks
        && stocks.get(stock).orElse(root) instanceof Mapping keys
        && keys.get(key).isPresent();
  }

  private void price(Entry stock, PriceUnit expected, boolean kindKnown) {
    Optional<PriceUnit> per =
        stock.find("price", Description.Price.class).map(Description.Price::per);
    if (kindKnown && per.isPresent() && per.get() != expected) {
      add(
          Diagnostic.error(
                  "price",
                  stock.at("price"),
                  "this stock is not sold per " + Sections.word(per.get()))
              .hint("give its price per " + Sections.word(expected)));
    }
  }

  private void screws(Node hardware) {
    if (hardware instanceof Mapping keys) {
      beside(keys, "screw", "screws-each");
      beside(keys, "screws-each", "screw");
    }
  }

  private void beside(Mapping keys, String there, String missing) {
    if (keys.get(there).isPresent() && keys.get(missing).isEmpty()) {
      add(
          Diagnostic.error(
                  "missing-key",
                  keys.get(there).get().at(),
                  "'" + there + "' needs '" + missing + "' beside it")
              .hint("write both, or neither"));
    }
  }

  private void someParts(Entry project) {
    if (root.get("parts").isEmpty() && root.get("assemblies").isEmpty()) {
      add(
          Diagnostic.error("missing-key", project.at(), "this project has no parts")
              .hint("write `parts:`, with a name, its stock, x, y, z and grain for each"));
    }
  }

  private void names(Entry project) {
    Map<String, Entry> parts = project.entries("parts");
    project
        .entries("assemblies")
        .forEach(
            (name, assembly) -> {
              if (parts.containsKey(name)) {
                twice(name, assembly.at(), parts.get(name).at());
              }
            });
  }

  private void twice(String name, Span at, Span before) {
    add(
        Diagnostic.error("name-twice", at, "'" + name + "' is the name of something else already")
            .also(before, "it is here already")
            .hint("give one of the two another name"));
  }

  private void add(Diagnostic diagnostic) {
    context.diagnostics().add(diagnostic);
  }
}
