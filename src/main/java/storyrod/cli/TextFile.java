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

/**
 * A file that should hold text in UTF-8.
 *
 * @param code of what is said where there is no such file
 * @param usual how large such a text is, in words
 */
record TextFile(Path file, String code, String usual) {
  private static final long MOST_BYTES = 16L << 20;

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
      return fault(code, "there is no such file", "look at its name and folder");
    }
    if (Files.isDirectory(file)) {
      return fault(code, "this is a folder, not a file", "name the folder above it");
    }
    if (!Files.isRegularFile(file)) {
      return fault(code, "this is a device or a pipe, not a file", "name a file on disk");
    }
    if (!Files.isReadable(file)) {
      return fault(code, "you have no permission to read this file", "allow it, or copy it");
    }
    return Files.size(file) > MOST_BYTES
        ? fault("too-large", "the file is larger than 16 MiB", usual + "; is this the right file?")
        : Optional.empty();
  }

  private Optional<Diagnostic> fault(String code, String message, String hint) {
    SourceText nothing = new SourceText(file.toString(), "");
    return Optional.of(Diagnostic.error(code, Span.startOf(nothing), message).hint(hint));
  }

  private Optional<SourceText> decoded(byte[] bytes, Diagnostics diagnostics) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CharBuffer text = CharBuffer.allocate(bytes.length);
    ByteBuffer read = ByteBuffer.wrap(bytes);
    CoderResult result = decoder.decode(read, text, true);
    SourceText source = new SourceText(file.toString(), withoutMark(text.flip().toString()));
    if (result.isError()) {
      diagnostics.add(notUtf8(source, bytes[read.position()] & 0xFF));
      return Optional.empty();
    }
    return Optional.of(source);
  }

  /** At the first byte that makes no character: behind all text that could be read. */
  private static Diagnostic notUtf8(SourceText read, int found) {
    int end = read.text().length();
    Diagnostic fault =
        Diagnostic.error(
            "not-utf-8",
            new Span(read, end, end),
            "the file is no longer text in UTF-8 from here on");
    return end == 0 && found >= 0xFE
        ? fault.hint("it begins as UTF-16 does; save it as UTF-8 in your editor")
        : fault.hint(
            "save it as UTF-8 in your editor (byte %02X is here); is this the right file?"
                .formatted(found));
  }

  private static String withoutMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }
}
