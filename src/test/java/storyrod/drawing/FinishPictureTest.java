package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.description.AssemblyEntry;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Text;

/** What lies in the shop to be finished. */
class FinishPictureTest {
  private static final Size ROOM = new Size(190, 150);

  private static Drawing picture(Sample sample, Step step) {
    return FinishPicture.of(sample.set()::piece, sample.set().build(), step)
        .orElseThrow()
        .drawn(ROOM);
  }

  private static List<Step> finished(Sample sample) {
    return sample.set().build().steps().stream()
        .filter(step -> step.verb() == Verb.FINISH)
        .toList();
  }

  /** Whatever is not in the picture would be left bare. */
  @TestFactory
  List<DynamicTest> everyPartThatIsFinishedIsThere() {
    return AllProjects.each(
        sample -> {
          assertTrue(!finished(sample).isEmpty());
          finished(sample).forEach(step -> assertAllThere(sample, step));
        });
  }

  private static void assertAllThere(Sample sample, Step step) {
    Set<String> wanted =
        step.targets().stream()
            .map(sample.set().piece()::part)
            .map(Ink::id)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> drawn =
        picture(sample, step).elements().stream()
            .flatMap(each -> each instanceof Group group ? Stream.of(group.id()) : Stream.empty())
            .collect(Collectors.toCollection(TreeSet::new));
    wanted.removeAll(drawn);
    assertEquals(Set.of(), wanted);
  }

  /** A drawer and its front, fixed only later, are two things: their names differ. */
  @TestFactory
  List<DynamicTest> aTitleStandsBelowNoMoreThingsThanItHasSubAssemblies() {
    return AllProjects.each(
        sample -> {
          Map<String, Long> titles =
              counts(
                  sample.set().piece().description().assemblies().values().stream()
                      .map(AssemblyEntry::title));
          for (Step step : finished(sample)) {
            counts(names(picture(sample, step)).filter(titles::containsKey))
                .forEach((title, count) -> assertTrue(count <= titles.get(title), title));
          }
        });
  }

  private static Map<String, Long> counts(Stream<String> names) {
    return names.collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()));
  }

  @Test
  void aFrontBesideItsDrawerBearsItsOwnName() {
    Sample sample = new Sample("window-bench", AllProjects.named("window-bench"));
    List<String> names = names(picture(sample, finished(sample).getFirst())).toList();
    assertTrue(names.containsAll(List.of("Drawer", "Drawer front")), names::toString);
  }

  private static Stream<String> names(Drawing drawing) {
    return drawing.elements().stream()
        .flatMap(each -> each instanceof Text text ? Stream.of(text.text()) : Stream.empty());
  }

  /** Drawers and doors lie beside the case, each with a mark of its own. */
  @Test
  void whatIsFinishedByItselfBearsAMark() {
    Sample sample =
        AllProjects.all().stream()
            .filter(s -> s.name().equals("sideboard"))
            .findFirst()
            .orElseThrow();
    Step step = finished(sample).getFirst();
    List<String> marks =
        picture(sample, step).elements().stream()
            .flatMap(
                each ->
                    each instanceof Balloon balloon ? Stream.of(balloon.mark()) : Stream.empty())
            .toList();
    List<String> fronts = List.of("Q", "U", "Y");
    assertTrue(marks.containsAll(fronts), "fronts are fixed later: " + marks);
    assertTrue(marks.contains("A"), "the top lies beside the case: " + marks);
  }
}
