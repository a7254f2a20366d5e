package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;

/**
 * A part of a view at a larger scale, broken off where the wood goes on (ISO 128-3).
 *
 * @param whole the whole view at that scale
 * @param window what of it is shown, in the frame of the flat part
 */
record DetailView(PlacedView whole, Box window) implements ViewOnPaper {
  private static final double OVER = 1.5;
  private static final double KINK = 0.9;

  @Override
  public Face face() {
    return whole.face();
  }

  @Override
  public At at(Point point) {
    return whole.at(point);
  }

  @Override
  public double factor() {
    return whole.factor();
  }

  @Override
  public boolean shows(Point point) {
    return bounds().widened(1e-6).contains(at(point));
  }

  @Override
  public Bounds bounds() {
    Point low = new Point(window.x().from(), window.y().from(), window.z().from());
    Point high = new Point(window.x().to(), window.y().to(), window.z().to());
    return Bounds.NONE.with(at(low)).with(at(high));
  }

  List<Element> elements(Shown shown) {
    List<Element> elements = new ArrayList<>();
    whole.elements(shown).forEach(each -> elements.addAll(Clipping.inside(each, bounds())));
    for (Axis axis : DimensionSides.inPlane(face())) {
      for (int sign : new int[] {-1, 1}) {
        if (!window.on(axis).end(sign).equals(whole.flat().box().on(axis).end(sign))) {
          elements.add(new Line(Role.DIMENSION, breakLine(axis, sign)));
        }
      }
    }
    return elements;
  }

  /** A zigzag along the side at one end of an axis. */
  private List<At> breakLine(Axis axis, int sign) {
    Bounds bounds = bounds();
    Point middle = window.middle();
    At on = at(middle.with(axis, window.on(axis).end(sign)));
    boolean runsDown = axis == across();
    double half = (runsDown ? bounds.height() : bounds.width()) / 2 + OVER;
    double[][] steps = {{-half, 0}, {-1, 0}, {-0.4, -KINK}, {0.4, KINK}, {1, 0}, {half, 0}};
    List<At> line = new ArrayList<>();
    for (double[] step : steps) {
      line.add(runsDown ? on.plus(step[1], step[0]) : on.plus(step[0], step[1]));
    }
    return line;
  }
}
