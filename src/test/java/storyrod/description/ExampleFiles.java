package storyrod.description;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.Verb;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;

/** The examples of the reference, one whole description for each kind of entry. */
final class ExampleFiles {
  static final Vocabulary VOCABULARY =
      new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
  static final Map<EntryType, String> KINDS = Kinds.of(VOCABULARY);
  private static final Path FOLDER = Path.of("src/main/resources/storyrod/reference/examples");

  /** The further files that examples name. */
  static final Library LIBRARY =
      new FolderLibrary(Path.of("src/main/resources/storyrod/reference/files"));

  private ExampleFiles() {}

  static Stream<EntryType> kinds() {
    return KINDS.keySet().stream();
  }

  static SourceText source(EntryType kind) {
    String name = KINDS.get(kind) + ".yaml";
    return new SourceText(name, Bench.read(FOLDER.resolve(name)));
  }

  static List<String> names() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Diagnostic> faults(SourceText source) {
    Diagnostics diagnostics = new Diagnostics();
    new DescriptionReader(VOCABULARY, codePoint -> true, LIBRARY).read(source, diagnostics);
    return diagnostics.sorted();
  }
}
