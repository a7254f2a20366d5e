package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FrontHoles;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.planset.PlanSet;

/** Holes are drawn from the step on that drills them. */
class ByThenTest {
  private static final Size ROOM = new Size(190, 190);
  private static final double EXACT_MM = 1e-6;

  /** No straight edge of a box has so many points. */
  private static final int ROUND = 8;

  /** Where a hole that one step drills in place is there after another step. */
  private record Drilled(Sample sample, Step step, Part part, Cut.Holes holes) {
    long bores(int after) {
      PlanSet set = sample.set();
      Part then =
          new ByThen(set.build())
              .piece(set.piece(), set.build().steps().get(after - 1))
              .part(part.name());
      return holes.centres().stream()
          .map(centre -> part.pose().point(centre.toMm()))
          .filter(mouth -> then.placed().bores().stream().anyMatch(b -> isAt(b.mouth(), mouth)))
          .count();
    }

    private static boolean isAt(Vector3D one, Vector3D other) {
      return one.distance(other) < EXACT_MM;
    }

    @Override
    public String toString() {
      return sample.name() + " " + step.number() + " " + part.name() + " " + holes.term();
    }
  }

  private static List<Drilled> drilledInPlace() {
    List<Drilled> all = new ArrayList<>();
    for (Sample sample : AllProjects.all()) {
      for (Step step : sample.set().build().steps()) {
        step.operations().stream()
            .filter(each -> each.verb() == Verb.FIT)
            .flatMap(each -> Cut.only(Cut.Holes.class, each.cuts()).stream())
            .forEach(
                holes ->
                    sample.set().piece().parts().stream()
                        .filter(part -> part.cuts().contains(holes))
                        .forEach(part -> all.add(new Drilled(sample, step, part, holes))));
      }
    }
    return all;
  }

  @Test
  void whatIsDrilledInPlaceIsThereFromThatStepOn() {
    List<Drilled> all = drilledInPlace();
    assertTrue(all.size() > 30, () -> "drilled in place: " + all.size());
    for (Drilled each : all) {
      assertEquals(0, each.bores(each.step().number() - 1), each::toString);
      assertEquals(each.holes().centres().size(), each.bores(each.step().number()), each::toString);
    }
  }

  /** After the last step the piece is whole, cut by cut. */
  @Test
  void theLastStepLeavesThePieceAsItIsDescribed() {
    for (Sample sample : AllProjects.all()) {
      PlanSet set = sample.set();
      assertEquals(
          set.piece(), new ByThen(set.build()).piece(set.piece(), set.build().steps().getLast()));
    }
  }

  /**
   * The box of a drawer hangs with the holes for its front's screws; those of its pull are drilled
   * through it when its front is fixed.
   */
  @ParameterizedTest
  @CsvSource({"sideboard, upper-drawer.box-front", "nightstand, drawer-1.box-front"})
  void aBoxIsHungWithoutTheHolesOfItsPull(String project, String box) {
    PlanSet set = AllProjects.named(project);
    Step hung =
        set.build().steps().stream()
            .filter(step -> step.verb() == Verb.FIT && step.newParts().contains(box))
            .reduce((first, last) -> last)
            .orElseThrow();
    Part part = set.piece().part(box);
    FrontHoles fronts = new FrontHoles(set.piece());
    List<Cut.Holes> drilled =
        part.cuts(Cut.Holes.class).stream().filter(cut -> !fronts.isForHandle(cut)).toList();
    assertTrue(drilled.size() < part.cuts(Cut.Holes.class).size());
    assertEquals(
        drilled.stream().mapToInt(cut -> cut.centres().size()).sum(),
        rounds(set, hung, Ink.id(part)));
  }

  /** The lines of a part that run round something: holes are its only curves. */
  private static long rounds(PlanSet set, Step step, String id) {
    Drawing drawing =
        PicturedStep.of(set.piece(), set.build(), step, Hardware.of(set.piece()))
            .orElseThrow()
            .drawn(ROOM);
    return drawing.elements().stream()
        .filter(each -> each instanceof Group group && group.id().equals(id))
        .flatMap(each -> ((Group) each).elements().stream())
        .filter(each -> each instanceof Line line && line.points().size() > ROUND)
        .count();
  }
}
