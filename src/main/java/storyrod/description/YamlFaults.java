package storyrod.description;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import tools.jackson.core.JacksonException;

/** Says in plain words why a text is not YAML. */
final class YamlFaults {
  private static final String CODE = "yaml";

  private final SourceText source;
  private final Offsets offsets;

  YamlFaults(SourceText source, Offsets offsets) {
    this.source = source;
    this.offsets = offsets;
  }

  Diagnostic of(JacksonException fault) {
    for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
      if (cause instanceof MarkedYamlEngineException marked) {
        return marked(marked);
      }
      if (cause instanceof ReaderException unreadable) {
        return error(offsets.of(unreadable.getPosition()), "a character that no text should have")
            .hint("delete it; it may have come in by copying");
      }
    }
    return limit(fault);
  }

  private Diagnostic limit(JacksonException fault) {
    long at = fault.getLocation() == null ? 0 : fault.getLocation().getCharOffset();
    return error(offsets.of((int) Math.max(0, at)), "too deep or too long to be read")
        .hint("look for brackets that open and never close");
  }

  private Diagnostic marked(MarkedYamlEngineException fault) {
    int problem = fault.getProblemMark().map(mark -> offsets.of(mark.getIndex())).orElse(0);
    int context = fault.getContextMark().map(mark -> offsets.of(mark.getIndex())).orElse(problem);
    String why = Optional.ofNullable(fault.getProblem()).orElse("");
    String where = Optional.ofNullable(fault.getContext()).orElse("");
    if (why.startsWith("expected ','")) {
      return bracket(problem, context);
    }
    return tab(problem)
        .or(() -> structure(why, problem))
        .orElseGet(() -> scalar(where, context, problem));
  }

  private Optional<Diagnostic> tab(int problem) {
    String line = source.line(source.lineOf(problem));
    String lead = line.substring(0, line.length() - line.stripLeading().length());
    int start = source.lineStart(source.lineOf(problem));
    boolean atTab = problem < source.text().length() && source.text().charAt(problem) == '\t';
    if (lead.indexOf('\t') < 0 && !atTab) {
      return Optional.empty();
    }
    int at = atTab ? problem : start + lead.indexOf('\t');
    return Optional.of(
        error(at, "a tab stands where only spaces may be")
            .hint(
                lead.indexOf('\t') < 0
                    ? "put a space in its place"
                    : "indent with spaces, two a level"));
  }

  private Optional<Diagnostic> structure(String why, int at) {
    if (why.startsWith("mapping values are not allowed")) {
      return YamlSlips.near(source, at)
          .or(
              () ->
                  Optional.of(
                      error(at, "a colon cannot stand here")
                          .hint(
                              "put text that has a colon in it in quotes, or mend the indentation")));
    }
    if (why.startsWith("expected <block end>")) {
      return Optional.of(
          error(at, "this does not fit in with the lines above")
              .hint("indent it as far as the others of its list or section"));
    }
    return Optional.empty();
  }

  private Diagnostic bracket(int at, int opening) {
    Optional<Diagnostic> semicolon = YamlSlips.semicolon(source, opening, at);
    if (semicolon.isPresent()) {
      return semicolon.get();
    }
    return error(at, "expected a comma or a closing bracket")
        .also(span(opening), "the bracket opens here")
        .hint("close every `{` and `[`, and put a comma between two values");
  }

  private Diagnostic scalar(String where, int context, int problem) {
    if (where.contains("quoted scalar")) {
      return error(context, "a quote opens here and does not close as it should")
          .hint(
              "close it on the same line; inside double quotes write \\\\ and \\\" for \\ and \"");
    }
    if (where.contains("simple key")) {
      return error(context, "expected a colon after this").hint("write `key: value`");
    }
    if (where.contains("anchor") || where.contains("alias") || where.contains("tag")) {
      return error(context, "anchors, aliases and tags cannot be used here")
          .hint("put text that starts with `&`, `*` or `!` in quotes");
    }
    char first = problem < source.text().length() ? source.text().charAt(problem) : ' ';
    if ("@`%?|>".indexOf(first) >= 0) {
      return error(problem, "no text can start with '" + first + "' here").hint("put it in quotes");
    }
    return error(problem, "this cannot be read as YAML")
        .hint("look at the indentation, the quotes and the brackets here and just above");
  }

  private Diagnostic error(int at, String message) {
    return Diagnostic.error(CODE, span(at), message);
  }

  private Span span(int at) {
    int start = Math.min(at, source.text().length());
    return new Span(source, start, start + 1);
  }
}
