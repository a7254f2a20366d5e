package storyrod.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import storyrod.planset.TemplateFault;

/** What to tell a person when something outside the description fails. */
final class Failures {
  private Failures() {}

  /** One line with cause and way out, without a stack trace. */
  static String inOneLine(Throwable failure) {
    return switch (failure) {
      case UncheckedIOException e -> inOneLine(e.getCause());
      case IOException e -> files(e);
      case TemplateFault e -> "error: " + e.getMessage();
      case OutOfMemoryError e ->
          "error: not enough memory for this project; give Java more with -Xmx";
      default ->
          "error: the tool itself is at fault, not your project (%s); run again with --debug and report it"
              .formatted(
                  failure.getMessage() == null
                      ? failure.getClass().getSimpleName()
                      : failure.getMessage());
    };
  }

  private static String files(IOException failure) {
    return switch (failure) {
      case NoSuchFileException e -> "error: no such file or folder: " + e.getFile();
      case AccessDeniedException e ->
          "error: no permission to write %s; choose another folder with --out"
              .formatted(e.getFile());
      case FileAlreadyExistsException e -> notAFolder(e);
      case NotDirectoryException e -> notAFolder(e);
      case FileSystemException e ->
          "error: %s cannot be written (%s); choose another folder with --out"
              .formatted(e.getFile(), e.getReason() == null ? "it is in use" : e.getReason());
      default -> "error: " + failure.getMessage();
    };
  }

  private static String notAFolder(FileSystemException failure) {
    return "error: %s is a file, not a folder; choose another folder with --out"
        .formatted(failure.getFile());
  }
}
