package storyrod.description;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Node.Member;

/** Finds how a description writes the keys of a kind of entry. */
public final class Examples {
  private Examples() {}

  /**
   * The first written value of each key that a description gives to entries of one kind, as it
   * stands in the text; nothing for a value that goes over several lines.
   */
  public static Map<String, String> of(EntryType kind, SourceText source, Vocabulary vocabulary) {
    Map<String, String> written = new LinkedHashMap<>();
    Optional<Node> root = YamlReader.read(source, new Diagnostics());
    root.ifPresent(
        node ->
            Walk.over(
                node,
                vocabulary,
                (type, mapping) -> {
                  if (type.equals(kind)) {
                    mapping.members().forEach(member -> put(written, member));
                  }
                }));
    return written;
  }

  private static void put(Map<String, String> written, Member member) {
    Span at = member.value().at();
    String text = at.source().text().substring(at.start(), at.end()).strip();
    written.putIfAbsent(member.key().text(), text.contains("\n") ? "" : text);
  }
}
