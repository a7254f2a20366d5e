package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Where a command that makes one text puts it: a file if one is given, else the screen. */
final class TextOutput {
  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write; the screen if not given.")
  private Path out;

  /** The file that was asked for; a blank name is a wrong command line. */
  Optional<Path> file(CommandLine line) {
    if (out != null && out.toString().isBlank()) {
      throw new ParameterException(line, "--out needs the name of a file");
    }
    return Optional.ofNullable(out);
  }

  void write(String text, CommandLine line) throws IOException {
    Optional<Path> file = file(line);
    PrintWriter screen = line.getOut();
    if (file.isEmpty()) {
      screen.print(text);
    } else {
      put(file.get(), text);
      screen.println("written: " + file.get());
    }
    screen.flush();
  }

  /** Writes aside first, so that a failure leaves an earlier file as it was. */
  static void put(Path file, String text) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    new OutputFolder(folder).requireFolders();
    Files.createDirectories(folder);
    if (Files.isDirectory(file)) {
      throw new FileSystemException(file.toString(), null, "it is a folder");
    }
    Path aside = Files.createTempDirectory(folder, ".storyrod-");
    Path fresh = aside.resolve(file.getFileName());
    try {
      Files.writeString(fresh, text);
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
      Files.delete(aside);
    }
  }
}
