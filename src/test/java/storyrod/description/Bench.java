package storyrod.description;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The window bench's text, and reading with the test vocabulary. */
final class Bench {
  static final String TEXT = read(Path.of("projects/window-bench/project.yaml"));

  private Bench() {}

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The description of a text without faults; any fault fails the test with its printed form. */
  static Description described(String text) {
    Diagnostics diagnostics = new Diagnostics();
    return new DescriptionReader(TestVocabulary.ALL)
        .read(new SourceText("project.yaml", text), diagnostics)
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(diagnostics.sorted())));
  }

  static java.util.List<Diagnostic> faults(String text) {
    Diagnostics diagnostics = new Diagnostics();
    new DescriptionReader(TestVocabulary.ALL)
        .read(new SourceText("project.yaml", text), diagnostics);
    return diagnostics.sorted();
  }
}
