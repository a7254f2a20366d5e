package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Group;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

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
          double scale = sample.drawing().scale().orElseThrow().factor();
          List<Dimension> all = new ArrayList<>(Clean.dimensions(sample.drawing()));
          for (Group detail : Clean.details(sample.drawing()).toList()) {
            for (Dimension d : Clean.dimensions(detail.elements())) {
              all.remove(d);
              assertTrueToScale(d, Clean.detailFactor(detail), sample);
              assertTrue(d.text().equals(figures(d, sample)) || isInBrackets(d, sample), d.text());
            }
          }
          for (Dimension d : all) {
            assertTrueToScale(d, scale, sample);
            String figures = figures(d, sample);
            assertTrue(d.text().equals(figures) || isChain(d, figures), d.text());
          }
        });
  }

  /** What a note tells too stands in brackets in a detail (ISO 129-1). */
  private static boolean isInBrackets(Dimension d, PartDrawings.Sample sample) {
    return d.text().equals("(" + sample.format().format(d.measure()) + ")");
  }

  private static boolean isChain(Dimension d, String figures) {
    return d.text().endsWith("(= " + figures + ")");
  }

  private static String figures(Dimension d, PartDrawings.Sample sample) {
    return sample.format().told(d.measure());
  }

  private static void assertTrueToScale(Dimension d, double factor, PartDrawings.Sample sample) {
    double paper = DimensionLines.lengthMm(d);
    double real = d.measure().toMm() * factor;
    boolean broken = d.alongX() && real > paper && real > 24;
    assertTrue(broken || Math.abs(paper - real) < 1e-6, sample.mark() + " " + d);
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

  /** 32 mm is 1.2598 in, and eleven of them 13.858 in: 1 1/4 in would end 7/64 in short. */
  @Test
  void aStepThatRoundsIsNeverPrinted() {
    EqualSteps steps = new EqualSteps(new LengthFormat(Unit.INCH, 32), Words.ENGLISH);
    Length hole = Length.mm(32);
    assertEquals("11 steps of 32 mm (= 13 55/64)", steps.said(11, hole, hole.times(11)));
    Length half = Length.inch(23, 64);
    assertEquals("2 × 23/64 (= 23/32)", steps.said(2, half, half.times(2)));
    Length third = Length.inch(353, 32).dividedBy(3, RoundingMode.HALF_EVEN);
    assertEquals("3 equal steps (= 11 1/32)", steps.said(3, third, Length.inch(353, 32)));
    EqualSteps metric = new EqualSteps(new LengthFormat(Unit.MM, 32), Words.ENGLISH);
    Length inch = Length.inch(5, 16);
    assertEquals("3 steps of 5/16 in (= 23.8)", metric.said(3, inch, inch.times(3)));
  }

  /** By what is printed in every project: a step times its number is the total or says so. */
  @TestFactory
  List<DynamicTest> chainsOfTheProjectsAddUpAsPrinted() {
    return AllProjects.each(
        sample -> {
          String unit = " " + sample.set().piece().description().format().unit().word();
          for (Dimension d : figures(sample)) {
            assertFalse(d.text().contains("=") && d.text().contains("≈"), d.text());
            Matcher chain = EXACT_CHAIN.matcher(d.text());
            if (chain.matches()) {
              Length step = Length.parse(chain.group(2) + unit);
              Length total = Length.parse(chain.group(3) + unit);
              assertEquals(total, step.times(Long.parseLong(chain.group(1))), d.text());
            }
          }
        });
  }

  private static List<Dimension> figures(AllProjects.Sample sample) {
    Piece piece = sample.set().piece();
    return piece.marks().stream()
        .map(mark -> PartDrawing.draw(mark, piece, PartDrawings.AREA))
        .flatMap(drawing -> Clean.dimensions(drawing).stream())
        .toList();
  }

  /** 3/4 in at 10 degrees from square is 3/4 / cos 10 = 0.7616 in along the face: 49/64 in. */
  @Test
  void aLeaningDadoIsMeasuredByMoreThanThePartsThickness() {
    Piece stool = AllProjects.named("step-stool").piece();
    Drawing step = PartDrawing.draw(stool.mark("A"), stool, PartDrawings.AREA);
    List<String> texts = Clean.dimensions(step).stream().map(Dimension::text).toList();
    assertEquals(2, texts.stream().filter("49/64"::equals).count(), texts.toString());
    assertFalse(texts.contains("3/4"), texts.toString());
  }

  /**
   * The slot's height stands on the right, so it is taken from the slot's right end (ISO 129-1).
   */
  @Test
  void aSizeIsTakenFromTheEndNearerToItsFigure() {
    Drawing end = AllProjects.named("sewing-box").drawings().parts().get("Q");
    Drawing.Dimension height = told(end, "5/8");
    Drawing.Dimension length = told(end, "2 1/2");
    double left = Math.min(length.from().x(), length.to().x());
    double right = Math.max(length.from().x(), length.to().x());
    boolean onTheRight = height.line() > right;
    assertEquals(onTheRight ? right : left, height.from().x(), 1e-6);
    assertEquals(onTheRight ? right : left, height.to().x(), 1e-6);
  }

  private static Drawing.Dimension told(Drawing drawing, String text) {
    return Clean.dimensions(drawing).stream()
        .filter(each -> each.text().equals(text))
        .findFirst()
        .orElseThrow();
  }
}
