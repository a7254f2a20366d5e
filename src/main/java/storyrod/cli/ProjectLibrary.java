package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostics;
import storyrod.description.Library;
import storyrod.description.SourceText;

/**
 * Finds further files by a path relative to the description that names them, without leaving its
 * folder by a step upwards or by a link, or else in the user's own folder.
 */
record ProjectLibrary(Path userFolder) implements Library {
  /** The folder that the variable names, or the usual one in the user's home. */
  private static final String VARIABLE = "STORYROD_FOLDER";

  static ProjectLibrary usual() {
    String named = System.getenv(VARIABLE);
    return new ProjectLibrary(
        named == null || named.isBlank()
            ? Path.of(System.getProperty("user.home", "."), "storyrod")
            : Path.of(named));
  }

  @Override
  public Found find(String path, SourceText from) {
    if (escapes(path)) {
      return outside(path);
    }
    Path parent = Path.of(from.file()).toAbsolutePath().getParent();
    for (Path folder : List.of(parent == null ? Path.of(".") : parent, userFolder)) {
      Path file = folder.resolve(path);
      if (Files.isRegularFile(file)) {
        return leadsOut(file, folder) ? outside(path) : read(file);
      }
    }
    return Found.none(
        "there is no file '" + path + "'",
        "it is looked for beside the description and in " + userFolder);
  }

  private Found outside(String path) {
    return Found.none(
        "'" + path + "' leads out of the folder",
        "name a file in the project's folder, or put it into " + userFolder);
  }

  /**
   * Whether a link leads out, which only users may lay, in their own folder; where that cannot be
   * told, the file is not read either.
   */
  private boolean leadsOut(Path file, Path folder) {
    try {
      return !folder.equals(userFolder) && RealPlace.isOutside(file, folder);
    } catch (IOException failure) {
      return true;
    }
  }

  private static boolean escapes(String path) {
    try {
      Path relative = Path.of(path).normalize();
      return relative.isAbsolute() || relative.startsWith("..");
    } catch (InvalidPathException fault) {
      return true;
    }
  }

  private static Found read(Path file) {
    Diagnostics faults = new Diagnostics();
    try {
      Optional<SourceText> text = ProjectFile.at(shown(file)).read(faults);
      return text.map(Found::of)
          .orElseGet(
              () -> Found.none(faults.sorted().getFirst().message(), "see that it can be read"));
    } catch (IOException failure) {
      return Found.none("'" + file + "' cannot be read", "see that it is there and allowed");
    }
  }

  /** As short as a person would write it. */
  private static Path shown(Path file) {
    Path here = Path.of("").toAbsolutePath();
    return file.toAbsolutePath().startsWith(here) ? here.relativize(file.toAbsolutePath()) : file;
  }
}
