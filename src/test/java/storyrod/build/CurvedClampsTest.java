package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.Clamping.Clamps;
import storyrod.drawing.AllProjects;
import storyrod.measure.Length;
import storyrod.planset.PlanSet;

/** Several clamps under an arched rail: those near its ends have to open farther. */
class CurvedClampsTest {
  /**
   * The long rails of the sewing box are 3 in high at their ends; 3/4 in of the frame is on them.
   */
  @Test
  void clampsOpenAsFarAsTheHighestPlaceOfAnArchedRailAsks() {
    PlanSet box = AllProjects.named("sewing-box");
    List<Clamps> curved =
        box.build().steps().stream()
            .filter(step -> step.verb() == Verb.FIT)
            .flatMap(step -> Clamping.of(box.piece(), step).clamps().stream())
            .filter(each -> each.low().endsWith("-rail") && each.curved())
            .toList();
    assertEquals(2, curved.size());
    curved.forEach(each -> assertEquals(Length.inch(15, 4), each.opening()));
  }
}
