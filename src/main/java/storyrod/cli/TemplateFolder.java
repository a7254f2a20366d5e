package storyrod.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A folder with templates and words that lie over those of the tool. */
record TemplateFolder(Path folder) {
  private static final Pattern NAMES = Pattern.compile(".*\\.(ftl|css|properties)");
  private static final long MOST_BYTES = 1 << 20;
  private static final int DEEPEST = 4;

  /** The texts by their path below the folder, with slashes; none if there is no such folder. */
  Map<String, String> texts() throws IOException {
    if (!Files.isDirectory(folder)) {
      return Map.of();
    }
    Map<String, String> texts = new TreeMap<>();
    for (Path file : files()) {
      String name = folder.relativize(file).toString().replace('\\', '/');
      texts.put(name, text(file));
    }
    return texts;
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
      return all.filter(Files::isRegularFile)
          .filter(file -> NAMES.matcher(file.getFileName().toString()).matches())
          .toList();
    }
  }

  private String text(Path file) throws IOException {
    if (RealPlace.isOutside(file, folder)) {
      throw new FileSystemException(file.toString(), null, "a link leads out of the folder");
    }
    if (Files.size(file) > MOST_BYTES) {
      throw new FileSystemException(file.toString(), null, "a template has no more than 1 MiB");
    }
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (CharacterCodingException e) {
      throw new FileSystemException(file.toString(), null, "it is not text in UTF-8");
    }
  }
}
