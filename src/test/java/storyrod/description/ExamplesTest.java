package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of entry has an example that is read without a fault and uses each of its keys. */
class ExamplesTest {
  /** All joints and cuts take it in the same way; the examples of parts and hardware show it. */
  private static boolean isToBeShown(EntryType kind, Key key) {
    return !key.equals(PartSections.WHEN) || Sections.ALL.contains(kind);
  }

  @Test
  void everyKindHasOneAndNoneIsLeftOver() {
    List<String> wanted =
        ExampleFiles.KINDS.values().stream().map(name -> name + ".yaml").sorted().toList();
    assertEquals(wanted, ExampleFiles.names());
  }

  @ParameterizedTest
  @MethodSource("storyrod.description.ExampleFiles#kinds")
  void isReadWithoutAFault(EntryType kind) {
    assertEquals(
        "no faults\n", DiagnosticPrinter.print(ExampleFiles.faults(ExampleFiles.source(kind))));
  }

  @ParameterizedTest
  @MethodSource("storyrod.description.ExampleFiles#kinds")
  void usesEveryKey(EntryType kind) {
    Map<String, String> written =
        Examples.of(kind, ExampleFiles.source(kind), ExampleFiles.VOCABULARY);
    assertEquals(
        List.of(),
        kind.keys().stream()
            .filter(key -> isToBeShown(kind, key))
            .map(Key::name)
            .filter(key -> !written.containsKey(key))
            .toList());
  }

  @Test
  void everySectionIsReachedFromTheProject() {
    assertEquals(
        List.of(),
        Sections.ALL.stream().filter(each -> !ExampleFiles.KINDS.containsKey(each)).toList());
  }
}
