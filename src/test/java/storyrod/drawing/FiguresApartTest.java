package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Dimension;
import storyrod.planset.PrintedDrawings;

/** Two figures on one dimension line with no extension line between them are read as one size. */
class FiguresApartTest {
  /** Wider than any space inside a figure, whose capitals are 2.5 mm high. */
  private static final double APART_MM = 4;

  private record Placed(Dimension dimension, double low, double high) {
    static Placed of(Dimension dimension) {
      PlacedText text = PlacedText.of(DimensionLayout.of(dimension).figures());
      return dimension.alongX()
          ? new Placed(dimension, text.left(), text.right())
          : new Placed(dimension, text.top(), text.bottom());
    }

    Stream<Double> ends() {
      return Stream.of(dimension.from(), dimension.to())
          .map(at -> dimension.alongX() ? at.x() : at.y());
    }

    boolean readsOnIn(Placed next) {
      boolean onOneLine =
          dimension.alongX() == next.dimension.alongX()
              && Math.abs(dimension.line() - next.dimension.line()) < 0.01;
      boolean parted =
          Stream.concat(ends(), next.ends()).anyMatch(at -> high - 0.5 < at && at < next.low + 0.5);
      return onOneLine && high < next.low && next.low - high < APART_MM && !parted;
    }
  }

  private static List<String> together(Drawing drawing) {
    List<Placed> all = Clean.dimensions(drawing).stream().map(Placed::of).toList();
    List<String> found = new ArrayList<>();
    for (Placed one : all) {
      all.stream()
          .filter(one::readsOnIn)
          .forEach(next -> found.add(one.dimension.text() + " | " + next.dimension.text()));
    }
    return found;
  }

  @TestFactory
  List<DynamicTest> noTwoFiguresReadAsOne() {
    return AllProjects.each(
        sample -> {
          List<String> found = new ArrayList<>();
          PrintedDrawings.of(sample.set())
              .forEach(
                  (name, each) ->
                      together(each).forEach(figures -> found.add(name + ": " + figures)));
          assertEquals(List.of(), found);
        });
  }
}
