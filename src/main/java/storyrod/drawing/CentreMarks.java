package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;

/**
 * Thin crossed lines through the middles of holes that are too small on the paper to be found
 * (centre lines of ISO 128-2), but for holes so near each other that their row is seen.
 */
final class CentreMarks {
  /** A wider mouth is seen by itself. */
  static final double SEEN_MM = 1.2;

  private static final double ARM_MM = 1.6;
  private static final double NEAR_MM = 2 * ARM_MM + 0.6;

  private CentreMarks() {}

  /** The marks of mouths, given by their outlines on the paper. */
  static List<Line> of(List<List<At>> mouths) {
    List<Bounds> all = mouths.stream().map(Bounds::around).toList();
    return all.stream()
        .filter(each -> Math.max(each.width(), each.height()) < SEEN_MM)
        .map(Bounds::middle)
        .filter(each -> isApart(each, all))
        .flatMap(CentreMarks::cross)
        .toList();
  }

  private static boolean isApart(At at, List<Bounds> all) {
    return all.stream().filter(each -> each.middle().distance(at) < NEAR_MM).count() == 1;
  }

  private static Stream<Line> cross(At at) {
    return Stream.of(
        new Line(Role.CENTRE, List.of(at.plus(-ARM_MM, 0), at.plus(ARM_MM, 0))),
        new Line(Role.CENTRE, List.of(at.plus(0, -ARM_MM), at.plus(0, ARM_MM))));
  }
}
