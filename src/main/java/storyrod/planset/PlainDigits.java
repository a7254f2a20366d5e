package storyrod.planset;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Runs code of others that formats numbers under the default locale. Where that locale has digits
 * of its own, the default for formatting is {@link Locale#ROOT} until the last such run has ended,
 * for every thread.
 */
final class PlainDigits {
  private static int running;
  private static Optional<Locale> replaced = Optional.empty();

  private PlainDigits() {}

  static <T> T with(Supplier<T> work) {
    enter();
    try {
      return work.get();
    } finally {
      leave();
    }
  }

  private static synchronized void enter() {
    running++;
    if (!String.format("%d", 1234567890).equals("1234567890")) {
      replaced = Optional.of(Locale.getDefault(Locale.Category.FORMAT));
      Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
    }
  }

  private static synchronized void leave() {
    running--;
    if (running == 0) {
      replaced.ifPresent(locale -> Locale.setDefault(Locale.Category.FORMAT, locale));
      replaced = Optional.empty();
    }
  }
}
