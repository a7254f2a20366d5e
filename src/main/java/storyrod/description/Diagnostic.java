package storyrod.description;

import java.util.List;

/**
 * One fault or finding: what is wrong, where, and what to do.
 *
 * @param code the stable name of the check, such as {@code unknown-name}
 * @param message lower case, no full stop, with the user's own values
 * @param also further places that have to do with it, such as the second of two that disagree
 * @param hints things to do about it
 */
public record Diagnostic(
    Severity severity, String code, String message, Span at, List<Place> also, List<String> hints) {
  public Diagnostic {
    also = List.copyOf(also);
    hints = List.copyOf(hints);
  }

  /** The code of what only follows from another fault and need not be told. */
  static final String FOLLOW_UP = "follow-up";

  /** A second place and what is there. */
  public record Place(Span at, String remark) {}

  public static Diagnostic error(String code, Span at, String message) {
    return new Diagnostic(Severity.ERROR, code, message, at, List.of(), List.of());
  }

  public static Diagnostic warning(String code, Span at, String message) {
    return new Diagnostic(Severity.WARNING, code, message, at, List.of(), List.of());
  }

  public static Diagnostic advice(String code, Span at, String message) {
    return new Diagnostic(Severity.ADVICE, code, message, at, List.of(), List.of());
  }

  public Diagnostic hint(String hint) {
    return new Diagnostic(severity, code, message, at, also, plus(hints, hint));
  }

  public Diagnostic also(Span place, String remark) {
    return new Diagnostic(severity, code, message, at, plus(also, new Place(place, remark)), hints);
  }

  /** The same in other words. */
  Diagnostic saying(String words) {
    return new Diagnostic(severity, code, words, at, also, hints);
  }

  public boolean isError() {
    return severity == Severity.ERROR;
  }

  private static <T> List<T> plus(List<T> list, T last) {
    return java.util.stream.Stream.concat(list.stream(), java.util.stream.Stream.of(last)).toList();
  }
}
