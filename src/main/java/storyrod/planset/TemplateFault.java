package storyrod.planset;

import freemarker.core.ParseException;
import freemarker.template.TemplateException;
import java.util.Optional;

/**
 * A fault in a template, an edition or words that a project or a user laid over those of the tool,
 * with its place and the value involved. It is theirs to mend.
 */
public final class TemplateFault extends RuntimeException {
  private static final long serialVersionUID = 1;

  TemplateFault(String message) {
    super(message);
  }

  static TemplateFault in(TemplateException e) {
    String value =
        Optional.ofNullable(e.getBlamedExpressionString())
            .map(expression -> " at the value " + expression)
            .orElse("");
    return new TemplateFault(
        "template %s, line %d%s: %s"
            .formatted(
                e.getTemplateSourceName(),
                e.getLineNumber() == null ? 1 : e.getLineNumber(),
                value,
                firstLine(e.getMessageWithoutStackTop())));
  }

  static TemplateFault in(ParseException e) {
    return new TemplateFault(
        "template %s, line %d: %s"
            .formatted(e.getTemplateName(), e.getLineNumber(), firstLine(e.getEditorMessage())));
  }

  private static String firstLine(String message) {
    return message.strip().lines().findFirst().orElse("it cannot be read");
  }
}
