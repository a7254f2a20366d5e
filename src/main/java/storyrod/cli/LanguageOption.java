package storyrod.cli;

import java.util.Iterator;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import storyrod.words.Words;

/** The language of what a command tells without a project's own words. */
final class LanguageOption {
  @Option(
      names = "--language",
      paramLabel = "TAG",
      defaultValue = "en",
      completionCandidates = Tags.class,
      description = "The language of what is told: ${COMPLETION-CANDIDATES}; en if not given.")
  private String language;

  /** The languages that there are words in. */
  static final class Tags implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Words.LANGUAGES.iterator();
    }
  }

  Words words(CommandSpec spec) {
    if (!Words.LANGUAGES.contains(language)) {
      throw new ParameterException(
          spec.commandLine(),
          "--language takes %s, not '%s'".formatted(String.join(", ", Words.LANGUAGES), language));
    }
    return Words.load(language);
  }
}
