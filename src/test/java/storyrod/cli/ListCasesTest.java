package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder of {@code lists} holds a list of parts and one of stock, options of the command if it
 * needs any, and what the command must say of them. {@code -Dgolden.update} writes what it says:
 * read the difference. Lists with faults leave nothing written, whatever stood there before.
 */
class ListCasesTest {
  private static final Path CASES = Path.of("src/test/resources/lists");
  private static final boolean UPDATE = !System.getProperty("golden.update", "no").equals("no");
  private static final Pattern NOT_FOR_PERSONS =
      Pattern.compile("\\tat |Exception|jackson|\\bnull\\b|bug:");

  @TempDir Path folder;

  static List<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files.filter(Files::isDirectory).sorted().toList();
    }
  }

  /** All that is said of the cases, for the test that asks for a case for every code. */
  static String allSaid() throws IOException {
    StringBuilder said = new StringBuilder();
    for (Path each : cases()) {
      said.append(Files.readString(each.resolve("said.txt")));
    }
    return said.toString();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyListIsToldOfAsItShouldBe(Path given) throws IOException {
    Path out = folder.resolve("out");
    Path summary = folder.resolve("summary.csv");
    Shell.write(out.resolve("earlier.txt"), "an earlier one");
    Map<String, byte[]> before = Shell.files(folder);
    Shell shell = Shell.run(command(given, out, summary));
    String said =
        (shell.out() + shell.err()).replace(given + "/", "").replace(out.toString(), "out");
    assertFalse(NOT_FOR_PERSONS.matcher(said).find(), said);
    assertEquals(!given.getFileName().toString().startsWith("fine-"), shell.code() == 1, said);
    if (said.contains("error: ") && !said.contains("has no room")) {
      assertTrue(said.contains("  hint: "), said);
      Same.assertSame(before, Shell.files(folder));
    }
    Path expected = given.resolve("said.txt");
    if (UPDATE) {
      Files.writeString(expected, said);
    }
    assertEquals(Files.readString(expected), said);
  }

  private static String[] command(Path given, Path out, Path summary) throws IOException {
    List<String> words = new ArrayList<>(List.of("layout"));
    words.add(given.resolve("parts.csv").toString());
    words.add(given.resolve("stock.csv").toString());
    words.addAll(List.of("--out", out.toString(), "--summary", summary.toString()));
    Path options = given.resolve("options.txt");
    if (Files.exists(options)) {
      words.addAll(List.of(Files.readString(options).strip().split(" ")));
    }
    return words.toArray(String[]::new);
  }
}
