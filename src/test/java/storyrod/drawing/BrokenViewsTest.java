package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.planset.PrintedDrawings;

/** Long narrow parts are drawn large, with what is plain left out between break lines. */
class BrokenViewsTest {
  /** A part narrower than this on paper is little more than its two wide outlines. */
  private static final double NARROWEST_MM = 8;

  private static final int ZIGZAG = 6;

  /** A curve along the part may not be broken (ISO 128-3 breaks off only what goes on alike). */
  @TestFactory
  List<DynamicTest> noStraightStileOrRailIsDrawnAsAThread() {
    return AllProjects.each(
        sample -> {
          List<String> thin = new ArrayList<>();
          for (String paper : PrintedDrawings.papers()) {
            for (Mark mark : sample.set().piece().marks()) {
              Drawing drawing = PrintedDrawings.of(sample.set(), paper).get("part-" + mark.mark());
              FlatPart flat = FlatPart.of(mark.shown());
              double width = flat.size(Axis.Z).toMm();
              double wide = width * drawing.scale().orElseThrow().factor();
              boolean slim = flat.size(Axis.X).toMm() >= 6 * width;
              if (slim && wide < NARROWEST_MM && flat.cuts(Cut.Shaped.class).isEmpty()) {
                thin.add(paper + " " + mark.mark() + " is " + wide + " mm wide");
              }
            }
          }
          assertEquals(List.of(), thin);
        });
  }

  /** The length stands on an unbroken line across the break, as the true one (ISO 129-1). */
  @TestFactory
  List<DynamicTest> aBrokenPartsLengthIsTheTrueOne() {
    return AllProjects.each(
        sample -> {
          for (Mark mark : sample.set().piece().marks()) {
            Drawing drawing = sample.set().drawings().parts().get(mark.mark());
            if (zigzags(drawing).findAny().isPresent()) {
              Dimension overall = longest(drawing);
              Length length = FlatPart.of(mark.shown()).size(Axis.X);
              assertEquals(length, overall.measure(), mark.mark());
              double toScale = length.toMm() * drawing.scale().orElseThrow().factor();
              assertTrue(DimensionLines.lengthMm(overall) < toScale, mark.mark());
            }
          }
        });
  }

  private static Dimension longest(Drawing drawing) {
    return Clean.dimensions(drawing).stream()
        .filter(Dimension::alongX)
        .max((one, other) -> one.measure().compareTo(other.measure()))
        .orElseThrow();
  }

  private static Stream<Line> zigzags(Drawing drawing) {
    List<Drawing.Element> details =
        Clean.details(drawing).flatMap(each -> Clean.flat(each.elements()).stream()).toList();
    return Clean.flat(drawing.elements()).stream()
        .filter(each -> details.stream().noneMatch(other -> other == each))
        .flatMap(each -> each instanceof Line line ? Stream.of(line) : Stream.empty())
        .filter(line -> line.role() == Role.DIMENSION && line.points().size() == ZIGZAG);
  }

  /** A chamfer runs through the break; its note points at what of it is drawn. */
  @Test
  void aNoteOnWhatRunsThroughABreakPointsAtTheWoodBesideIt() {
    Drawing strip = AllProjects.named("bookcase").drawings().parts().get("Q");
    List<Double> breaks =
        zigzags(strip).map(each -> each.points().getFirst().x()).distinct().sorted().toList();
    assertEquals(2, breaks.size());
    Note chamfer =
        Clean.flat(strip.elements()).stream()
            .flatMap(each -> each instanceof Note note ? Stream.of(note) : Stream.empty())
            .filter(note -> String.join(" ", note.lines()).contains("chamfer"))
            .findFirst()
            .orElseThrow();
    double tip = chamfer.tip().x();
    assertTrue(tip < breaks.getFirst() - 1 || tip > breaks.getLast() + 1, tip + " " + breaks);
  }
}
