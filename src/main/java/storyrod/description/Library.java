package storyrod.description;

import java.util.Optional;

/** Where a description's further files are found; only the outside knows of folders. */
public interface Library {
  /**
   * Looks for a file.
   *
   * @param path as written, such as {@code parts/door.yaml}
   * @param from the description that names it
   */
  Found find(String path, SourceText from);

  /** A text, or why there is none and what to do about it. */
  record Found(Optional<SourceText> text, String why, String hint) {
    public static Found of(SourceText text) {
      return new Found(Optional.of(text), "", "");
    }

    public static Found none(String why, String hint) {
      return new Found(Optional.empty(), why, hint);
    }
  }

  /** For a text that stands alone. */
  static Library none() {
    return (path, from) ->
        Found.none("there is no file '" + path + "'", "no further files can be read here");
  }
}
