package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each list of {@code buyers} has a fault, and beside it stands what the command says of it. {@code
 * -Dgolden.update} writes what it says: read the difference. Nothing is written for such a list.
 */
class BuyerCasesTest {
  private static final Path CASES = Path.of("src/test/resources/buyers");
  private static final boolean UPDATE = !System.getProperty("golden.update", "no").equals("no");

  @TempDir Path folder;

  static List<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files.filter(each -> each.toString().endsWith(".csv")).sorted().toList();
    }
  }

  private static Path said(Path list) {
    return list.resolveSibling(list.getFileName().toString().replace(".csv", ".said.txt"));
  }

  /** All that is said of the cases, for the test that asks for a case for every code. */
  static String allSaid() throws IOException {
    StringBuilder said = new StringBuilder();
    for (Path each : cases()) {
      said.append(Files.readString(said(each)));
    }
    return said.toString();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyListIsToldOfAsItShouldBe(Path list) throws IOException {
    Path out = folder.resolve("out");
    String project = "src/test/resources/projects/hall-bench";
    Shell shell =
        Shell.run("build", project, "--out", out.toString(), "--for-each", list.toString());
    assertEquals(1, shell.code(), shell.err());
    assertFalse(Files.exists(out));
    String told = shell.err().replace(CASES + "/", "");
    String lists =
        Stream.of(told.split("\n\n"))
            .filter(each -> each.contains(".csv:"))
            .reduce("", (all, each) -> all + each + "\n\n");
    assertTrue(lists.contains("  hint: "), lists);
    if (UPDATE) {
      Files.writeString(said(list), lists);
    }
    assertEquals(Files.readString(said(list)), lists);
  }
}
