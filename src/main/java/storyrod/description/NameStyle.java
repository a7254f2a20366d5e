package storyrod.description;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import storyrod.description.Node.Scalar;

/** Names are lower-case words joined by hyphens and mean nothing else in a formula. */
final class NameStyle {
  static final String WRITTEN = "^[a-z][a-z0-9]*(-[a-z0-9]+)*$";
  private static final Pattern NAME = Pattern.compile(WRITTEN);
  static final List<String> TAKEN =
      List.of(
          "to",
          "min",
          "max",
          Expression.ROUND_UP,
          Expression.PRINTABLE,
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
    String better = better(name.text());
    String hint = better.isEmpty() ? "" : ", such as `" + Quote.of(better) + "`";
    return Diagnostic.error(
            "name-style", name.at(), "'" + Quote.of(name.text()) + "' cannot be a name")
        .hint("write lower-case words joined by hyphens" + hint);
  }

  /** Without marks on letters, and with what comes before the first letter put last. */
  private static String better(String name) {
    String plain =
        Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
            .replaceAll("\\p{M}", "")
            .replace("ß", "ss")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    String turned = plain.replaceFirst("^([0-9][0-9a-z]*)-(.*[a-z].*)$", "$2-$1");
    return turned.replaceAll("^[-0-9]+", "");
  }

  /** The name for a reader: {@code left-side} becomes {@code Left side}. */
  static String title(String name) {
    String words = name.replace('-', ' ');
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
