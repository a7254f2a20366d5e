package storyrod.cli;

import java.util.Locale;
import java.util.Map;
import java.util.Stack;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.TypeConversionException;

/** The value of a switch, which may be left out: then the next word belongs to another. */
final class OnOff implements ITypeConverter<Boolean>, IParameterConsumer {
  private static final Map<String, Boolean> WORDS =
      Map.of("on", true, "yes", true, "true", true, "off", false, "no", false, "false", false);

  @Override
  public Boolean convert(String word) {
    Boolean value = WORDS.get(word.toLowerCase(Locale.ROOT));
    if (value == null) {
      throw new TypeConversionException("expected on or off, found '" + word + "'");
    }
    return value;
  }

  @Override
  public void consumeParameters(Stack<String> words, ArgSpec option, CommandSpec command) {
    boolean isGiven = !words.isEmpty() && WORDS.containsKey(words.peek().toLowerCase(Locale.ROOT));
    option.setValue(!isGiven || convert(words.pop()));
  }
}
