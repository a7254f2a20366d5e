package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What a call of the command came to: its exit code and what it printed. */
record Shell(int code, String out, String err) {
  static final Path BENCH = Path.of("projects/window-bench");
  static final Path PROJECTS = Path.of("src/test/resources/projects");

  static Shell run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
    return new Shell(code, out.toString(), err.toString());
  }

  static Shell build(Path project, Path out) {
    return run("build", project.toString(), "--out", out.toString());
  }

  static Shell check(Path project) {
    return run("check", project.toString());
  }

  /** The files of a project's plan set, which must be built without a fault. */
  static Map<String, byte[]> built(Path project, Path out) {
    Shell shell = build(project, out);
    if (shell.code() != 0) {
      throw new AssertionError(shell.toString());
    }
    return files(out);
  }

  /** The bytes of all files below a folder, by their names in it; none if there is no folder. */
  static Map<String, byte[]> files(Path folder) {
    Map<String, byte[]> files = new TreeMap<>();
    if (!Files.exists(folder)) {
      return files;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The bench's text with a stretch of it, which must be there, put another way. */
  static String bench(String stretch, String instead) {
    String text = read(BENCH.resolve("project.yaml"));
    if (!text.contains(stretch)) {
      throw new AssertionError("the bench has no '" + stretch + "'");
    }
    return text.replace(stretch, instead);
  }
}
