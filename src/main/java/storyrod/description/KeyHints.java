package storyrod.description;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;

/** What to do about a key that a kind of entry does not have. */
final class KeyHints {
  private static final String COMMA =
      "a comma ends a value inside {...}: put a text or a formula that has one in quotes";
  private static final String PLACES =
      "a part runs from one place to another: write `x`, `y` and `z`, as in `x: 0 to 12`";

  /** What other words for something mean here; the key must be one of the entry. */
  private static final Map<String, String> OTHER_WORDS =
      new TreeMap<>(
          Map.of(
              "material", "stock",
              "wood", "stock",
              "name", "title",
              "note", "say",
              "notes", "say",
              "type", "kind",
              "qty", "count",
              "quantity", "count"));

  private static final List<String> PART_SIZES = List.of("width", "height", "depth", "length");

  /** How a kind of entry looks that is often taken for a single value. */
  private static final Map<EntryType, String> AS_KEYS =
      Map.of(
          PartSections.REPEAT, "`{count: 3, along: z, over: 0 to 30}`",
          PartSections.TURN, "`{about: y, by: 8, at: {x: 3, z: 16}}`",
          PartSections.QUARTER_TURN, "`{about: z, by: 90}`");

  private KeyHints() {}

  static String asKeys(EntryType type) {
    List<String> needed =
        type.keys().stream().filter(Key::required).map(key -> key.name() + ": ...").toList();
    String usual = "`{" + String.join(", ", needed) + "}`";
    return needed.isEmpty() && !AS_KEYS.containsKey(type)
        ? "write `key: value` lines, indented"
        : "write its keys, as in " + AS_KEYS.getOrDefault(type, usual);
  }

  static String of(EntryType type, Member member) {
    Scalar name = member.key();
    String word = name.text();
    Optional<String> section = section(type, member.value());
    if (section.isPresent()) {
      return "indent it to make it part of `" + section.get() + "`";
    }
    if (word.indexOf(':') > 0) {
      return "put a space behind the colon: `" + Quote.of(word.replaceFirst(":", ": ")) + "`";
    }
    if (startsWithKey(type, word).isPresent()) {
      String key = startsWithKey(type, word).get();
      return "write a colon behind `%s`: `%s:%s`"
          .formatted(key, key, Quote.of(word.substring(key.length())));
    }
    if (word.contains(")") || word.contains(" ") || isWithoutColon(name)) {
      return COMMA;
    }
    return ofPart(type, word)
        .or(() -> otherWord(type, word))
        .or(() -> unindented(type, name))
        .orElseGet(() -> Names.suggest(word, type.keys().stream().map(Key::name)));
  }

  /** The key that a text begins with, where a colon may have been forgotten. */
  static Optional<String> startsWithKey(EntryType type, String text) {
    return type.keys().stream()
        .map(Key::name)
        .filter(key -> text.startsWith(key + " "))
        .findFirst();
  }

  /** Inside braces a word without a colon becomes a key of its own. */
  private static boolean isWithoutColon(Scalar name) {
    String text = name.at().source().text();
    int next = name.at().end();
    while (next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    return next < text.length() && (text.charAt(next) == ',' || text.charAt(next) == '}');
  }

  private static Optional<String> ofPart(EntryType type, String word) {
    boolean part = has(type, "x") && has(type, "grain");
    if (part && PART_SIZES.contains(word)) {
      return Optional.of(PLACES);
    }
    return part && word.equals("thickness")
        ? Optional.of("a part is as thick as its stock; the thickness stands there")
        : Optional.empty();
  }

  private static Optional<String> otherWord(EntryType type, String word) {
    Optional<String> meant =
        Optional.ofNullable(OTHER_WORDS.get(word)).filter(key -> has(type, key));
    return meant
        .or(() -> type.keys().stream().map(Key::name).filter(key -> isAlike(key, word)).findFirst())
        .map(key -> "did you mean `" + key + "`?");
  }

  private static boolean isAlike(String key, String word) {
    return word.length() > 1 && key.length() > 2 && (key.endsWith(word) || word.startsWith(key));
  }

  /** The section whose entries have such keys, where one was not indented as far as the others. */
  private static Optional<String> section(EntryType type, Node value) {
    List<String> keys =
        value instanceof Mapping mapping
            ? mapping.members().stream().map(each -> each.key().text()).toList()
            : List.of();
    return keys.size() < 2
        ? Optional.empty()
        : type.keys().stream()
            .filter(
                key -> key.type() instanceof ValueType.Named named && hasAll(named.type(), keys))
            .map(Key::name)
            .findFirst();
  }

  private static boolean hasAll(EntryType type, List<String> keys) {
    return keys.stream().allMatch(key -> has(type, key));
  }

  private static boolean has(EntryType type, String key) {
    return type.keys().stream().anyMatch(each -> each.name().equals(key));
  }

  /** Below a section's line that has nothing behind its colon, a line was meant to be indented. */
  private static Optional<String> unindented(EntryType type, Scalar name) {
    SourceText source = name.at().source();
    for (int line = name.at().line() - 1; line > 0; line--) {
      String text = source.line(line).stripTrailing();
      String key = text.endsWith(":") ? text.substring(0, text.length() - 1) : "";
      if (has(type, key) && name.at().column() == 1) {
        return Optional.of("indent it to make it part of `" + key + "`");
      }
      if (text.startsWith(" ") || text.startsWith("-")) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
