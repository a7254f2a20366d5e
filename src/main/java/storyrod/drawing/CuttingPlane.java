package storyrod.drawing;

import java.util.List;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.measure.Length;

/**
 * Where a section cuts, on the front view: a dash-dotted line with wide ends, arrows in the
 * direction of sight and a letter at each (ISO 128, from memory).
 *
 * @param x where the plane lies
 */
record CuttingPlane(Length x, String letter) {
  private static final double OFF = 1.2;
  private static final double WIDE = 3.4;
  private static final double ARROW = 5.5;
  private static final double BESIDE = 1.2;

  void addTo(Paper paper, ViewOnPaper front) {
    Bounds bounds = front.bounds();
    double at = front.at(storyrod.geometry.Point.ORIGIN.with(storyrod.geometry.Axis.X, x)).x();
    paper.add(
        new Line(
            Role.CENTRE,
            List.of(new At(at, bounds.top() - OFF), new At(at, bounds.bottom() + OFF))));
    end(paper, new At(at, bounds.top() - OFF), -1);
    end(paper, new At(at, bounds.bottom() + OFF), 1);
  }

  private void end(Paper paper, At start, int down) {
    At end = start.plus(0, down * WIDE);
    paper.add(new Line(Role.VISIBLE, List.of(start, end)));
    paper.add(new Arrow(end, end.plus(-ARROW, 0), false));
    double size = TextStyle.MARK.sizeMm();
    At text = new At(end.x() + BESIDE, end.y() + (down < 0 ? size * 0.5 : size * 0.3));
    paper.add(new Text(TextStyle.MARK, text, Anchor.START, true, letter));
  }
}
