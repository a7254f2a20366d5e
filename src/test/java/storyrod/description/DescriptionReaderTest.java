package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Range;
import storyrod.measure.Length;

class DescriptionReaderTest {
  private static final Description BENCH = Bench.described(Bench.TEXT);

  @Test
  void windowBenchHasNoFaults() {
    assertEquals(List.of(), Bench.faults(Bench.TEXT));
  }

  @Test
  void partRunsWhereItsFormulasSay() {
    PartEntry bottom = BENCH.part("bottom").orElseThrow();
    assertEquals(
        new Range(Length.inch(23, 32), Length.inch(105, 2).minus(Length.inch(23, 32))),
        bottom.x().value());
  }

  @Test
  void partOfAnAssemblyHasItsFullNameAndTheNearestMeaningOfNames() {
    PartEntry face = BENCH.part("drawer.face").orElseThrow();
    assertEquals("Drawer front", face.title());
    PartEntry right = BENCH.part("drawer.right-side").orElseThrow();
    assertEquals(BENCH.part("drawer.left-side").orElseThrow().y().value(), right.y().value());
  }

  @Test
  void titleComesFromTheNameUnlessGiven() {
    assertEquals("Left side", BENCH.part("left-side").orElseThrow().title());
    assertEquals("Back panel", BENCH.part("back").orElseThrow().title());
    assertTrue(BENCH.assemblies().get("drawer").parts().contains("drawer.panel"));
  }
}
