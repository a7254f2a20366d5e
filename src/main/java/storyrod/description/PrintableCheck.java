package storyrod.description;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;

/** Finds characters in a description's values that no page could show. */
final class PrintableCheck {
  private final IntPredicate printable;
  private final Diagnostics diagnostics;

  PrintableCheck(IntPredicate printable, Diagnostics diagnostics) {
    this.printable = printable;
    this.diagnostics = diagnostics;
  }

  /** Reports the first such character of each value. */
  void check(Node node) {
    switch (node) {
      case Scalar scalar -> text(scalar);
      case Sequence sequence -> sequence.items().forEach(this::check);
      case Mapping mapping -> mapping.members().forEach(member -> check(member.value()));
    }
  }

  private void text(Scalar scalar) {
    OptionalInt bad = scalar.text().codePoints().filter(printable.negate()).findFirst();
    bad.ifPresent(
        codePoint ->
            diagnostics.add(
                Diagnostic.error("unprintable", place(scalar, codePoint), message(codePoint))
                    .hint("take it out, or write it another way; nothing can stand in for it")));
  }

  private static String message(int codePoint) {
    String name = Character.getName(codePoint);
    return String.format(
        Locale.ROOT,
        "no font of the plan set can print the character U+%04X%s",
        codePoint,
        name == null ? "" : " (" + name.toLowerCase(Locale.ROOT) + ")");
  }

  /** The character itself, or the whole value where it is written as an escape. */
  private static Span place(Scalar scalar, int codePoint) {
    Span at = scalar.at();
    int found = at.source().text().indexOf(codePoint, at.start());
    return found < 0 || found >= at.end()
        ? at
        : new Span(at.source(), found, found + Character.charCount(codePoint));
  }
}
