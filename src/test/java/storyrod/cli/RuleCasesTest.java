package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.build.rule.Rule;
import storyrod.build.rule.Rules;
import storyrod.description.Diagnostic;

/**
 * For every rule of the build order there is a small project, {@code messages/rule-KEY.yaml}, whose
 * own order breaks that rule and nothing else.
 */
class RuleCasesTest {
  private static final Path CASES = Path.of("src/test/resources/messages");

  static Stream<String> rules() {
    return Rules.ALL.stream().map(Rule::key);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void orderThatBreaksOneRuleGetsThatFindingAlone(String rule) throws IOException {
    Path file = CASES.resolve("rule-" + rule + ".yaml");
    assertTrue(Files.exists(file), () -> "no case for the rule " + rule);
    List<Diagnostic> found = MessageCase.of(Files.readString(file), CASES).findings();
    assertEquals(1, found.size(), found::toString);
    assertEquals("order-breaks-rule", found.getFirst().code());
    assertTrue(found.getFirst().message().endsWith("(rule " + rule + ")"), found::toString);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void withoutTheOrderThePieceIsBuiltWithoutAFinding(String rule) throws IOException {
    String text = Files.readString(CASES.resolve("rule-" + rule + ".yaml"));
    String free = text.substring(0, text.indexOf("\nbuild:") + 1);
    assertEquals(List.of(), MessageCase.of(free, CASES).findings());
  }

  @Test
  void everyCaseIsForARule() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      assertEquals(
          rules().sorted().toList(),
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.startsWith("rule-"))
              .map(name -> name.replace("rule-", "").replace(".yaml", ""))
              .sorted()
              .toList());
    }
  }
}
