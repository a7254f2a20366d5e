package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.build.Slides.Row;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/**
 * Where the heights of slides' lines stand beside their wall: those from one floor run along one
 * dimension line, and one alone is an ordinary dimension.
 */
record SlideHeights(List<Stack> stacks) {
  private static final double FIRST_MM = 10;
  private static final double NEXT_MM = 8;

  /** What stands beyond an ordinary dimension's line: its figures. */
  private static final double FIGURE_MM = 3.2;

  /**
   * Heights on one line.
   *
   * @param rows from one floor, each with a line of its own, from below
   * @param offMm how far their dimension line lies off what is drawn
   * @param beyondMm what stands beyond it
   */
  record Stack(List<Row> rows, double offMm, double beyondMm) {
    double wholeMm() {
      return offMm + beyondMm;
    }

    private Length floor() {
      return SlideWall.floor(rows.getFirst());
    }

    private boolean spans(Stack other) {
      return floor().isShorterThan(SlideWall.line(other.rows.getLast()))
          && other.floor().isShorterThan(SlideWall.line(rows.getLast()));
    }
  }

  /** The heights of rows from below; lines on what they are measured from have none. */
  static SlideHeights of(List<Row> rows, LengthFormat format) {
    List<Stack> stacks = new ArrayList<>();
    rows.stream()
        .filter(row -> row.onWall().isPositive())
        .collect(Collectors.groupingBy(SlideWall::floor, LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(each -> stacks.add(placed(lines(each), stacks, format)));
    return new SlideHeights(stacks);
  }

  /** One row for each line. */
  private static List<Row> lines(List<Row> rows) {
    Map<Length, Row> lines = new LinkedHashMap<>();
    rows.forEach(row -> lines.putIfAbsent(SlideWall.line(row), row));
    return List.copyOf(lines.values());
  }

  /** Beyond all that it would lie on. */
  private static Stack placed(List<Row> rows, List<Stack> before, LengthFormat format) {
    double beyond =
        rows.size() == 1
            ? FIGURE_MM
            : rows.stream()
                .mapToDouble(row -> RunningLayout.beyondMm(format.format(row.onWall())))
                .max()
                .orElseThrow();
    Stack nearest = new Stack(rows, FIRST_MM, beyond);
    double off =
        before.stream()
            .filter(nearest::spans)
            .mapToDouble(each -> Math.max(each.offMm + NEXT_MM, each.wholeMm()))
            .max()
            .orElse(FIRST_MM);
    return new Stack(rows, off, beyond);
  }

  /** What all of them take beside what is drawn. */
  double widthMm() {
    return stacks.stream().mapToDouble(Stack::wholeMm).max().orElse(0);
  }
}
