package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Span;

/** A project on disk: a folder with a {@code project.yaml}, or such a file under any name. */
record ProjectFile(Path file, String name) {
  private static final String USUAL_NAME = "project.yaml";

  static ProjectFile at(Path given) {
    Path file = Files.isDirectory(given) ? given.resolve(USUAL_NAME) : given;
    return new ProjectFile(file, nameOf(file));
  }

  private static String nameOf(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    String own = file.getFileName().toString();
    if (own.equals(USUAL_NAME) && folder != null && folder.getFileName() != null) {
      return folder.getFileName().toString();
    }
    return own.replaceFirst("\\.ya?ml$", "");
  }

  /** The text, or nothing if it cannot be read as one; then the reason is reported. */
  Optional<SourceText> read(Diagnostics diagnostics) throws IOException {
    if (!Files.exists(file)) {
      diagnostics.add(missing());
      return Optional.empty();
    }
    return new TextFile(file, "no-project", "a description is a text of some pages")
        .read(diagnostics);
  }

  private Diagnostic missing() {
    Path folder = file.toAbsolutePath().normalize().getParent();
    boolean inFolder = file.endsWith(USUAL_NAME) && folder != null && Files.isDirectory(folder);
    return Diagnostic.error(
            "no-project",
            Span.startOf(new SourceText(file.toString(), "")),
            inFolder ? "the folder holds no project.yaml" : "there is no such file or folder")
        .hint("name a folder that holds a project.yaml, or the description itself");
  }
}
