package storyrod;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.googlejavaformat.java.Formatter;
import com.google.googlejavaformat.java.FormatterException;
import com.google.googlejavaformat.java.ImportOrderer;
import com.google.googlejavaformat.java.JavaFormatterOptions;
import com.google.googlejavaformat.java.RemoveUnusedImports;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The formatter decides the layout of the code. {@code -Dformat.update} lets it write. */
class FormatTest {
  private static final boolean UPDATE = !System.getProperty("format.update", "no").equals("no");

  @Test
  void everySourceIsAsTheFormatterLeavesIt() throws IOException, FormatterException {
    List<Path> otherwise = new ArrayList<>();
    for (Path source : sources()) {
      String text = Files.readString(source);
      String formatted = formatted(text);
      if (!text.equals(formatted)) {
        if (UPDATE) {
          Files.writeString(source, formatted);
        } else {
          otherwise.add(source);
        }
      }
    }
    assertEquals(List.of(), otherwise, "run mvn -q test -Dtest=FormatTest -Dformat.update");
  }

  private static String formatted(String text) throws FormatterException {
    String ordered =
        ImportOrderer.reorderImports(
            RemoveUnusedImports.removeUnusedImports(text), JavaFormatterOptions.Style.GOOGLE);
    return new Formatter().formatSource(ordered);
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("src"))) {
      return all.filter(path -> path.toString().endsWith(".java")).sorted().toList();
    }
  }
}
