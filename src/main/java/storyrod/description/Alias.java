package storyrod.description;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Another name for a part: one of a list of parts that is known once all parts are.
 *
 * @param names paths in a scope
 * @param index which of them, from 0; past the list it stands for nothing
 */
record Alias(Scope scope, Supplier<List<String>> names, int index) {
  static Alias of(Scope scope, String path) {
    return new Alias(scope, () -> List.of(path), 0);
  }

  /** A name that has been given no part. */
  static Alias ofNothing(Scope scope) {
    return new Alias(scope, List::of, 0);
  }

  Optional<String> path() {
    List<String> all = names.get();
    return index >= 0 && index < all.size() ? Optional.of(all.get(index)) : Optional.empty();
  }
}
