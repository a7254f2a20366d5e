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
import storyrod.description.Description;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Shipped;
import storyrod.description.SourceText;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** The sub-assemblies that come with the tool. */
class ShippedTest {
  private static final Path FOLDER = Path.of("src/main/resources/storyrod/subassembly");

  static Stream<String> names() {
    return Shipped.NAMES.stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void canBeBuiltAlone(String name) {
    Diagnostics diagnostics = new Diagnostics();
    boolean planned =
        Pipeline.plan(new SourceText(name, Shipped.text(name)), diagnostics).isPresent();
    assertTrue(planned, () -> DiagnosticPrinter.print(diagnostics.bySeverity()));
  }

  @ParameterizedTest
  @MethodSource("names")
  void beginsWithWhatItIsAndHowItIsUsed(String name) {
    String head = Shipped.text(name).split("\nproject:")[0];
    assertTrue(head.lines().allMatch(line -> line.startsWith("#")), head);
    assertTrue(head.contains("use: " + name), head);
  }

  @Test
  void everyFileIsNamed() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<String> there =
          files.map(file -> file.getFileName().toString().replace(".yaml", "")).sorted().toList();
      assertEquals(there, Shipped.NAMES.stream().sorted().toList());
    }
  }

  /** Side-mounted slides take 1/2 in (13 mm) on each side of the box (common practice). */
  @Test
  void drawerLeavesHalfAnInchForSideMountedSlides() {
    Description description =
        Pipeline.reader()
            .read(new SourceText("drawer-box", Shipped.text("drawer-box")), new Diagnostics())
            .orElseThrow();
    Range left = description.part("left-side").orElseThrow().x().value();
    Range right = description.part("right-side").orElseThrow().x().value();
    Length half = Length.inch(1, 2);
    assertEquals(half, left.from());
    assertEquals(description.sizes().get("width").minus(half), right.to());
  }
}
