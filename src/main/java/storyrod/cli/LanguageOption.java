package storyrod.cli;

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
      description = "The language of what is told: en (the usual) or de.")
  private String language;

  Words words(CommandSpec spec) {
    if (!Words.LANGUAGES.contains(language)) {
      throw new ParameterException(
          spec.commandLine(),
          "--language takes %s, not '%s'".formatted(String.join(", ", Words.LANGUAGES), language));
    }
    return Words.load(language);
  }
}
