package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Group;

/** Where the leaders of hardware end. */
class HardwareLeadersTest {
  /** A leader ends on an item of its mark: beside it, it would be taken for what lies there. */
  @TestFactory
  List<DynamicTest> leadersEndOnTheirHardware() {
    return AllProjects.each(
        project ->
            Stream.concat(
                    project.set().drawings().exploded().all().stream(),
                    project.set().drawings().steps().values().stream())
                .forEach(HardwareLeadersTest::assertOnTheirHardware));
  }

  /** Two that end in one place would send a reader to look for the other's items in vain. */
  @TestFactory
  List<DynamicTest> leadersOfOneMarkInAStepEndApart() {
    return AllProjects.each(
        project ->
            project.set().drawings().steps().values().forEach(HardwareLeadersTest::assertApart));
  }

  private static void assertApart(Drawing drawing) {
    List<Balloon> counted = counted(drawing).toList();
    for (Balloon one : counted) {
      counted.stream()
          .filter(other -> other != one && other.mark().equals(one.mark()))
          .forEach(
              other ->
                  assertTrue(
                      one.tip().distance(other.tip()) > 2.4,
                      () -> drawing.name() + " " + one + " " + other));
    }
  }

  private static Stream<Balloon> counted(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Balloon.class::isInstance)
        .map(Balloon.class::cast)
        .filter(each -> each.count() > 0);
  }

  private static void assertOnTheirHardware(Drawing drawing) {
    counted(drawing)
        .forEach(
            each ->
                assertTrue(
                    hardware(drawing)
                        .filter(group -> mark(group).equals(each.mark()))
                        .flatMap(group -> group.elements().stream())
                        .anyMatch(element -> isAt(element, each.tip())),
                    () -> drawing.name() + " " + each));
  }

  /** Inside a toned face of it, or on its line, but for rounding. */
  private static boolean isAt(Drawing.Element element, At at) {
    return switch (element) {
      case Drawing.Area area -> Covered.isIn(area.rings(), at);
      case Drawing.Line line ->
          IntStream.range(1, line.points().size())
              .anyMatch(i -> isBetween(line.points().get(i - 1), at, line.points().get(i)));
      default -> false;
    };
  }

  private static boolean isBetween(At from, At at, At to) {
    return from.distance(at) + at.distance(to) - from.distance(to) < 0.01;
  }

  private static Stream<Group> hardware(Drawing drawing) {
    return HardwareDrawnTest.hardware(drawing);
  }

  private static String mark(Group group) {
    return HardwareDrawnTest.mark(group);
  }
}
