package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.geometry.Axis;
import storyrod.geometry.Segment;
import storyrod.piece.Cut;
import storyrod.piece.Slanted;

/** Full-size templates: sheets that join to the whole outline, and files for machines. */
class FullSizeTest {
  private static final double EXACT_MM = 0.01;
  private static final Pattern ARC =
      Pattern.compile("A([\\d.]+) ([\\d.]+) 0 ([01]) ([01]) ([\\d.]+) ([\\d.]+)");

  @TestFactory
  List<DynamicTest> sheetsAreClean() {
    return each(
        template -> {
          for (TemplateTile tile : template.tiles()) {
            assertEquals(List.of(), Clean.faults(tile.drawing()), tile.drawing().name());
            assertEquals(1, tile.drawing().scale().orElseThrow().factor());
          }
        });
  }

  private interface Check {
    void on(TemplateSheets template);
  }

  private static List<DynamicTest> eachShape(java.util.function.Consumer<FullSize> check) {
    return each(template -> template.shapes().forEach(check));
  }

  private static List<DynamicTest> each(Check check) {
    return AllProjects.each(
        sample -> {
          assertFalse(sample.set().drawings().templates() == null);
          sample.set().drawings().templates().forEach(check::on);
        });
  }

  /** Every point of the outline lies on some sheet, and all that a sheet shows is outline. */
  @TestFactory
  List<DynamicTest> sheetsTogetherGiveTheWholeOutline() {
    return each(
        template -> {
          List<List<At>> whole =
              template.shapes().stream()
                  .flatMap(shape -> shape.lines().stream())
                  .map(TruePath::points)
                  .toList();
          List<List<At>> shown = new ArrayList<>();
          for (TemplateTile tile : template.tiles()) {
            List<List<At>> own = shown(tile);
            assertFalse(own.isEmpty(), tile.letter() + " holds nothing");
            shown.addAll(own);
          }
          assertCovered(whole, shown, name(template));
          assertCovered(shown, whole, name(template));
        });
  }

  private static String name(TemplateSheets template) {
    return template.shapes().stream().map(FullSize::name).toList().toString();
  }

  private static void assertCovered(List<List<At>> these, List<List<At>> by, String name) {
    for (List<At> chain : these) {
      for (int i = 0; i + 1 < chain.size(); i += Math.max(1, chain.size() / 40)) {
        At from = chain.get(i);
        At to = chain.get(i + 1);
        for (double share : new double[] {0, 0.21, 0.5, 0.83}) {
          At at = new Seen.Stroke(from, to).at(share);
          double off = by.stream().mapToDouble(each -> distance(at, each)).min().orElseThrow();
          assertTrue(off < EXACT_MM, name + ": " + at + " is " + off + " mm off");
        }
      }
    }
  }

  private static double distance(At at, List<At> chain) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < chain.size(); i++) {
      At from = chain.get(i);
      At to = chain.get(i + 1);
      least =
          Math.min(
              least,
              java.awt.geom.Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), at.x(), at.y()));
    }
    return least;
  }

  /** The lines of a sheet where they lie in the whole. */
  private static List<List<At>> shown(TemplateTile tile) {
    List<List<At>> chains = new ArrayList<>();
    for (Element element : tile.drawing().elements()) {
      if (element instanceof Group group) {
        for (Element each : group.elements()) {
          if (each instanceof Line line && line.role() == Role.THIN) {
            chains.add(
                line.points().stream()
                    .map(at -> at.plus(tile.origin().x(), tile.origin().y()))
                    .toList());
          }
        }
      }
    }
    return chains;
  }

  /** Neighbours have at least two register marks in the same places of the whole. */
  @TestFactory
  List<DynamicTest> registerMarksOfNeighboursLieOnEachOther() {
    return each(
        template -> {
          for (TemplateTile one : template.tiles()) {
            for (TemplateTile other : template.tiles()) {
              boolean beside =
                  one != other
                      && (one.letter().charAt(0) == other.letter().charAt(0)
                              && Math.abs(row(one) - row(other)) == 1
                          || row(one) == row(other)
                              && Math.abs(one.letter().charAt(0) - other.letter().charAt(0)) == 1);
              long shared =
                  marks(one).stream()
                      .filter(at -> marks(other).stream().anyMatch(b -> at.distance(b) < 1e-9))
                      .count();
              assertTrue(!beside || shared >= 2, one.letter() + " and " + other.letter());
            }
          }
        });
  }

  private static int row(TemplateTile tile) {
    return Integer.parseInt(tile.letter().replaceAll("\\D", ""));
  }

  private static List<At> marks(TemplateTile tile) {
    List<At> marks = new ArrayList<>();
    for (Element element : tile.drawing().elements()) {
      if (element instanceof Drawing.Ellipse ring) {
        marks.add(ring.centre().plus(tile.origin().x(), tile.origin().y()));
      }
    }
    return marks;
  }

  /** Unless its ends are sawn at an angle, a whole outline is as long and as wide as its part. */
  @TestFactory
  List<DynamicTest> outlinesAreAsLargeAsTheirParts() {
    return eachShape(
        shape -> {
          FlatPart flat = FlatPart.of(shape.mark().shown());
          boolean sawn =
              flat.cuts(Slanted.Slope.class).stream()
                  .anyMatch(slope -> slope.kind() != Slanted.Slope.Kind.TAPER);
          if (shape.cuts().isEmpty() || sawn) {
            return;
          }
          Bounds bounds = shape.bounds();
          double length = flat.size(Axis.X).toMm();
          double width = flat.size(Axis.Z).toMm();
          assertEquals(
              Math.max(length, width), Math.max(bounds.width(), bounds.height()), EXACT_MM);
          assertEquals(
              Math.min(length, width), Math.min(bounds.width(), bounds.height()), EXACT_MM);
        });
  }

  /**
   * The table's leg by the figures of its description: 28 1/2 in long, 2 1/4 in square, tapered to
   * 1 3/8 in at the foot.
   */
  @Test
  void theTaperedLegIsTrueInItsFile() {
    String svg = svg("dining-table", "leg");
    List<At> corners = points(svg);
    double length = 28.5 * 25.4;
    double from = corners.stream().mapToDouble(At::x).min().orElseThrow();
    double to = corners.stream().mapToDouble(At::x).max().orElseThrow();
    assertEquals(length, to - from, EXACT_MM);
    double[] ends = {width(corners, from), width(corners, to)};
    assertEquals(1.375 * 25.4, Math.min(ends[0], ends[1]), EXACT_MM);
    assertEquals(2.25 * 25.4, Math.max(ends[0], ends[1]), EXACT_MM);
  }

  private static double width(List<At> corners, double x) {
    List<At> there = corners.stream().filter(at -> Math.abs(at.x() - x) < EXACT_MM).toList();
    return there.stream().mapToDouble(At::y).max().orElseThrow()
        - there.stream().mapToDouble(At::y).min().orElseThrow();
  }

  /** Its radius is that of the circle through the arc's three exact points (a b c / 4 area). */
  @Test
  void theHollowOfTheLegIsOneTrueArc() {
    FullSize shape = shape("step-stool", "leg");
    Matcher arc = ARC.matcher(CutSvg.write(shape));
    assertTrue(arc.find());
    Segment.Arc exact =
        FlatPart.of(shape.mark().shown())
            .cuts(Cut.Shaped.class)
            .getFirst()
            .contour()
            .arcs()
            .getFirst();
    double a = exact.from().toMm().distance(exact.through().toMm());
    double b = exact.through().toMm().distance(exact.to().toMm());
    double c = exact.to().toMm().distance(exact.from().toMm());
    double half = (a + b + c) / 2;
    double area = Math.sqrt(half * (half - a) * (half - b) * (half - c));
    assertEquals(a * b * c / (4 * area), Double.parseDouble(arc.group(1)), EXACT_MM);
    assertFalse(arc.find(), "the hollow is one arc");
  }

  /**
   * By the description the leg is 3/4 in thick and leans by 10 degrees, so at one end its face
   * stops 3/4 in x tan 10 short of the outline, and the screw holes are set out from there. The
   * outline is as deep as the step, 10 1/2 in.
   */
  @Test
  void aBevelledEndShowsWhereTheFaceEnds() {
    FullSize leg = shape("step-stool", "leg");
    assertEquals(1, leg.edges().size());
    List<At> line = leg.edges().getFirst().points();
    Bounds all = leg.bounds();
    At end = line.getFirst();
    boolean level = Math.abs(end.y() - line.getLast().y()) < 1e-9;
    double inside =
        level
            ? Math.min(end.y() - all.top(), all.bottom() - end.y())
            : Math.min(end.x() - all.left(), all.right() - end.x());
    assertEquals(0.75 * 25.4 * Math.tan(Math.toRadians(10)), inside, 0.002);
    double along = line.getFirst().distance(line.getLast());
    assertTrue(along > 10.2 * 25.4 && along <= 10.5 * 25.4, "as long as the face is wide");
    assertTrue(CutSvg.write(leg).contains("<g id=\"edge\""));
    assertEquals(List.of(), shape("dining-table", "leg").edges(), "a taper moves no end");
  }

  /** Both sheets on which the top of the leg lies say what the inner line is. */
  @Test
  void theSheetsSayWhatTheLineOfABevelIs() {
    List<TemplateTile> noted =
        AllProjects.named("step-stool").drawings().templates().stream()
            .flatMap(sheets -> sheets.tiles().stream())
            .filter(tile -> String.join(" ", texts(tile)).contains("left face ends here"))
            .toList();
    assertEquals(List.of("A1", "B1"), noted.stream().map(TemplateTile::letter).toList());
  }

  private static List<String> texts(TemplateTile tile) {
    return Painter.texts(tile.drawing()).stream().map(PlacedText::text).toList();
  }

  @Test
  void filesForMachinesHoldLinesOnlyInMillimetres() {
    String svg = CutSvg.write(shape("step-stool", "leg"));
    Matcher size =
        Pattern.compile("width=\"([\\d.]+)mm\" height=\"([\\d.]+)mm\" viewBox=\"0 0 \\1 \\2\"")
            .matcher(svg);
    assertTrue(size.find(), svg.substring(0, 300));
    assertFalse(svg.contains("<text"));
    assertTrue(svg.contains("<g id=\"cut\"") && svg.contains("<g id=\"centres\""));
  }

  /** A strip for shelf pins: five holes of 1/4 in, 1 1/4 in apart, as the bench says. */
  @Test
  void aRowOfHolesHasAStripWithTrueSteps() {
    FullSize strip =
        AllProjects.named("window-bench").drawings().templates().stream()
            .flatMap(template -> template.shapes().stream())
            .filter(each -> each.name().equals("A"))
            .findFirst()
            .orElseThrow();
    assertEquals(5, strip.holes().size());
    for (int i = 0; i + 1 < 5; i++) {
      double step = strip.holes().get(i).centre().distance(strip.holes().get(i + 1).centre());
      assertEquals(1.25 * 25.4, step, EXACT_MM);
      assertEquals(0.25 * 25.4, strip.holes().get(i).diameterMm(), EXACT_MM);
    }
    assertTrue(strip.cuts().isEmpty());
    assertEquals(2, strip.edges().size());
  }

  private static String svg(String project, String title) {
    return CutSvg.write(shape(project, title));
  }

  private static FullSize shape(String project, String title) {
    return AllProjects.named(project).drawings().templates().stream()
        .flatMap(template -> template.shapes().stream())
        .filter(each -> each.mark().title().toLowerCase(java.util.Locale.ROOT).contains(title))
        .findFirst()
        .orElseThrow();
  }

  private static List<At> points(String svg) {
    List<At> points = new ArrayList<>();
    Matcher point =
        Pattern.compile("[ML]([\\d.]+) ([\\d.]+)").matcher(svg.substring(0, svg.indexOf("</g>")));
    while (point.find()) {
      points.add(new At(Double.parseDouble(point.group(1)), Double.parseDouble(point.group(2))));
    }
    return points;
  }
}
