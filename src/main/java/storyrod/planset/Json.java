package storyrod.planset;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/** JSON as text: maps and lists in their own order, indented, lines ended by {@code \n}. */
public final class Json {
  private static final ObjectWriter WRITER = writer();

  private Json() {}

  /** The text of maps, lists, strings, numbers and truth values. */
  public static String text(Object value) {
    return WRITER.writeValueAsString(value) + "\n";
  }

  private static ObjectWriter writer() {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    Separators separators =
        Separators.createDefaultInstance().withObjectNameValueSpacing(Separators.Spacing.AFTER);
    return JsonMapper.builder()
        .build()
        .writer()
        .with(new DefaultPrettyPrinter(separators).withObjectIndenter(lines));
  }
}
