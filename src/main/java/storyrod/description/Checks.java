package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Description.PriceUnit;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Sequence;
import storyrod.measure.Length;

/** What a description must keep across its keys and sections. */
final class Checks {
  private final Block block;
  private static final Length THICKEST = Length.mm(150);
  private static final Length THINNEST = Length.mm(1);

  private final Context context;
  private final Mapping text;

  Checks(Block block) {
    this.block = block;
    this.context = block.context();
    this.text = block.text();
  }

  /** Checks a description and all of its sub-assemblies. */
  static void checkAll(Block project) {
    Map<String, Entry> stocks = new LinkedHashMap<>();
    project.all().forEach(each -> each.stocks().forEach(stocks::putIfAbsent));
    Map<String, Length> thickness = new LinkedHashMap<>();
    stocks.forEach(
        (name, stock) -> stock.findLength("thickness").ifPresent(t -> thickness.put(name, t)));
    project
        .all()
        .forEach(
            each -> {
              new Checks(each).check();
              ThicknessCheck check = new ThicknessCheck(each.context(), thickness, boards(stocks));
              each.inside()
                  .entries("parts")
                  .forEach((part, entry) -> check.check(each.fullName(part), entry));
            });
    new ShopCheck(project.context(), project.entry()).check(stocks);
  }

  private static List<String> boards(Map<String, Entry> stocks) {
    return stocks.entrySet().stream()
        .filter(
            each -> each.getValue().find("kind", String.class).filter("solid"::equals).isPresent())
        .map(Map.Entry::getKey)
        .toList();
  }

  private void check() {
    block.inside().entries("stock").forEach(this::stock);
    if (text.get("hardware").orElse(text) instanceof Sequence hardware) {
      hardware.items().forEach(this::screws);
    }
    block.inside().list("limits").forEach(this::limit);
    if (!block.isProject()) {
      assembly();
    }
    someStock();
    someParts();
    names();
  }

  private void limit(Entry limit) {
    if (limit.find("that", Boolean.class).filter(holds -> !holds).isPresent() && limit.has("say")) {
      add(
          Diagnostic.error("limit", limit.at("that"), limit.text("say"))
              .hint("change the sizes that it speaks of"));
    }
  }

  /** What goes with a description that is used, and what with one written in place. */
  private void assembly() {
    Entry entry = block.entry();
    for (String key :
        block.isUsed()
            ? List.of("parts", "joints", "cuts", "assemblies", "sizes", "numbers", "hardware")
            : List.of("in", "with", "turn", "mirror")) {
      if (entry.has(key) && (block.isUsed() || !entry.has("use"))) {
        add(
            Diagnostic.error(
                    "assembly-kind",
                    entry.at(key),
                    block.isUsed()
                        ? "an assembly that uses a description has no '" + key + "' of its own"
                        : "'" + key + "' is for an assembly that uses a description")
                .hint(
                    block.isUsed()
                        ? "write them beside the assembly, or in the description that it uses"
                        : "take it away, or write `use:` instead of parts"));
      }
    }
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
    return text.get("stock").orElse(text) instanceof Mapping stocks
        && stocks.get(stock).orElse(text) instanceof Mapping keys
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

  /** Where all parts come from descriptions that are used, these bring their stock. */
  private void someStock() {
    boolean isWhole = block.isProject() || block.isUsed() && !UsedFile.isNothing(text);
    boolean brought = text.get("assemblies").isPresent() && !hasParts(text);
    if (isWhole && text.get("stock").isEmpty() && !brought) {
      add(
          Diagnostic.error("missing-key", block.inside().at(), "this project has no 'stock'")
              .hint("write `stock:` with a name for each, and its keys below"));
    }
  }

  private static boolean hasParts(Node node) {
    return Declarations.child(node, "parts").isPresent()
        || Declarations.child(node, "assemblies").orElse(node) instanceof Mapping inner
            && inner != node
            && inner.members().stream()
                .map(Node.Member::value)
                .anyMatch(each -> Declarations.child(each, "use").isEmpty() && hasParts(each));
  }

  private void someParts() {
    boolean unread = UsedFile.isNothing(text) || block.entry().has("use") && !block.isUsed();
    if (text.get("parts").isEmpty() && text.get("assemblies").isEmpty() && !unread) {
      String what = block.isProject() || block.isUsed() ? "project" : "assembly";
      add(
          Diagnostic.error("missing-key", block.inside().at(), "this " + what + " has no parts")
              .hint("write `parts:`, with a name, its stock, x, y, z and grain for each"));
    }
  }

  private void names() {
    Map<String, Entry> parts = block.inside().entries("parts");
    block
        .inside()
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
