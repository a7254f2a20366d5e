package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;

/** What a project's options say, chosen or not. */
class OptionTest {
  private static final String BOARD =
      """
      project: Board
      units: inch
      sizes: {width: 24, half: width / 2}
      stock:
        ash: {kind: solid, species: "ash, white", thickness: 3/4}
      parts:
        board: {stock: ash, x: 0 to half, y: 0 to 8, z: 0 to ash.thickness, grain: x}
      options:
        other:
      """;

  private final Diagnostics faults = new Diagnostics();

  private Optional<Description> read(String option, Optional<String> chosen) {
    return new DescriptionReader(TestVocabulary.ALL)
        .read(new SourceText("board.yaml", BOARD + "    " + option), chosen, faults);
  }

  private List<String> told(String option, Optional<String> chosen) {
    Diagnostics before = new Diagnostics();
    faults.sorted().forEach(before::add);
    read(option, chosen);
    return faults.sorted().stream()
        .filter(each -> !before.sorted().contains(each))
        .map(Diagnostic::message)
        .toList();
  }

  @Test
  void faultIsToldInTheSameWordsWhetherTheOptionIsChosenOrNot() {
    for (String option :
        List.of(
            "sizes: {width: 2 * hieght}",
            "sizes: {width: half}",
            "stock: {ash: {thickness: 0}}",
            "stock: {ash: {kind: solid, thickness: 1}}")) {
      OptionTest chosen = new OptionTest();
      List<String> words = told(option, Optional.empty());
      assertEquals(1, words.size(), words::toString);
      assertTrue(words.getFirst().startsWith("option 'other': "), words::toString);
      assertEquals(words, chosen.told(option, Optional.of("other")));
    }
  }

  @Test
  void optionThatIsNotChosenChangesNothing() {
    String option = "{sizes: {width: 30}, stock: {ash: {kind: solid, species: oak, thickness: 1}}}";
    Description usual = read(option, Optional.empty()).orElseThrow();
    assertEquals(Length.inches(24), usual.sizes().get("width"));
    assertEquals(Length.inches(3), thickness(usual).times(4));
    Description other = read(option, Optional.of("other")).orElseThrow();
    assertEquals(Length.inches(15), other.part("board").orElseThrow().x().value().to());
    assertEquals(Length.inches(1), thickness(other));
  }

  private static Length thickness(Description description) {
    return description.stock().get("ash").thickness().value();
  }
}
