package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Exploded;
import storyrod.words.Words;

/** What a balloon of hardware means stands on its page. */
class HardwareKeyTest {
  private static Set<String> marks(Drawing drawing) {
    Set<String> marks = new TreeSet<>();
    drawing.elements().stream()
        .filter(Balloon.class::isInstance)
        .map(Balloon.class::cast)
        .filter(each -> each.mark().matches("H[0-9]+"))
        .forEach(each -> marks.add(each.mark()));
    return marks;
  }

  @TestFactory
  List<DynamicTest> everyMarkOfHardwareInAnExplodedViewIsListedBelowIt() {
    return AllProjects.each(
        sample -> {
          HardwareList all =
              HardwareList.whole(
                  sample.set(),
                  new Texts(sample.set().piece().description().format(), Words.ENGLISH));
          Exploded exploded = sample.set().drawings().exploded();
          for (Drawing each : exploded.all()) {
            List<String> listed =
                HardwareKey.of(Stream.of(each), all).stream().map(HardwareList.Row::mark).toList();
            assertEquals(marks(each), new TreeSet<>(listed), each.name());
          }
        });
  }
}
