package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.description.ItemKind;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Group;

/** The cover shows the piece as it is used: no bare holes where a hand takes hold. */
class CoverHardwareTest {
  private static final Set<ItemKind> HANDLES = Set.of(ItemKind.PULL, ItemKind.KNOB);

  @TestFactory
  List<DynamicTest> everyPullAndKnobIsOnTheCover() {
    return AllProjects.each(sample -> assertEquals(handles(sample), shown(sample)));
  }

  private static Set<String> handles(Sample sample) {
    return Hardware.of(sample.set().piece()).stream()
        .filter(each -> isHandle(sample, each))
        .map(each -> "on-" + each.id())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean isHandle(Sample sample, Hardware hardware) {
    return HANDLES.contains(sample.set().piece().kind(hardware.placed().item()));
  }

  private static Set<String> shown(Sample sample) {
    Set<String> handles = handles(sample);
    return sample.set().drawings().cover().elements().stream()
        .flatMap(each -> each instanceof Group group ? Stream.of(group.id()) : Stream.empty())
        .filter(handles::contains)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
