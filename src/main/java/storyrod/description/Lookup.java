package storyrod.description;

import java.util.Optional;
import java.util.function.Function;

/** What a name stands for, or why it stands for nothing and what to do. */
record Lookup<T>(Optional<T> found, String code, String message, String hint) {
  static <T> Lookup<T> of(T found) {
    return new Lookup<>(Optional.of(found), "", "", "");
  }

  static <T> Lookup<T> none(String code, String message, String hint) {
    return new Lookup<>(Optional.empty(), code, message, hint);
  }

  /** Nothing, where the reason has been told elsewhere. */
  static <T> Lookup<T> untold() {
    return none(Diagnostic.FOLLOW_UP, "this needs something that is at fault itself", "");
  }

  <U> Lookup<U> map(Function<T, U> to) {
    return new Lookup<>(found.map(to), code, message, hint);
  }

  <U> Lookup<U> flatMap(Function<T, Lookup<U>> to) {
    return found.map(to).orElseGet(this::otherwise);
  }

  /** The same failure, where something else was looked for in the end. */
  <U> Lookup<U> otherwise() {
    return none(code, message, hint);
  }

  Diagnostic at(Span at) {
    return Diagnostic.error(code, at, message).hint(hint);
  }
}
