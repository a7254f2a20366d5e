package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.planset.PrintedDrawings;

/** Joints that are too fine for a drawing's scale are shown in enlarged details. */
class DetailsTest {
  /**
   * Lines as near as this run into one on paper: two wide ones of 0.5 mm with as much again between
   * them (ISO 128-2 asks for at least 0.7 mm between parallel lines; from memory).
   */
  private static final double APART_MM = 1.5;

  @TestFactory
  List<DynamicTest> noJointsLinesRunIntoOneUnlessADetailShowsThem() {
    return AllProjects.each(
        sample -> {
          List<String> faults = new ArrayList<>();
          for (String paper : PrintedDrawings.papers()) {
            for (Mark mark : sample.set().piece().marks()) {
              Drawing drawing = PrintedDrawings.of(sample.set(), paper).get("part-" + mark.mark());
              hidden(mark, drawing).forEach(each -> faults.add(paper + " " + each));
            }
          }
          assertEquals(List.of(), faults);
        });
  }

  /** Joints that neither the drawing nor a detail shows large enough. */
  private static List<String> hidden(Mark mark, Drawing drawing) {
    double factor = drawing.scale().orElseThrow().factor();
    List<String> hidden = new ArrayList<>();
    for (Cut cut : mark.shown().cuts()) {
      joint(cut)
          .map(box -> narrowest(mark.shown().box(), box))
          .filter(narrow -> narrow.toMm() * factor < APART_MM)
          .filter(narrow -> Clean.details(drawing).noneMatch(each -> shows(each, narrow)))
          .ifPresent(narrow -> hidden.add(mark.mark() + " " + cut.term() + " " + narrow.toMm()));
    }
    return hidden;
  }

  private static Optional<Box> joint(Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> Optional.of(trench.removed());
      case Cut.Tenon tenon -> Optional.of(tenon.tenon());
      default -> Optional.empty();
    };
  }

  /** The smallest size of a joint across the face that it is cut from. */
  private static Length narrowest(Box part, Box joint) {
    return Arrays.stream(Axis.values())
        .filter(axis -> !joint.on(axis).equals(part.on(axis)))
        .map(joint::size)
        .min(Length::compareTo)
        .orElse(part.size(Axis.X));
  }

  /** Whether a detail has a dimension of that length, drawn at the detail's scale. */
  private static boolean shows(Group detail, Length length) {
    return detail.elements().stream()
        .flatMap(each -> each instanceof Dimension it ? Stream.of(it) : Stream.empty())
        .anyMatch(
            it ->
                it.measure().equals(length)
                    && drawn(it) >= APART_MM
                    && Math.abs(drawn(it) - length.toMm() * Clean.detailFactor(detail)) < 1e-6);
  }

  private static double drawn(Dimension it) {
    return DimensionLines.lengthMm(it);
  }

  /** Whoever looks at the ring finds the detail, and the other way round. */
  @TestFactory
  List<DynamicTest> everyDetailIsNamedInItsDrawingOnce() {
    return AllProjects.each(
        sample ->
            PrintedDrawings.of(sample.set())
                .forEach(
                    (name, drawing) ->
                        Clean.details(drawing)
                            .forEach(
                                detail -> {
                                  String said = "detail " + Clean.detailName(detail);
                                  long notes =
                                      Clean.notes(drawing).lines().filter(said::equals).count();
                                  assertEquals(1, notes, name + " " + said);
                                })));
  }

  @Test
  void whatLiesOutsideAWindowIsCutOff() {
    Bounds window = new Bounds(0, 0, 10, 10);
    Line across = new Line(Role.VISIBLE, List.of(new At(-5, 5), new At(20, 5)));
    assertEquals(
        List.of(new Line(Role.VISIBLE, List.of(new At(0, 5), new At(10, 5)))),
        Clipping.inside(across, window));
    Drawing.Area area =
        new Drawing.Area(
            Drawing.Tone.FRONT,
            List.of(List.of(new At(-5, -5), new At(5, -5), new At(5, 5), new At(-5, 5))));
    Drawing.Area left = (Drawing.Area) Clipping.inside(area, window).getFirst();
    Bounds bounds =
        left.rings().getFirst().stream().reduce(Bounds.NONE, Bounds::with, Bounds::with);
    assertEquals(new Bounds(0, 0, 5, 5), bounds);
    assertTrue(Clipping.inside(Moved.by(area, 40, 0), window).isEmpty());
  }
}
