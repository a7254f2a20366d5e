package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each file in {@code messages} is a description with the messages that it must give, as {@link
 * MessageCase} reads them; a missing or extra one fails. {@code -Dgolden.update} writes what is
 * found into the files: read the difference.
 */
class MessageCasesTest {
  private static final Path CASES = Path.of("src/test/resources/messages");
  private static final boolean UPDATE = !System.getProperty("golden.update", "no").equals("no");

  /** Codes without a case here: where else they are held, or why no description leads to them. */
  private static final Set<String> ELSEWHERE =
      Set.of(
          "check-failed", // a bug of ours; ChecksTest
          "no-project", // about files; BadInputTest
          "no-way-in", // PlannerTest
          "not-utf-8", // about files; BadInputTest
          "sheet-without-size", // the reader refuses such a stock before
          "unknown-option", // about the command; OptionTest
          "unprintable"); // BadInputTest

  static List<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyMessageIsGivenAndNoOther(Path file) throws IOException {
    MessageCase given = MessageCase.of(Files.readString(file), files(file));
    if (UPDATE && !given.holds()) {
      given = given.renewed();
      Files.writeString(file, String.join("\n", given.lines()));
    }
    assertEquals(
        String.join("\n", given.expected()), String.join("\n", given.found()), file::toString);
  }

  /** The folder of further files that a case may have beside it. */
  private static Path files(Path file) {
    return CASES.resolve(file.getFileName().toString().replace(".yaml", ""));
  }

  @Test
  void thereAreEnoughCases() throws IOException {
    assertTrue(cases().size() >= 120, () -> "too few cases");
  }

  @Test
  void everyCodeHasACase() throws IOException {
    Set<String> missing = new TreeSet<>(DiagnosticCodes.inSources());
    missing.removeAll(ELSEWHERE);
    missing.removeAll(codesOfCases());
    missing.removeAll(codesOfLists());
    assertEquals(Set.of(), missing);
  }

  private static Set<String> codesOfLists() throws IOException {
    return java.util.regex.Pattern.compile("error: .*\\[([a-z0-9-]+)]")
        .matcher(ListCasesTest.allSaid() + BuyerCasesTest.allSaid())
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> codesOfCases() throws IOException {
    StringBuilder all = new StringBuilder();
    for (Path file : cases()) {
      all.append(Files.readString(file));
    }
    return java.util.regex.Pattern.compile("# (?:error|warning|advice): .*\\[([a-z0-9-]+)]")
        .matcher(all)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
