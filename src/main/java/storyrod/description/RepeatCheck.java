package storyrod.description;

import java.util.List;
import storyrod.description.Node.Mapping;

/** Whether the keys of a repeat go together and say where each one lies. */
final class RepeatCheck {
  private static final String HOW =
      "write `over` with the space that they share, or `first`, `step` and `size`";

  private final Context context;
  private final Mapping repeat;

  RepeatCheck(Context context, Mapping repeat) {
    this.context = context;
    this.repeat = repeat;
  }

  void check() {
    apart("over", List.of("first", "step"), HOW);
    apart("size", List.of("gap", "shorter-by", "longer-by"), "take one of them away");
    apart("first", List.of("gap", "shorter-by", "longer-by"), HOW);
    for (String key : List.of("over", "first")) {
      needs(key, "along", "the axis along which they follow each other: `along: z`");
    }
    needs("first", "step", "how far each begins behind the one before it");
    needs("first", "size", "how far each reaches");
    needs("step", "first", "where the first one begins");
    if (has("along") && !has("over") && !has("first") && !has("step")) {
      missing("along", "`over` or `first`", HOW);
    }
  }

  private boolean has(String key) {
    return repeat.get(key).isPresent();
  }

  private void apart(String key, List<String> others, String hint) {
    boolean spaced = !key.equals("size") || has("over");
    others.stream()
        .filter(other -> has(key) && has(other) && spaced)
        .forEach(
            other ->
                context
                    .diagnostics()
                    .add(
                        Diagnostic.error(
                                "repeat",
                                at(other),
                                "`%s` and `%s` do not go together".formatted(key, other))
                            .hint(hint)));
  }

  private void needs(String key, String other, String what) {
    boolean stepped = !key.equals("step") || !has("over");
    if (has(key) && !has(other) && stepped) {
      missing(key, "`" + other + "`", "write " + what);
    }
  }

  private void missing(String key, String other, String hint) {
    context
        .diagnostics()
        .add(
            Diagnostic.error(
                    "missing-key", at(key), "`%s` needs %s beside it".formatted(key, other))
                .hint(hint));
  }

  private Span at(String key) {
    return repeat.get(key).map(Node::at).orElse(repeat.at());
  }
}
