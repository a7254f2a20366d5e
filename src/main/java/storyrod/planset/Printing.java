package storyrod.planset;

import java.util.Optional;
import storyrod.words.Words;

/**
 * How plan sets are printed.
 *
 * @param paper that which is usual for the project's unit, if empty
 */
public record Printing(
    Templates templates, Words words, Edition edition, Optional<Paper> paper, Choice choice) {
  /** The same with all steps. */
  Printing whole() {
    return new Printing(templates, words, edition, paper, Choice.ALL);
  }

  /** The edition to sell, in a language, on the usual paper. */
  public static Printing usual(Words words) {
    return new Printing(
        Templates.SHARED, words, Edition.usual(Templates.SHARED), Optional.empty(), Choice.ALL);
  }
}
