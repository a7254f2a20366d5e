package storyrod.description;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Further files from one folder, under the names by which a description asks for them. */
public record FolderLibrary(Path folder) implements Library {
  @Override
  public Found find(String path, SourceText from) {
    Path file = folder.resolve(path);
    if (!Files.isRegularFile(file)) {
      return Found.none("there is no file '" + path + "'", "look at its name");
    }
    try {
      return Found.of(new SourceText(path, Files.readString(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
