package storyrod.drawing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;

/** Where the leader of a note on a trench may point. */
final class TrenchTips {
  private TrenchTips() {}

  /** Points in the middle of a trench, along it, outside every other trench if there are any. */
  static List<Point> of(FlatPart flat, Face view, Cut.Trench trench) {
    List<Point> all = along(view, trench.removed());
    List<Box> others =
        flat.trenches().stream().filter(each -> each != trench).map(Cut.Trench::removed).toList();
    List<Point> alone =
        all.stream()
            .filter(tip -> others.stream().noneMatch(other -> covers(view, other, tip)))
            .toList();
    return alone.isEmpty() ? all : alone;
  }

  private static boolean covers(Face view, Box box, Point tip) {
    return DimensionSides.inPlane(view).stream()
        .allMatch(axis -> box.on(axis).contains(tip.on(axis)));
  }

  static List<Point> along(Face view, Box removed) {
    List<Axis> axes = DimensionSides.inPlane(view);
    Axis run =
        removed.size(axes.get(0)).isLongerThan(removed.size(axes.get(1)))
            ? axes.get(0)
            : axes.get(1);
    Point middle = new Point(at(removed.x(), 6), at(removed.y(), 6), at(removed.z(), 6));
    List<Point> tips = new ArrayList<>();
    for (int twelfths : new int[] {6, 3, 9, 1, 11}) {
      tips.add(middle.with(run, at(removed.on(run), twelfths)));
    }
    return tips;
  }

  private static Length at(Range range, int twelfths) {
    return range.from().plus(range.length().times(twelfths).dividedBy(12, RoundingMode.FLOOR));
  }
}
