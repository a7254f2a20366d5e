package storyrod.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import storyrod.description.SourceText;

/** The descriptions that come with the tool, by the folder they lie in. */
final class Shipped {
  private static final String ROOT = "/storyrod/";
  private static final String ENDING = ".yaml";

  private Shipped() {}

  /** All descriptions of a folder in the order of their names; none if there is no such folder. */
  static List<SourceText> all(String folder) {
    URL url = Shipped.class.getResource(ROOT + folder);
    if (url == null) {
      return List.of();
    }
    try {
      return names(url).stream()
          .filter(name -> name.endsWith(ENDING))
          .sorted()
          .map(name -> read(folder, name.substring(0, name.length() - ENDING.length())))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One description; asking for one that does not come with the tool is a bug. */
  static SourceText read(String folder, String name) {
    String path = ROOT + folder + "/" + name + ENDING;
    try (InputStream in = Shipped.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("bug: nothing comes with the tool at " + path);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new SourceText(name + ENDING, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> names(URL folder) throws IOException {
    if (folder.openConnection() instanceof JarURLConnection jar) {
      String start = jar.getEntryName().replaceAll("/*$", "/");
      return jar.getJarFile().stream()
          .map(entry -> entry.getName())
          .filter(name -> name.startsWith(start))
          .map(name -> name.substring(start.length()))
          .filter(name -> name.indexOf('/') < 0)
          .toList();
    }
    try (Stream<Path> files = Files.list(Path.of(URI.create(folder.toString())))) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
