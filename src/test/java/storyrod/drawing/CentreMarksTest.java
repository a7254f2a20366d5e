package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.piece.Cut;
import storyrod.planset.PlanSet;

/** Holes that are but a speck on the paper are found by crossed lines. */
class CentreMarksTest {
  private static List<At> mouth(double x, double y, double wide) {
    double half = wide / 2;
    return List.of(
        new At(x - half, y), new At(x, y - half), new At(x + half, y), new At(x, y + half));
  }

  @Test
  void smallHoleLiesWhereTwoLinesCross() {
    List<Line> lines = CentreMarks.of(List.of(mouth(30, 20, 0.4)));
    assertEquals(2, lines.size());
    for (Line line : lines) {
      At from = line.points().getFirst();
      At to = line.points().getLast();
      assertEquals(Role.CENTRE, line.role());
      assertEquals(30, (from.x() + to.x()) / 2, 1e-9);
      assertEquals(20, (from.y() + to.y()) / 2, 1e-9);
      assertTrue(from.distance(to) > 2, "as long as can be seen");
    }
  }

  @Test
  void wideHoleIsSeenByItself() {
    assertEquals(List.of(), CentreMarks.of(List.of(mouth(30, 20, 2))));
  }

  @Test
  void closeRowIsSeenAsOne() {
    List<List<At>> row = Stream.of(1, 2, 3).map(i -> mouth(2.0 * i, 5, 0.5)).toList();
    assertEquals(List.of(), CentreMarks.of(row));
  }

  /** The hole for the knob is a speck near one end of the lid. */
  @Test
  void knobsHoleInALidIsMarked() {
    PlanSet set = AllProjects.named("sewing-box");
    Step drilled =
        set.build().steps().stream()
            .filter(step -> step.targets().equals(List.of("lid")))
            .filter(
                step ->
                    step.operations().stream()
                        .flatMap(each -> each.cuts().stream())
                        .anyMatch(Cut.Holes.class::isInstance))
            .findFirst()
            .orElseThrow();
    CutPicture picture = CutPicture.of(set.piece(), set.build(), drilled).orElseThrow();
    long centres =
        Clean.flat(picture.drawn(new Size(180, 40)).elements()).stream()
            .filter(each -> each instanceof Line line && line.role() == Role.CENTRE)
            .count();
    assertEquals(2, centres);
  }
}
