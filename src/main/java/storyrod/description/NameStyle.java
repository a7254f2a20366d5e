package storyrod.description;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import storyrod.description.Node.Scalar;

/** Names are lower-case words joined by hyphens and mean nothing else in a formula. */
final class NameStyle {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
  private static final List<String> TAKEN =
      List.of(
          "to",
          "min",
          "max",
          Expression.ROUND_UP,
          "when",
          "else",
          "and",
          "or",
          "not",
          "each",
          "nth",
          "before",
          "after");

  private NameStyle() {}

  static void check(Scalar name, Context context) {
    if (!NAME.matcher(name.text()).matches()) {
      context.diagnostics().add(wrong(name));
    } else if (TAKEN.contains(name.text())) {
      context
          .diagnostics()
          .add(
              Diagnostic.error(
                      "name-style", name.at(), "'" + name.text() + "' means something in formulas")
                  .hint("choose another name"));
    }
  }

  private static Diagnostic wrong(Scalar name) {
    String better =
        name.text()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^[-0-9]+|-+$", "");
    String hint = better.isEmpty() ? "" : ", such as `" + Quote.of(better) + "`";
    return Diagnostic.error(
            "name-style", name.at(), "'" + Quote.of(name.text()) + "' cannot be a name")
        .hint("write lower-case words joined by hyphens" + hint);
  }

  /** The name for a reader: {@code left-side} becomes {@code Left side}. */
  static String title(String name) {
    String words = name.replace('-', ' ');
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
