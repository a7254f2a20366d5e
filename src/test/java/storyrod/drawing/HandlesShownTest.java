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

/** Where the whole piece is shown, it is as it is used: no bare holes where a hand takes hold. */
class HandlesShownTest {
  private static final Set<ItemKind> HANDLES = Set.of(ItemKind.PULL, ItemKind.KNOB);

  @TestFactory
  List<DynamicTest> everyPullAndKnobIsOnTheCover() {
    return AllProjects.each(
        sample ->
            assertEquals(
                handles(sample, "on-"),
                shown(sample, "on-", List.of(sample.set().drawings().cover()))));
  }

  @TestFactory
  List<DynamicTest> everyPullAndKnobIsSeenFromTheFront() {
    return AllProjects.each(
        sample ->
            assertEquals(handles(sample, "front-"), shown(sample, "front-", general(sample))));
  }

  private static List<Drawing> general(Sample sample) {
    return sample.set().drawings().general().stream()
        .filter(each -> each.units().isEmpty())
        .map(GeneralSheet::drawing)
        .toList();
  }

  private static Set<String> handles(Sample sample, String before) {
    return Hardware.of(sample.set().piece()).stream()
        .filter(each -> isHandle(sample, each))
        .map(each -> before + each.id())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean isHandle(Sample sample, Hardware hardware) {
    return HANDLES.contains(sample.set().piece().kind(hardware.placed().item()));
  }

  private static Set<String> shown(Sample sample, String before, List<Drawing> on) {
    Set<String> handles = handles(sample, before);
    return on.stream()
        .flatMap(each -> each.elements().stream())
        .flatMap(each -> each instanceof Group group ? Stream.of(group.id()) : Stream.empty())
        .filter(handles::contains)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
