package storyrod.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
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
    Optional<Diagnostic> unreadable = unreadable();
    unreadable.ifPresent(diagnostics::add);
    return unreadable.isPresent()
        ? Optional.empty()
        : decoded(Files.readAllBytes(file), diagnostics);
  }

  private Optional<Diagnostic> unreadable() throws IOException {
    if (!Files.exists(file)) {
      return Optional.of(missing());
    }
    if (Files.isDirectory(file)) {
      return fault("no-project", "this is a folder, not a file", "name the folder above it");
    }
    if (!Files.isRegularFile(file)) {
      return fault("no-project", "this is a device or a pipe, not a file", "name a file on disk");
    }
    if (!Files.isReadable(file)) {
      return fault(
          "no-project", "you have no permission to read this file", "allow it, or copy it");
    }
    return Files.size(file) > MOST_BYTES
        ? fault(
            "too-large",
            "the file is larger than 16 MiB",
            "a description is a text of some pages; is this the right file?")
        : Optional.empty();
  }

  private Diagnostic missing() {
    Path folder = file.toAbsolutePath().normalize().getParent();
    boolean inFolder = file.endsWith(USUAL_NAME) && folder != null && Files.isDirectory(folder);
    return Diagnostic.error(
            "no-project",
            Span.startOf(nothing()),
            inFolder ? "the folder holds no project.yaml" : "there is no such file or folder")
        .hint("name a folder that holds a project.yaml, or the description itself");
  }

  private Optional<Diagnostic> fault(String code, String message, String hint) {
    return Optional.of(Diagnostic.error(code, Span.startOf(nothing()), message).hint(hint));
  }

  private SourceText nothing() {
    return new SourceText(file.toString(), "");
  }

  private Optional<SourceText> decoded(byte[] bytes, Diagnostics diagnostics) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CharBuffer text = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
    SourceText source = new SourceText(file.toString(), withoutMark(text.flip().toString()));
    if (result.isError()) {
      diagnostics.add(notUtf8(source));
      return Optional.empty();
    }
    return Optional.of(source);
  }

  /** At the first byte that makes no character: behind all text that could be read. */
  private static Diagnostic notUtf8(SourceText read) {
    int end = read.text().length();
    return Diagnostic.error(
            "not-utf-8",
            new Span(read, end, end),
            "the file is no longer text in UTF-8 from here on")
        .hint("save it as UTF-8 in your editor; is this the right file?");
  }

  private static String withoutMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }
}
