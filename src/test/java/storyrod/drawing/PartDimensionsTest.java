package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Dimension;
import storyrod.measure.Length;
import storyrod.piece.Part;

/** Dimensions of part drawings: where they stand and what they say. */
class PartDimensionsTest {
  private static final Pattern EXACT_CHAIN = Pattern.compile("(\\d+) × ([^≈(]+) \\(= (.+)\\)");

  /** First line at least 10 mm off, the next at least 8 mm further (ISO 129-1, from memory). */
  @TestFactory
  List<DynamicTest> dimensionLinesKeepTheirDistance() {
    return PartDrawings.each(
        sample -> {
          DimensionLines.assertKeepDistance(Clean.dimensions(sample.drawing()));
        });
  }

  /** As printed, so that a maker who adds up finds the total; rounded steps say that they are. */
  @TestFactory
  List<DynamicTest> chainsAddUpAsPrinted() {
    return PartDrawings.each(
        sample -> {
          String unit = " " + sample.format().unit().word();
          for (Dimension d : Clean.dimensions(sample.drawing())) {
            Matcher chain = EXACT_CHAIN.matcher(d.text());
            if (chain.matches()) {
              Length step = Length.parse(chain.group(2) + unit);
              Length total = Length.parse(chain.group(3) + unit);
              assertEquals(total, step.times(Long.parseLong(chain.group(1))), d.text());
            }
          }
        });
  }

  /** What a dimension says is what lies between its points; only breaks make it longer. */
  @TestFactory
  List<DynamicTest> dimensionsAreTrueToScale() {
    return PartDrawings.each(
        sample -> {
          double factor = sample.drawing().scale().orElseThrow().factor();
          for (Dimension d : Clean.dimensions(sample.drawing())) {
            double paper = DimensionLines.lengthMm(d);
            double real = d.measure().toMm() * factor;
            boolean broken = d.alongX() && real > paper && real > 24;
            assertTrue(broken || Math.abs(paper - real) < 1e-6, d.toString());
            String figures = sample.format().format(d.measure());
            assertTrue(d.text().equals(figures) || d.text().endsWith("(= " + figures + ")"));
          }
        });
  }

  @TestFactory
  List<DynamicTest> eachOverallSizeIsGivenOnce() {
    return PartDrawings.each(
        sample -> {
          Part part = sample.part();
          List<Length> sizes =
              List.of(part.finishedLength(), part.finishedWidth(), part.finishedThickness());
          for (Length size : sizes) {
            long given =
                Clean.dimensions(sample.drawing()).stream()
                    .filter(d -> d.measure().equals(size))
                    .count();
            assertTrue(given >= 1, "no " + size);
          }
        });
  }

  @Test
  void equalSpacingIsAChainOfOneDimension() {
    List<String> texts =
        Clean.dimensions(PartDrawings.named("left-side in inch").drawing()).stream()
            .map(Dimension::text)
            .toList();
    assertEquals(1, texts.stream().filter("4 × 1 1/4 (= 5)"::equals).count(), texts.toString());
  }
}
