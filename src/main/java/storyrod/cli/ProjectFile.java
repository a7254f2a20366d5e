package storyrod.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
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
  private static final long MOST_BYTES = 16L << 20;

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
    SourceText nothing = new SourceText(file.toString(), "");
    if (!Files.exists(file)) {
      return fault(diagnostics, nothing, "no-project", "there is no such file",
          "name a folder that holds a project.yaml, or the file itself");
    }
    if (Files.isDirectory(file)) {
      return fault(diagnostics, nothing, "no-project", "this is a folder, not a file",
          "name the folder above it, or the file itself");
    }
    if (Files.size(file) > MOST_BYTES) {
      return fault(diagnostics, nothing, "too-large", "the file is larger than 16 MiB",
          "a description is a text of some pages; is this the right file?");
    }
    return decoded(Files.readAllBytes(file), diagnostics, nothing);
  }

  private Optional<SourceText> decoded(byte[] bytes, Diagnostics diagnostics, SourceText nothing) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(new SourceText(file.toString(), text.replaceFirst("^\uFEFF", "")));
    } catch (CharacterCodingException e) {
      return fault(diagnostics, nothing, "not-utf-8", "the file is not a text in UTF-8",
          "save it as UTF-8 in your editor");
    }
  }

  private static Optional<SourceText> fault(
      Diagnostics diagnostics, SourceText source, String code, String message, String hint) {
    diagnostics.add(Diagnostic.error(code, Span.startOf(source), message).hint(hint));
    return Optional.empty();
  }
}
