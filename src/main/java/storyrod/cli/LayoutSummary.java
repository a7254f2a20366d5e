package storyrod.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The table of all instances; each row is on disk before the next instance is begun. */
final class LayoutSummary implements AutoCloseable {
  private static final String HEAD = "instance,pieces,cost,lower_bound,proved,seconds\n";
  private final Writer to;

  private LayoutSummary(Writer to) {
    this.to = to;
  }

  /** A table in a file, or one that goes nowhere. */
  static LayoutSummary at(Optional<Path> file) throws IOException {
    if (file.isEmpty()) {
      return new LayoutSummary(Writer.nullWriter());
    }
    Path folder = file.get().toAbsolutePath().getParent();
    new OutputFolder(folder).requireFolders();
    Files.createDirectories(folder);
    if (Files.isDirectory(file.get())) {
      throw new FileSystemException(file.get().toString(), null, "it is a folder");
    }
    LayoutSummary summary = new LayoutSummary(Files.newBufferedWriter(file.get()));
    summary.put(HEAD);
    return summary;
  }

  void row(LayoutResult result) throws IOException {
    put(result.row() + "\n");
  }

  private void put(String text) throws IOException {
    to.write(text);
    to.flush();
  }

  @Override
  public void close() throws IOException {
    to.close();
  }
}
