package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** Every part is sanded before it is finished, and told once. */
class SandedAtLastTest {
  @TestFactory
  List<DynamicTest> everyPartIsToldOnce() {
    return AllProjects.each(
        sample -> {
          PlanSet set = sample.set();
          for (Step finish : steps(set, Verb.FINISH)) {
            SandedAtLast last = new SandedAtLast(set.piece(), set.build().steps());
            List<String> told = new ArrayList<>(last.loose(finish));
            told.addAll(last.builtIn(finish));
            for (Step sanding : steps(set, Verb.SAND)) {
              told.addAll(sanding.targets());
            }
            List<String> parts = set.piece().parts().stream().map(part -> part.name()).toList();
            assertEquals(new TreeSet<>(parts), new TreeSet<>(told));
            assertEquals(parts.size(), told.size(), told.toString());
          }
        });
  }

  /** Their backs are glued to others, so no step sanded them as inside faces. */
  @TestFactory
  Stream<DynamicTest> theSentencesNameThem() {
    return Stream.of("sideboard", "window-bench")
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () -> {
                      PlanSet set = AllProjects.named(name);
                      Step finish = steps(set, Verb.FINISH).getFirst();
                      StepText text =
                          new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build())
                              .write(finish);
                      String said = String.join("\n", text.sentences());
                      String marks =
                          name.equals("sideboard")
                              ? "G × 2, J, K × 2 and AF × 4"
                              : "G × 8, H × 2, J, K and L × 2";
                      assertTrue(said.contains("all that shows of " + marks), said);
                    }));
  }

  private static List<Step> steps(PlanSet set, Verb verb) {
    return set.build().steps().stream().filter(step -> step.verb() == verb).toList();
  }
}
