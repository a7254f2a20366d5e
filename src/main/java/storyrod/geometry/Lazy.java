package storyrod.geometry;

import java.util.Optional;
import java.util.function.Supplier;

/** A value that is worked out when it is first asked for, and only once. */
public final class Lazy<T> implements Supplier<T> {
  private final Supplier<T> source;
  private Optional<T> value = Optional.empty();

  public Lazy(Supplier<T> source) {
    this.source = source;
  }

  @Override
  public synchronized T get() {
    if (value.isEmpty()) {
      value = Optional.of(source.get());
    }
    return value.get();
  }
}
