package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Text;

/** Offcuts on which a finish is tried, each with a field for each coat. */
class CoatsTileTest {
  private static final Bounds ROOM = new Bounds(0, 0, 60, 14);

  private static List<String> figures(CoatsTile tile) {
    return tile.in(ROOM).stream()
        .filter(Text.class::isInstance)
        .map(each -> ((Text) each).text())
        .toList();
  }

  private static int coats(Sample sample) {
    return sample.set().piece().description().finish().orElseThrow().allCoats();
  }

  @TestFactory
  List<DynamicTest> eachFieldHasOneCoatMoreThanTheOneBefore() {
    return AllProjects.each(
        sample -> {
          List<String> all =
              IntStream.rangeClosed(0, coats(sample)).mapToObj(Integer::toString).toList();
          CoatsTile.of(sample.set().piece()).forEach(tile -> assertEquals(all, figures(tile)));
        });
  }

  /** A finish looks different on each wood. */
  @TestFactory
  List<DynamicTest> eachWoodHasAnOffcut() {
    return AllProjects.each(
        sample ->
            assertEquals(
                new TreeSet<>(
                    sample.set().piece().parts().stream()
                        .map(part -> part.stock().wood(sample.set().piece().description().words()))
                        .toList()),
                new TreeSet<>(
                    CoatsTile.of(sample.set().piece()).stream()
                        .flatMap(tile -> tile.captions().stream())
                        .toList())));
  }
}
