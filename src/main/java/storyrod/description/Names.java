package storyrod.description;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Scope.PartCells;
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

  /** The size, thickness or face that a formula names. */
  Lookup<Cell> value(String path) {
    List<String> words = List.of(path.split("\\."));
    if (words.size() == 1) {
      return size(path);
    }
    return words.size() == 2 && words.getLast().equals(THICKNESS)
        ? thickness(words.getFirst())
        : face(path).map(Names::ofFace);
  }

  private Lookup<Cell> thickness(String stock) {
    Optional<Cell> cell = scope.find(Scope::stocks, stock);
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

  private static Cell ofFace(PartFace found) {
    return found.part().faces().get(found.face());
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
    List<String> sizes = scope.all(Scope::values).toList();
    return Nearest.to(name, sizes)
        .map(Names::meant)
        .or(
            () ->
                Nearest.to(name, scope.all(Scope::parts).toList())
                    .map(part -> "did you mean a face of the part `" + part + "`?"))
        .orElseGet(() -> listed(sizes));
  }

  private static String meant(String word) {
    return "did you mean `" + word + "`?";
  }

  private boolean isDifference(String name) {
    return name.contains("-")
        && Arrays.stream(name.split("-"))
            .allMatch(each -> scope.find(Scope::values, each).isPresent());
  }

  /** A part and one of its faces. */
  record PartFace(PartCells part, Face face) {}

  Lookup<PartFace> face(String path) {
    int dot = path.lastIndexOf('.');
    if (dot < 0) {
      return Lookup.none(
          "unknown-face",
          "expected a part and a face, found '" + Quote.of(path) + "'",
          "write the face behind a dot, such as `" + Quote.of(path) + ".left`");
    }
    Lookup<PartCells> part = part(path.substring(0, dot));
    return part.found().isEmpty()
        ? part.otherwise()
        : faceOf(part.found().get(), path.substring(dot + 1));
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
    int dot = path.indexOf('.');
    if (dot < 0) {
      return own(path);
    }
    String assembly = path.substring(0, dot);
    return scope
        .find(Scope::assemblies, assembly)
        .map(inside -> in(inside, path))
        .orElseGet(
            () ->
                Lookup.none(
                    UNKNOWN,
                    "there is no assembly '" + Quote.of(assembly) + "'",
                    outsideHint(assembly)));
  }

  private String outsideHint(String name) {
    if (scope.find(Scope::parts, name).isPresent()) {
      return "it is a part, whose faces are left, right, front, back, bottom and top";
    }
    return suggest(name, scope.all(Scope::assemblies));
  }

  private static Lookup<PartCells> in(Scope assembly, String path) {
    String name = path.substring(path.indexOf('.') + 1);
    return Optional.ofNullable(assembly.parts().get(name))
        .map(Lookup::of)
        .orElseGet(
            () ->
                Lookup.none(
                    UNKNOWN,
                    "there is no part '" + Quote.of(path) + "'",
                    suggest(path, assembly.parts().values().stream().map(PartCells::name))));
  }

  private Lookup<PartCells> own(String name) {
    return scope
        .find(Scope::parts, name)
        .map(Lookup::of)
        .orElseGet(
            () ->
                Lookup.none(UNKNOWN, "there is no part '" + Quote.of(name) + "'", partHint(name)));
  }

  private String partHint(String name) {
    Optional<Scope> assembly = scope.find(Scope::assemblies, name);
    if (assembly.isPresent()) {
      String first = assembly.get().parts().keySet().stream().findFirst().orElse("part");
      return "it is an assembly; name one of its parts, such as `" + name + "." + first + "`";
    }
    if (scope.find(Scope::stocks, name).isPresent()) {
      return "it is a stock, not a part; all that can be named of it is `" + name + ".thickness`";
    }
    return insideSome(name)
        .map(full -> "did you mean `" + full + "`?")
        .orElseGet(() -> suggest(name, scope.all(Scope::parts)));
  }

  private Optional<String> insideSome(String name) {
    return scope
        .all(Scope::assemblies)
        .filter(each -> scope.find(Scope::assemblies, each).get().parts().containsKey(name))
        .map(each -> each + "." + name)
        .findFirst();
  }

  Lookup<String> stock(String name) {
    return word("unknown-stock", name, scope.all(Scope::stocks).toList(), "stock");
  }

  Lookup<String> item(String name) {
    return word("unknown-item", name, scope.all(Scope::items).toList(), "item");
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
