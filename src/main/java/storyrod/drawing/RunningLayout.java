package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.RunningDimension;
import storyrod.drawing.Drawing.RunningDimension.Height;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Lowering.Head;

/**
 * Where the parts of running dimensions go: a ring at the origin, an arrowhead at each height that
 * points away from it, and the figures at the ends of the extension lines.
 */
record RunningLayout(RunningDimension running) {
  private static final double RING = 0.9;
  private static final String ORIGIN = "0";

  /** How far figures reach beyond the dimension line, in mm. */
  static double beyondMm(String figures) {
    return DimensionLayout.PAST_LINE
        + DimensionLayout.BESIDE
        + TextSetting.of(TextStyle.DIMENSION, figures).width();
  }

  /** The line that bears ring and arrowheads. */
  Paper.Stretch line() {
    return new Paper.Stretch(on(running.origin()), on(running.heights().getLast().to()));
  }

  List<Element> elements() {
    List<Element> elements = new ArrayList<>();
    At origin = on(running.origin());
    figured(running.origin(), ORIGIN, elements);
    elements.add(new Line(Role.DIMENSION, List.of(line().from(), line().to())));
    elements.add(new Ellipse(Role.DIMENSION, origin, RING, RING, 0, Optional.of(Tone.WHITE)));
    for (Height height : running.heights()) {
      figured(height.to(), height.text(), elements);
      elements.add(Lowering.head(on(height.to()), origin, Head.SLIM));
    }
    return elements;
  }

  private At on(At point) {
    return new At(running.line(), point.y());
  }

  /** An extension line with its figures. */
  private void figured(At point, String figures, List<Element> elements) {
    double away = Math.signum(running.line() - point.x());
    At from = point.plus(away * DimensionLayout.OFF_POINT, 0);
    At past = on(point).plus(away * DimensionLayout.PAST_LINE, 0);
    elements.add(new Line(Role.DIMENSION, List.of(from, past)));
    At base = past.plus(away * DimensionLayout.BESIDE, half());
    elements.add(
        new Text(TextStyle.DIMENSION, base, away < 0 ? Anchor.END : Anchor.START, true, figures));
  }

  /** From the middle of figures down to their base line. */
  private static double half() {
    return TextStyle.DIMENSION.sizeMm() * Lowering.CAPITAL / 2;
  }
}
