package storyrod.description;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the cover says: keys {@code project}, {@code maker}, {@code summary}, {@code edition},
 * {@code date} (ISO 8601) and {@code licence}, which stands on a page of its own; and {@code
 * currency}, in which all prices are.
 */
public record About(
    Located<String> project,
    Optional<String> maker,
    Optional<String> summary,
    Optional<String> edition,
    Optional<LocalDate> date,
    Optional<String> licence,
    Optional<String> currency) {
  /** Without a licence text and a currency. */
  public About(
      Located<String> project,
      Optional<String> maker,
      Optional<String> summary,
      Optional<String> edition,
      Optional<LocalDate> date) {
    this(project, maker, summary, edition, date, Optional.empty(), Optional.empty());
  }
}
