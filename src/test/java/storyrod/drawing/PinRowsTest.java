package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.words.Words;

/** Rows of holes for shelf pins are drilled along one jig, so all are measured from one end. */
class PinRowsTest {
  @TestFactory
  List<DynamicTest> longRowsAreMeasuredFromTheSameEnd() {
    return AllProjects.each(
        sample -> {
          LengthFormat format = sample.set().piece().description().format();
          for (Mark mark : sample.set().piece().marks()) {
            assertFromOneEnd(FlatPart.of(mark.shown()), format);
          }
        });
  }

  private static void assertFromOneEnd(FlatPart flat, LengthFormat format) {
    Set<Length> starts = starts(flat);
    Set<Length> told =
        Measures.of(flat, format, Words.ENGLISH).stream()
            .filter(each -> each.axis() == Axis.X && each.from().x().isZero())
            .map(each -> each.to().x())
            .filter(starts::contains)
            .collect(Collectors.toSet());
    assertEquals(starts, told, flat.part().name());
  }

  /** Where the rows of five holes and more along a part begin. */
  private static Set<Length> starts(FlatPart flat) {
    return flat.cuts(Cut.Holes.class).stream()
        .filter(holes -> holes.count() > 4 && holes.along() == Axis.X)
        .map(holes -> holes.centres().getFirst().x())
        .collect(Collectors.toSet());
  }

  /** The bookcase's sides have such rows above each other, so the test above can fail. */
  @Test
  void theBookcaseHasTwoRowsAlongASide() {
    assertTrue(
        AllProjects.named("bookcase").piece().marks().stream()
            .anyMatch(mark -> starts(FlatPart.of(mark.shown())).size() > 1));
  }
}
