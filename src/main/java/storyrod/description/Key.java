package storyrod.description;

import java.util.Optional;

/**
 * A key that an entry may have; the reader, the reference and the checks all read this one list.
 *
 * @param help one sentence for the reference
 * @param standard what holds if the key is left out, where that is one value
 */
public record Key(
    String name, ValueType type, boolean required, String help, Optional<Standard> standard) {

  /** A usual value as a description would write it, in a project of either unit. */
  public record Standard(String inch, String mm) {}

  public static Key required(String name, ValueType type, String help) {
    return new Key(name, type, true, help, Optional.empty());
  }

  public static Key optional(String name, ValueType type, String help) {
    return new Key(name, type, false, help, Optional.empty());
  }

  /** The same key with what holds if it is left out. */
  public Key standard(String written) {
    return standard(written, written);
  }

  /** The same key with what holds if it is left out, which differs by the project's unit. */
  public Key standard(String inch, String mm) {
    return new Key(name, type, required, help, Optional.of(new Standard(inch, mm)));
  }
}
