package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.description.Description;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Shipped;
import storyrod.description.SourceText;
import storyrod.measure.Length;

/** The shipped sub-assemblies, each alone and by each of its choices. */
class ShippedTest {
  private static final String UNDER_SLIDE =
      "  slide: {kind: under-slide, length: 18, side-clearance: 3/16,"
          + " bottom-clearance: 9/16, notch: 1/2}";

  static List<String> names() {
    return Shipped.NAMES;
  }

  @ParameterizedTest
  @MethodSource("names")
  void eachCanBeBuiltAloneWithItsDefaults(String name) {
    assertPlanned(name, Shipped.text(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void headTellsItsSpaceAndGivesAnExample(String name) {
    String head = Shipped.text(name).split("\nproject:")[0];
    assertTrue(head.contains("\n# Its space"), head);
    assertTrue(head.contains("use: " + name + "\n"), head);
    assertTrue(head.lines().allMatch(line -> line.startsWith("#")), head);
  }

  /** A name and the text in which another word is the usual one of a choice. */
  record Chosen(String name, String word, String text) {
    @Override
    public String toString() {
      return name + " " + word;
    }
  }

  static Stream<Chosen> choices() {
    return Shipped.NAMES.stream().flatMap(ShippedTest::choices);
  }

  private static Stream<Chosen> choices(String name) {
    String text = Shipped.text(name);
    return Pattern.compile("(?m)^  [a-z-]+: \\[([a-z-]+), ([a-z, -]+)\\]")
        .matcher(text)
        .results()
        .flatMap(
            choice ->
                Stream.of(choice.group(2).split(", "))
                    .map(word -> new Chosen(name, word, usual(text, choice, word))));
  }

  private static String usual(String text, MatchResult choice, String word) {
    String line = choice.group().replaceFirst("\\[[a-z-]+", "[" + word);
    String chosen =
        text.replace(
            choice.group(), line.replaceFirst(", " + word + "\\b", ", " + choice.group(1)));
    return switch (word) {
      case "under-mounted" -> chosen.replaceAll("(?m)^  slide: .*", UNDER_SLIDE);
      case "overlay" -> chosen.replace("hinges: [butt, concealed]", "hinges: [concealed, butt]");
      default -> chosen;
    };
  }

  @ParameterizedTest
  @MethodSource("choices")
  void eachWordOfEachChoiceCanBeBuilt(Chosen chosen) {
    assertPlanned(chosen.name(), chosen.text());
  }

  private static void assertPlanned(String name, String text) {
    Diagnostics found = new Diagnostics();
    boolean planned = Pipeline.plan(new SourceText(name, text), found).isPresent();
    String printed = DiagnosticPrinter.print(found.sorted());
    assertTrue(planned, printed);
    assertFalse(found.hasErrors(), printed);
    System.err.println("== " + name + "\n" + printed);
  }

  @Test
  void everyFileIsNamed() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/main/resources/storyrod/subassembly"))) {
      List<String> there =
          files.map(file -> file.getFileName().toString().replace(".yaml", "")).sorted().toList();
      assertEquals(there, Shipped.NAMES.stream().sorted().toList());
    }
  }

  /** Side-mounted slides take 1/2 in (13 mm) on each side of the box (common practice). */
  @Test
  void drawerLeavesHalfAnInchForSideMountedSlides() {
    Description drawer =
        Pipeline.reader()
            .read(new SourceText("drawer-box", Shipped.text("drawer-box")), new Diagnostics())
            .orElseThrow();
    Length half = Length.inch(1, 2);
    assertEquals(half, drawer.part("left-side").orElseThrow().x().value().from());
    assertEquals(
        drawer.sizes().get("width").minus(half),
        drawer.part("right-side").orElseThrow().x().value().to());
  }
}
