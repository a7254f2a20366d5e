package storyrod.description;

import java.util.List;
import java.util.Optional;

/** A node of a description's text, with its place. */
sealed interface Node {
  Span at();

  /** What a person would call it. */
  String kind();

  /**
   * A single value.
   *
   * @param text what is meant, without quotes
   * @param quoted whether it stands between quotes
   */
  record Scalar(String text, boolean quoted, Span at) implements Node {
    @Override
    public String kind() {
      return text.isEmpty() ? "nothing" : "'" + Quote.of(text) + "'";
    }

    /** The place of a stretch of the text, or of all of it where the two don't run alongside. */
    Span part(int from, int to) {
      int lead = quoted ? 1 : 0;
      boolean alongside = at.source().text().startsWith(text, at.start() + lead);
      return alongside ? at.part(lead + from, lead + to) : at;
    }
  }

  /** Keys with values, in order; no key stands twice. */
  record Mapping(List<Member> members, Span at) implements Node {
    public Mapping {
      members = List.copyOf(members);
    }

    @Override
    public String kind() {
      return "keys with values";
    }

    /** With another value for a key, in its place or at the end. */
    Mapping with(String key, Node value) {
      return with(new Scalar(key, false, value.at()), value);
    }

    Mapping with(Scalar key, Node value) {
      java.util.List<Member> changed = new java.util.ArrayList<>(members);
      for (int i = 0; i < changed.size(); i++) {
        if (changed.get(i).key().text().equals(key.text())) {
          changed.set(i, new Member(changed.get(i).key(), value));
          return new Mapping(changed, at);
        }
      }
      changed.add(new Member(key, value));
      return new Mapping(changed, at);
    }

    /** With another member in the place of the one of the same key. */
    Mapping replaced(Member other) {
      return new Mapping(
          members.stream()
              .map(each -> each.key().text().equals(other.key().text()) ? other : each)
              .toList(),
          at);
    }

    Optional<Node> get(String key) {
      return members.stream()
          .filter(member -> member.key().text().equals(key))
          .map(Member::value)
          .findFirst();
    }
  }

  /** The single values of a list, or a single value; none of anything else. */
  static List<String> texts(Node node) {
    return switch (node) {
      case Scalar text -> List.of(text.text());
      case Sequence list -> list.items().stream().flatMap(item -> texts(item).stream()).toList();
      case Mapping keys -> List.of();
    };
  }

  /** A list. */
  record Sequence(List<Node> items, Span at) implements Node {
    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /** A key with its value. */
  record Member(Scalar key, Node value) {}
}
