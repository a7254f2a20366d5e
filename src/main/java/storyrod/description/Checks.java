package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Sequence;
import storyrod.measure.Length;

/** What a description must keep across its keys and sections. */
final class Checks {
  private final Block block;
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
    record(project);
  }

  private static void record(Block project) {
    project
        .entry()
        .find("record", Entry.class)
        .ifPresent(
            record ->
                new RecordCheck(project.context())
                    .check(record, project.text().get("record").orElseThrow()));
  }

  private static List<String> boards(Map<String, Entry> stocks) {
    return stocks.entrySet().stream()
        .filter(
            each -> each.getValue().find("kind", String.class).filter("solid"::equals).isPresent())
        .map(Map.Entry::getKey)
        .toList();
  }

  private void check() {
    block.inside().entries("stock").forEach(new StockCheck(context, text)::check);
    block.inside().entries("on-hand").forEach(new OnHandCheck(context)::check);
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

  private void someStock() {
    Scope scope = context.scope();
    if (scope.isWhole() && scope.lacksStock()) {
      add(
          Diagnostic.error("missing-key", block.inside().at(), "this project has no 'stock'")
              .hint("write `stock:` with a name for each, and its keys below"));
    }
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
