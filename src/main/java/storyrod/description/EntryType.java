package storyrod.description;

import java.util.List;

/** A kind of entry, such as the joint {@code dado}: its name, what it is for, and its keys. */
public record EntryType(String name, String summary, List<Key> keys) {
  public EntryType {
    keys = List.copyOf(keys);
  }
}
