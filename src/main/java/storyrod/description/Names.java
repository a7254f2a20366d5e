package storyrod.description;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Scope.ItemCells;
import storyrod.description.Scope.PartCells;
import storyrod.description.Scope.StockCells;
import storyrod.geometry.Face;

/** Looks names up in a scope and suggests what may have been meant. */
final class Names {
  static final String UNKNOWN = "unknown-name";
  private static final String THICKNESS = "thickness";
  private static final int MOST_LISTED = 12;

  private final Scope scope;

  Names(Scope scope) {
    this.scope = scope;
  }

  /** The size, thickness, item's size or face that a formula names. */
  Lookup<Cell> value(String path) {
    List<String> words = List.of(path.split("\\."));
    if (words.size() == 1) {
      return size(path);
    }
    if (words.size() == 2 && words.getLast().equals(THICKNESS)) {
      return thickness(words.getFirst());
    }
    return words.size() == 2 && Face.named(words.getLast()).isEmpty() && isItem(words.getFirst())
        ? sizeOfItem(words.getFirst(), words.getLast())
        : face(path, true).flatMap(Names::ofFace);
  }

  private boolean isItem(String name) {
    return scope.find(Scope::parts, name).isEmpty() && item(name).found().isPresent();
  }

  private Lookup<Cell> sizeOfItem(String name, String key) {
    ItemCells item = item(name).found().orElseThrow();
    return Optional.ofNullable(item.sizes().get(key))
        .map(Lookup::of)
        .orElseGet(
            () ->
                Lookup.none(
                    UNKNOWN,
                    "the item '" + Quote.of(name) + "' has no '" + Quote.of(key) + "'",
                    suggest(key, item.sizes().keySet().stream())));
  }

  private Lookup<Cell> thickness(String stock) {
    Optional<Cell> cell = scope.find(Scope::stocks, stock).map(StockCells::thickness);
    return cell.map(Lookup::of).orElseGet(() -> noThickness(stock));
  }

  private Lookup<Cell> noThickness(String stock) {
    int minus = stock.lastIndexOf('-');
    boolean difference =
        minus > 0
            && scope.find(Scope::stocks, stock.substring(minus + 1)).isPresent()
            && scope.find(Scope::values, stock.substring(0, minus)).isPresent();
    return difference
        ? Lookup.none(
            "unknown-stock",
            "there is no stock '" + Quote.of(stock) + "'",
            "for a difference put spaces around the minus: `"
                + stock.substring(0, minus)
                + " - "
                + stock.substring(minus + 1)
                + ".thickness`")
        : stock(stock).otherwise();
  }

  private static Lookup<Cell> ofFace(PartFace found) {
    return Optional.ofNullable(found.part().faces().get(found.face()))
        .map(Lookup::of)
        .orElseGet(
            () ->
                Lookup.none(
                    "unknown-face",
                    "'" + found.part().name() + "' has no " + found.face().word() + " of its own",
                    "name a face on the axis along which it is repeated or placed"));
  }

  private Lookup<Cell> size(String name) {
    return scope
        .find(Scope::values, name)
        .map(Lookup::of)
        .orElseGet(
            () ->
                Lookup.none(UNKNOWN, "there is no size '" + Quote.of(name) + "'", sizeHint(name)));
  }

  private String sizeHint(String name) {
    if (scope.find(Scope::parts, name).isPresent()) {
      return "it is a part; name one of its faces, such as `" + name + ".left`";
    }
    if (scope.find(Scope::stocks, name).isPresent()) {
      return "it is a stock; write `" + name + ".thickness`";
    }
    if (isDifference(name)) {
      return "for a difference put spaces around the minus: `" + name.replace("-", " - ") + "`";
    }
    List<String> sizes =
        Stream.concat(scope.all(Scope::values), scope.all(Scope::choices)).toList();
    return Nearest.to(name, sizes)
        .map(Names::meant)
        .or(
            () ->
                Nearest.to(name, scope.all(Scope::parts).toList())
                    .map(part -> "did you mean a face of the part `" + part + "`?"))
        .orElseGet(() -> listed(sizes));
  }

  static String meant(String word) {
    return "did you mean `" + word + "`?";
  }

  private boolean isDifference(String name) {
    return name.contains("-")
        && Arrays.stream(name.split("-"))
            .allMatch(each -> scope.find(Scope::values, each).isPresent());
  }

  /** A part and one of its faces. */
  record PartFace(PartCells part, Face face) {}

  /** A face of a part. */
  Lookup<PartFace> face(String path) {
    return face(path, false);
  }

  private Lookup<PartFace> face(String path, boolean ofAssembliesToo) {
    int dot = path.lastIndexOf('.');
    if (dot < 0) {
      return Lookup.none(
          "unknown-face",
          "expected a part and a face, found '" + Quote.of(path) + "'",
          "write the face behind a dot, such as `" + Quote.of(path) + ".left`");
    }
    String of = path.substring(0, dot);
    PartNames names = new PartNames(scope);
    Optional<PartCells> whole = ofAssembliesToo ? names.whole(of) : Optional.empty();
    Lookup<PartCells> part = whole.map(Lookup::of).orElseGet(() -> names.part(of));
    return part.flatMap(found -> faceOf(found, path.substring(dot + 1)));
  }

  private static Lookup<PartFace> faceOf(PartCells part, String word) {
    return Face.named(word)
        .map(face -> Lookup.of(new PartFace(part, face)))
        .orElseGet(
            () ->
                Lookup.none(
                    "unknown-face",
                    "a part has no face '" + Quote.of(word) + "'",
                    faceHint(part, word)));
  }

  private static String faceHint(PartCells part, String word) {
    if (List.of("width", "height", "depth", "length", "thickness").contains(word)) {
      return "a size is the difference of two faces, such as `%s.right - %s.left`"
          .formatted(part.name(), part.name());
    }
    return suggest(word, Arrays.stream(Face.values()).map(Face::word));
  }

  /** A part by its name here, or by its assembly's name and its own. */
  Lookup<PartCells> part(String path) {
    return new PartNames(scope).part(path);
  }

  Lookup<String> stock(String name) {
    return scope
        .find(Scope::stocks, name)
        .map(found -> Lookup.of(found.name()))
        .orElseGet(
            () ->
                scope.lacksStock()
                    ? Lookup.untold()
                    : word("unknown-stock", name, scope.all(Scope::stocks).toList(), "stock"));
  }

  /** An item of the description, of what it is used by, or of the start set. */
  Lookup<ItemCells> item(String name) {
    return scope
        .find(Scope::items, name)
        .or(() -> StartSet.item(name, scope))
        .map(Lookup::of)
        .orElseGet(() -> noItem(name));
  }

  private Lookup<ItemCells> noItem(String name) {
    List<String> own = scope.all(Scope::items).toList();
    return Lookup.none(
        "unknown-item",
        "there is no item '" + Quote.of(name) + "'",
        Nearest.to(name, own)
            .or(() -> Nearest.to(name, StartSet.names()))
            .map(Names::meant)
            .orElseGet(() -> ofTheTool(name, own)));
  }

  /** Items that come with the tool and have in their names what was written; else how they run. */
  private static String ofTheTool(String name, List<String> own) {
    List<String> alike = StartSet.alike(name);
    if (!alike.isEmpty()) {
      return alike.size() == 1
          ? meant(alike.getFirst())
          : "with the tool come " + String.join(", ", alike.stream().limit(MOST_LISTED).toList());
    }
    String described = own.isEmpty() ? "" : listed(own) + "; ";
    return described
        + "describe it under `items:`, or take one that comes with the tool, named by kind and size"
        + " as `wood-screw-8-1-1-4` is; `storyrod reference` lists them";
  }

  /** One of a few words. */
  static Lookup<String> word(String code, String word, List<String> words, String what) {
    return words.contains(word)
        ? Lookup.of(word)
        : Lookup.none(
            code,
            "there is no " + what + " '" + Quote.of(word) + "'",
            suggest(word, words.stream()));
  }

  /** What to do about a word that is not among those known. */
  static String suggest(String word, Stream<String> known) {
    List<String> words = known.toList();
    return Nearest.to(word, words).map(Names::meant).orElseGet(() -> listed(words));
  }

  private static String listed(List<String> words) {
    if (words.isEmpty()) {
      return "none is described yet";
    }
    if (words.size() == 1) {
      return "there is only `" + words.getFirst() + "`";
    }
    String more =
        words.size() > MOST_LISTED ? ", and " + (words.size() - MOST_LISTED) + " more" : "";
    return "there are " + String.join(", ", words.stream().limit(MOST_LISTED).toList()) + more;
  }
}
