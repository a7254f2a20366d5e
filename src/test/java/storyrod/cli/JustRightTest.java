package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.check.Checks;
import storyrod.description.Diagnostic;

/**
 * Each check has a description that is just wrong and, but for one small change, just right: the
 * change takes away findings of that check and of no other, and brings none.
 */
class JustRightTest {
  private static final Path FILE = Path.of("src/test/resources/pairs/just-right.txt");
  private static final Path CASES = Path.of("src/test/resources/messages");

  record Pair(String code, String file, String wrong, String right) {
    @Override
    public String toString() {
      return code;
    }
  }

  static List<Pair> pairs() throws IOException {
    return Stream.of(Files.readString(FILE).split("\n\n"))
        .filter(block -> !block.startsWith("#"))
        .map(block -> block.replaceAll("\n+$", "").split("\n"))
        .map(lines -> new Pair(lines[0], lines[1], lines[2], lines[3].replace("\\n", "\n")))
        .toList();
  }

  @Test
  void everyCheckHasAPair() throws IOException {
    Set<String> missing = new TreeSet<>(Checks.codes());
    pairs().forEach(pair -> missing.remove(pair.code()));
    assertEquals(Set.of(), missing);
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void aSmallChangeMakesItRight(Pair pair) throws IOException {
    String text = Files.readString(CASES.resolve(pair.file() + ".yaml"));
    assertTrue(text.contains(pair.wrong()), () -> pair.wrong() + " stands nowhere");
    Map<String, Integer> gone = counts(text);
    counts(text.replace(pair.wrong(), pair.right()))
        .forEach((code, count) -> gone.merge(code, -count, Integer::sum));
    gone.values().removeIf(count -> count == 0);
    assertEquals(Set.of(pair.code()), gone.keySet(), gone::toString);
    assertTrue(gone.get(pair.code()) > 0, gone::toString);
  }

  private static Map<String, Integer> counts(String text) {
    Map<String, Integer> counts = new TreeMap<>();
    MessageCase.of(text, CASES).findings().stream()
        .map(Diagnostic::code)
        .forEach(code -> counts.merge(code, 1, Integer::sum));
    return counts;
  }
}
