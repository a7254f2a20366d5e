package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.Operation;
import storyrod.drawing.AllProjects;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.words.Words;

/** What is said under a part's title of holes that its drawing shows and no bench sees. */
class PartLinesTest {
  private static final Pattern LATER = Pattern.compile("step (\\d+) through (\\w+)");

  private static String line(PlanSet set, Mark mark) {
    Texts texts = Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH)).texts();
    return new PartLines(set.piece(), set.build().steps(), texts).of(mark);
  }

  @Test
  void cleatAboveABottomIsDrilledThrough() {
    PlanSet set = AllProjects.named("sideboard");
    assertTrue(
        line(set, set.piece().mark("C")).contains("Pilot holes are drilled in place"),
        line(set, set.piece().mark("C")));
    assertEquals("Two alike, as shown.", line(set, set.piece().mark("AD")));
  }

  /**
   * Each step that is named drills in the part, and brings or holds the part that leads the bit.
   */
  @TestFactory
  List<DynamicTest> stepsThatAreNamedDrillThere() {
    return AllProjects.each(
        project ->
            project.set().piece().marks().forEach(mark -> assertDrilled(project.set(), mark)));
  }

  private static boolean isOf(PlanSet set, Mark mark, Cut cut) {
    return mark.parts().stream().anyMatch(part -> set.piece().part(part).cuts().contains(cut));
  }

  /** The two panels of a stool are drilled when the first comes, and when the other does. */
  @Test
  void allStepsOfEqualPartsAreNamed() {
    PlanSet set = AllProjects.named("step-stool");
    String line = line(set, set.piece().mark("B"));
    assertTrue(line.contains("step 22 through A"), line);
    assertTrue(line.contains("step 24 through A"), line);
  }

  private static void assertDrilled(PlanSet set, Mark mark) {
    Matcher later = LATER.matcher(line(set, mark));
    while (later.find()) {
      List<Operation> operations =
          set.build().steps().get(Integer.parseInt(later.group(1)) - 1).operations();
      assertTrue(
          operations.stream()
              .flatMap(each -> each.cuts().stream())
              .anyMatch(cut -> isOf(set, mark, cut)),
          later.group());
      Stream<String> joined =
          operations.stream()
              .flatMap(each -> each.joints().stream())
              .flatMap(joint -> Stream.of(joint.first(), joint.second()));
      assertTrue(
          joined.anyMatch(part -> set.piece().part(part).mark().equals(later.group(2))),
          later.group());
    }
  }
}
