package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Node.Member;

/** Reads choices: names, each with the words that it may be. */
final class WordLists {
  private final Context context;

  WordLists(Context context) {
    this.context = context;
  }

  Optional<Map<String, List<String>>> read(Node node) {
    return Shapes.mapping(node, context)
        .map(
            mapping -> {
              Map<String, List<String>> all = new LinkedHashMap<>();
              mapping
                  .members()
                  .forEach(member -> words(member).ifPresent(w -> put(all, member, w)));
              return all;
            });
  }

  private static void put(Map<String, List<String>> all, Member member, List<String> words) {
    all.put(member.key().text(), words);
  }

  private Optional<List<String>> words(Member member) {
    NameStyle.check(member.key(), context);
    if (context.scope().values().containsKey(member.key().text())) {
      return context.fail(
          Diagnostic.error(
                  "name-twice",
                  member.key().at(),
                  "'" + member.key().text() + "' is the name of a size or number already")
              .hint("give one of the two another name"));
    }
    Optional<List<String>> words =
        Shapes.sequence(member.value(), context)
            .map(
                list ->
                    list.items().stream()
                        .flatMap(item -> Shapes.scalar(item, context).stream())
                        .map(
                            word -> {
                              NameStyle.check(word, context);
                              return word.text();
                            })
                        .toList());
    return words.filter(list -> list.size() > 1 || tooFew(member));
  }

  private boolean tooFew(Member member) {
    context
        .diagnostics()
        .add(
            Diagnostic.error("wrong-shape", member.value().at(), "a choice needs two words or more")
                .hint("write them as `[inset, overlay]`, the usual one first"));
    return false;
  }
}
