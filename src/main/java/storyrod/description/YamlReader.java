package storyrod.description;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Turns a text into nodes. It takes the plain part of YAML only: one document, no anchors, aliases
 * or tags, no key twice.
 */
final class YamlReader {
  private static final int LONGEST_TEXT = 50_000_000;
  private static final YAMLFactory FACTORY =
      YAMLFactory.builder()
          .loadSettings(
              LoadSettings.builder()
                  .setCodePointLimit(LONGEST_TEXT)
                  .setAllowDuplicateKeys(true)
                  .build())
          .disable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private final SourceText source;
  private final Offsets offsets;
  private final Diagnostics diagnostics;
  private final YAMLParser parser;
  private boolean refused;

  private YamlReader(SourceText source, Diagnostics diagnostics) {
    this.source = source;
    this.offsets = new Offsets(source.text());
    this.diagnostics = diagnostics;
    this.parser =
        (YAMLParser)
            FACTORY.createParser(
                ObjectReadContext.empty(), new StringReader(offsets.withoutMark()));
  }

  /** The text's root; none if there is nothing in it or if it is not YAML, which is reported. */
  static Optional<Node> read(SourceText source, Diagnostics diagnostics) {
    YamlReader reader = new YamlReader(source, diagnostics);
    try {
      return reader.document();
    } catch (JacksonException fault) {
      diagnostics.add(new YamlFaults(source, reader.offsets).of(fault));
      return Optional.empty();
    }
  }

  private Optional<Node> document() {
    JsonToken first = parser.nextToken();
    if (first == null) {
      diagnostics.add(emptyFile());
      return Optional.empty();
    }
    Node root = node(first);
    if (root instanceof Scalar scalar && scalar.text().isEmpty()) {
      diagnostics.add(emptyFile());
      return Optional.empty();
    }
    if (parser.nextToken() != null) {
      refuse(tokenSpan(), "a second document starts here", "keep one project in one file");
    }
    return refused ? Optional.empty() : Optional.of(root);
  }

  private Diagnostic emptyFile() {
    return Diagnostic.error("empty-file", Span.startOf(source), "there is nothing in this file")
        .hint("start with a line such as `project: Window bench`, then units, stock and parts");
  }

  private Node node(JsonToken token) {
    refuseFeatures();
    return switch (token) {
      case START_OBJECT -> mapping();
      case START_ARRAY -> sequence();
      default -> scalar();
    };
  }

  private void refuseFeatures() {
    int start = tokenStart();
    switch (start < source.text().length() ? source.text().charAt(start) : ' ') {
      case '*' ->
          refuse(
              word(start),
              "an alias cannot be used here",
              "write the value out, or name it in sizes");
      case '&' ->
          refuse(
              word(start), "an anchor cannot be used here", "take it away; sizes can have names");
      case '!' ->
          refuse(
              word(start), "a tag cannot be used here", "take it away, or put the text in quotes");
      default -> {}
    }
  }

  private Span word(int start) {
    int end = start;
    while (end < source.text().length() && !Character.isWhitespace(source.text().charAt(end))) {
      end++;
    }
    return span(start, end);
  }

  private void refuse(Span at, String message, String hint) {
    refused = true;
    diagnostics.add(Diagnostic.error("yaml-feature", at, message).hint(hint));
  }

  private Mapping mapping() {
    int start = tokenStart();
    int end = tokenEnd();
    Map<String, Member> members = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      Scalar key = scalar();
      Node value = node(parser.nextToken());
      end = Math.max(key.at().end(), value.at().end());
      keep(YamlSlips.split(new Member(key, value), diagnostics), members);
    }
    boolean flow = isAt(start, '{');
    return new Mapping(List.copyOf(members.values()), span(start, flow ? tokenEnd() : end));
  }

  private void keep(Member member, Map<String, Member> members) {
    Member before = members.putIfAbsent(member.key().text(), member);
    if (before != null) {
      String key = Quote.of(member.key().text());
      diagnostics.add(
          Diagnostic.error("duplicate-key", member.key().at(), "'" + key + "' stands here twice")
              .also(before.key().at(), "it is here already")
              .hint("keep one of the two, or give one another name"));
    }
  }

  private Sequence sequence() {
    int start = tokenStart();
    int end = tokenEnd();
    List<Node> items = new ArrayList<>();
    for (JsonToken token = parser.nextToken();
        token != JsonToken.END_ARRAY;
        token = parser.nextToken()) {
      Node item = node(token);
      items.add(item);
      end = item.at().end();
    }
    return new Sequence(items, span(start, isAt(start, '[') ? tokenEnd() : end));
  }

  private Scalar scalar() {
    Span at = tokenSpan();
    boolean quoted = isAt(at.start(), '"') || isAt(at.start(), '\'');
    String raw = source.text().substring(at.start(), at.end());
    boolean plainLine = !quoted && raw.indexOf('\n') < 0;
    return new Scalar(plainLine ? raw.strip() : parser.getString(), quoted, at);
  }

  private boolean isAt(int offset, char expected) {
    return offset < source.text().length() && source.text().charAt(offset) == expected;
  }

  private Span tokenSpan() {
    int start = tokenStart();
    int end = Math.max(start, tokenEnd());
    return span(start, start + source.text().substring(start, end).stripTrailing().length());
  }

  private int tokenStart() {
    return offset(parser.currentTokenLocation());
  }

  private int tokenEnd() {
    return offset(parser.currentLocation());
  }

  private int offset(TokenStreamLocation location) {
    return offsets.of((int) Math.max(0, location.getCharOffset()));
  }

  private Span span(int start, int end) {
    return new Span(source, start, Math.max(start, end));
  }
}
