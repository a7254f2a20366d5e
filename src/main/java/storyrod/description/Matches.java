package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Gives parts the matches that are written beside the parts, for parts of what is used. */
final class Matches {
  private final Diagnostics diagnostics;
  private final Map<String, Located<String>> words = new LinkedHashMap<>();

  Matches(List<Entry> matches, Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
    matches.forEach(this::read);
  }

  private void read(Entry match) {
    List<Located<String>> parts = match.list("parts", String.class);
    String word = parts.stream().map(Located::value).collect(Collectors.joining(" "));
    for (Located<String> part : parts) {
      Located<String> before = words.put(part.value(), new Located<>(word, part.at()));
      if (before != null) {
        diagnostics.add(twice(part.value(), part.at(), before.at()));
      }
    }
  }

  /** The parts with their matches. */
  List<PartEntry> given(List<PartEntry> parts) {
    return parts.stream().map(this::given).toList();
  }

  private PartEntry given(PartEntry part) {
    Optional<Located<String>> word = Optional.ofNullable(words.get(part.name()));
    if (word.isPresent() && part.match().isPresent()) {
      diagnostics.add(twice(part.name(), word.get().at(), part.match().get().at()));
    }
    return word.map(part::matching).orElse(part);
  }

  private static Diagnostic twice(String part, Span at, Span before) {
    return Diagnostic.error("match-twice", at, part + " has a match already")
        .also(before, "here")
        .hint("a part is cut from one board: take one of the two away");
  }
}
