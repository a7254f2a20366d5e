package storyrod.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder that holds one plan set, or the layouts of a list. All files are first written aside and
 * only then moved into place one by one: what was there stays as it was unless the whole set is
 * ready. A disk that fails during the moves themselves can leave a mixed set; another run mends it.
 *
 * @param drawings a pattern for the names of its drawings; those of an earlier run that are not
 *     there any more are taken out
 */
record OutputFolder(Path folder, String drawings) {
  private static final String DRAWINGS = "drawings";

  /** The folder of a plan set. */
  OutputFolder(Path folder) {
    this(
        folder,
        "(part-[A-Z]+|template-[A-Z]+[a-z0-9-]*|general[a-z0-9.-]*)\\.svg"
            + "|(part-[A-Z]+|blank-[A-Z]+|cover|(general|exploded)[a-z0-9.-]*)\\.png");
  }

  /** A folder in which all drawings of an earlier run stay beside what is new, as a preview. */
  static OutputFolder beside(Path folder) {
    return new OutputFolder(folder, "");
  }

  void replace(Map<String, byte[]> files) throws IOException {
    requireFolders();
    Files.createDirectories(folder);
    requireFiles(files.keySet());
    Path fresh = Files.createTempDirectory(folder, ".storyrod-");
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path path = fresh.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue());
      }
      moveIn(fresh, files);
    } finally {
      deleteTree(fresh);
    }
  }

  /** Names the file that stands where the folder or one above it should be. */
  void requireFolders() throws IOException {
    for (Path path = folder.toAbsolutePath(); path != null; path = path.getParent()) {
      if (Files.exists(path) && !Files.isDirectory(path)) {
        throw new FileAlreadyExistsException(path.toString());
      }
    }
  }

  /** Finds what could not be replaced before anything is. */
  private void requireFiles(Set<String> names) throws IOException {
    Path there = folder.resolve(DRAWINGS);
    if (Files.exists(there) && !Files.isDirectory(there)) {
      throw new FileAlreadyExistsException(there.toString());
    }
    for (String name : names) {
      if (Files.isDirectory(folder.resolve(name))) {
        throw new FileSystemException(folder.resolve(name).toString(), null, "it is a folder");
      }
    }
  }

  private void moveIn(Path fresh, Map<String, byte[]> files) throws IOException {
    for (String name : files.keySet()) {
      Path target = folder.resolve(name);
      Files.createDirectories(target.getParent());
      Files.move(fresh.resolve(name), target, StandardCopyOption.REPLACE_EXISTING);
    }
    for (Path old : oldDrawings()) {
      if (!files.containsKey(DRAWINGS + "/" + old.getFileName())) {
        Files.delete(old);
      }
    }
  }

  /** The drawings of parts in the folder, of this run and of earlier ones. */
  private List<Path> oldDrawings() throws IOException {
    Path there = folder.resolve(DRAWINGS);
    if (!Files.isDirectory(there)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(there)) {
      return all.filter(path -> path.getFileName().toString().matches(drawings)).toList();
    }
  }

  private static void deleteTree(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
