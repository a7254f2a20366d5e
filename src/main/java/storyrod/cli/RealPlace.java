package storyrod.cli;

import java.io.IOException;
import java.nio.file.Path;

/** Where a file lies once all links are followed. */
final class RealPlace {
  private RealPlace() {}

  /** Whether a file that there is lies outside a folder, though its path is inside. */
  static boolean isOutside(Path file, Path folder) throws IOException {
    return !file.toRealPath().startsWith(folder.toRealPath());
  }
}
