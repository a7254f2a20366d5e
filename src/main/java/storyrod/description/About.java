package storyrod.description;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the cover says: keys {@code project}, {@code maker}, {@code summary}, {@code edition} and
 * {@code date} (ISO 8601).
 */
public record About(
    Located<String> project,
    Optional<String> maker,
    Optional<String> summary,
    Optional<String> edition,
    Optional<LocalDate> date) {}
