package storyrod.description;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every kind of entry that a description can hold, found by following the keys from the project
 * down, each with a name of its own: {@code part}, {@code joint-dado}, {@code cut-holes}, {@code
 * shape-crown}.
 */
public final class Kinds {
  private final Vocabulary vocabulary;
  private final Map<EntryType, String> names = new LinkedHashMap<>();
  private final Deque<EntryType> open = new ArrayDeque<>();

  private Kinds(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** The names by kind, the project first and every kind after one whose key takes it. */
  public static Map<EntryType, String> of(Vocabulary vocabulary) {
    Kinds kinds = new Kinds(vocabulary);
    kinds.add("", Sections.PROJECT);
    while (!kinds.open.isEmpty()) {
      EntryType owner = kinds.open.poll();
      owner.keys().forEach(key -> kinds.follow(owner, key.type()));
    }
    return Collections.unmodifiableMap(kinds.names);
  }

  /** A kind whose name is taken is called after its owner too, such as {@code assembly-turn}. */
  private void follow(EntryType owner, ValueType type) {
    String prefix = type instanceof ValueType.Kinds kinds ? kinds.what() + "-" : "";
    for (EntryType next : inside(type)) {
      boolean taken = names.containsValue(prefix + next.name());
      add(taken ? owner.name() + "-" : prefix, next);
    }
    if (type instanceof ValueType.Joints) {
      vocabulary.joints().forEach(kind -> add("joint-", kind));
    }
    if (type instanceof ValueType.Cuts) {
      vocabulary.cuts().forEach(kind -> add("cut-", kind));
    }
  }

  /** The kinds of entry that a value is made of, joints and cuts apart. */
  public static List<EntryType> inside(ValueType type) {
    if (type instanceof ValueType.Section section) {
      return List.of(section.type());
    }
    if (type instanceof ValueType.SharedSection section) {
      return List.of(section.type());
    }
    if (type instanceof ValueType.Named named) {
      return List.of(named.type());
    }
    if (type instanceof ValueType.Listed listed) {
      return List.of(listed.type());
    }
    if (type instanceof ValueType.Assemblies) {
      return List.of(PartSections.ASSEMBLY);
    }
    if (type instanceof ValueType.Kinds kinds) {
      return kinds.types();
    }
    return type instanceof ValueType.OneOrMore some ? inside(some.each()) : List.of();
  }

  private void add(String prefix, EntryType type) {
    if (!names.containsKey(type)) {
      names.put(type, prefix + type.name());
      open.add(type);
    }
  }
}
