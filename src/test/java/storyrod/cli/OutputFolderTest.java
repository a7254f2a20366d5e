package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  private static final Path SHELF = Shell.PROJECTS.resolve("wall-shelf");
  private static final Path STOOL = Shell.PROJECTS.resolve("step-stool");

  @TempDir Path folder;

  private static Map<String, byte[]> set(String... names) {
    Map<String, byte[]> files = new TreeMap<>();
    for (String name : names) {
      files.put(name, name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    return files;
  }

  @Test
  void drawingOfAPartThatIsGoneGoesToo() throws IOException {
    new OutputFolder(folder)
        .replace(set("plan.json", "drawings/part-A.svg", "drawings/part-B.svg"));
    Shell.write(folder.resolve("drawings/mine.svg"), "mine");
    Shell.write(folder.resolve("notes.txt"), "mine");
    new OutputFolder(folder).replace(set("plan.json", "drawings/part-A.svg"));
    assertEquals(
        set("plan.json", "drawings/part-A.svg", "drawings/mine.svg", "notes.txt").keySet(),
        Shell.files(folder).keySet());
  }

  @Test
  void nothingTemporaryIsLeft() throws IOException {
    new OutputFolder(folder.resolve("a/b")).replace(set("plan.json"));
    try (var all = Files.walk(folder)) {
      assertFalse(all.anyMatch(path -> path.getFileName().toString().startsWith(".storyrod")));
    }
  }

  @Test
  void folderInTheWayOfAFileIsFoundBeforeAnythingIsReplaced() throws IOException {
    new OutputFolder(folder).replace(set("a.csv"));
    Files.createDirectories(folder.resolve("plan.json/sub"));
    Map<String, byte[]> before = Shell.files(folder);
    IOException failure =
        assertThrows(
            IOException.class,
            () -> new OutputFolder(folder).replace(set("a.csv", "b.csv", "plan.json")));
    Same.assertSame(before, Shell.files(folder));
    assertTrue(
        Failures.inOneLine(failure).contains("plan.json cannot be written (it is a folder)"));
  }

  @Test
  void fileInTheWayOfTheFolderIsNamed() {
    Path file = Shell.write(folder.resolve("taken"), "mine");
    for (Path out : new Path[] {file, file.resolve("deeper")}) {
      Shell shell = Shell.build(SHELF, out);
      assertEquals(1, shell.code());
      assertEquals(
          "storyrod: error: " + file + " is a file, not a folder; choose another folder with --out",
          shell.err().lines().reduce((one, two) -> two).orElseThrow());
    }
    assertEquals("mine", Shell.read(file));
  }

  @Test
  void folderWithoutPermissionIsNamed() throws IOException {
    Path locked = Files.createDirectory(folder.resolve("locked"));
    Assumptions.assumeTrue(locked.toFile().setWritable(false) && !Files.isWritable(locked));
    Shell shell = Shell.build(SHELF, locked.resolve("out"));
    assertEquals(1, shell.code());
    assertTrue(shell.err().contains("no permission to write"), shell.err());
  }

  @Test
  void missingPermissionIsSaidInWords() {
    assertEquals(
        "error: no permission to write /x; choose another folder with --out",
        Failures.inOneLine(new AccessDeniedException("/x")));
  }

  @Test
  void failingRunLeavesEarlierOutputAsItWas() {
    Path project =
        Shell.write(folder.resolve("p/project.yaml"), Shell.read(SHELF.resolve("project.yaml")));
    Map<String, byte[]> before = Shell.built(project, folder.resolve("out"));
    Shell.write(
        project, Shell.read(SHELF.resolve("project.yaml")).replace("width: 800", "width: -800"));
    assertEquals(1, Shell.build(project, folder.resolve("out")).code());
    Same.assertSame(before, Shell.files(folder.resolve("out")));
  }

  @Test
  void secondProjectInTheSameFolderLeavesNoDrawingOfTheFirst() {
    Map<String, byte[]> alone = Shell.built(SHELF, folder.resolve("alone"));
    Shell.built(STOOL, folder.resolve("both"));
    Same.assertSame(alone, Shell.built(SHELF, folder.resolve("both")));
  }

  @Test
  void checkWritesNothing() throws IOException {
    Path project =
        Shell.write(folder.resolve("p/project.yaml"), Shell.read(SHELF.resolve("project.yaml")));
    Map<String, byte[]> before = Shell.files(folder);
    Shell shell = Shell.check(project);
    assertEquals(0, shell.code());
    assertEquals("no faults\n", shell.out());
    Same.assertSame(before, Shell.files(folder));
  }
}
