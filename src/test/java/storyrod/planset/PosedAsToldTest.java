package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects;
import storyrod.drawing.AllProjects.Sample;
import storyrod.geometry.Face;
import storyrod.words.Words;

/** What lies on the bench as a step's sentences say lies so in its picture, which asks the step. */
class PosedAsToldTest {
  private static final Map<Pattern, Face> TOLD =
      Map.of(
          Pattern.compile("(Lay|lies|over,).* on (to )?its back"), Face.BACK,
          Pattern.compile("(Lay|lies|over,).* on (to )?its front"), Face.FRONT,
          Pattern.compile("Stand the .* on a long edge"), Face.BACK,
          Pattern.compile("upside down on a blanket"), Face.TOP,
          Pattern.compile("[Ww]ith the underside up|, the underside up"), Face.TOP,
          Pattern.compile("[Ww]ith the back up|, the back up"), Face.FRONT);

  @Test
  void thePieceLiesAsTheSentencesSay() {
    List<String> wrong = new ArrayList<>();
    TreeSet<Face> seen = new TreeSet<>();
    for (Sample sample : AllProjects.all()) {
      PlanSet set = sample.set();
      StepWriter writer = new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build());
      for (Step step : set.build().steps()) {
        if (step.verb() != Verb.FIT && step.verb() != Verb.MOUNT) {
          continue;
        }
        List<String> said = writer.write(step).sentences();
        TOLD.forEach(
            (told, face) -> {
              if (said.stream().anyMatch(told.asPredicate())) {
                seen.add(face);
                if (step.down() != face) {
                  wrong.add(sample.name() + " " + step.number() + " " + step.down());
                }
              }
            });
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(seen.containsAll(List.of(Face.BACK, Face.FRONT, Face.TOP)), seen.toString());
  }
}
