package storyrod.description;

/**
 * A key that an entry may have; the reader, the reference and the checks all read this one list.
 *
 * @param help one sentence for the reference
 */
public record Key(String name, ValueType type, boolean required, String help) {
  public static Key required(String name, ValueType type, String help) {
    return new Key(name, type, true, help);
  }

  public static Key optional(String name, ValueType type, String help) {
    return new Key(name, type, false, help);
  }
}
