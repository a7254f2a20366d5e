package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.RunningDimension;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Lowering.Head;

/**
 * Where the lines, arrowheads and figures of a dimension go (ISO 129-1). Along the measured
 * direction everything is counted from 0 at {@code from} to {@code span} at {@code to}; where there
 * is no room the arrowheads point inward from outside, and the figures stand beyond {@code to}.
 */
record DimensionLayout(Dimension dimension, double span, double textWidth) {
  static final double OFF_POINT = 1;
  static final double PAST_LINE = 2;
  private static final double TEXT_ABOVE = 1;
  private static final double HEAD = Head.SLIM.length;
  private static final double STUB = HEAD + 2;
  static final double BESIDE = 0.6;

  static DimensionLayout of(Dimension dimension) {
    double span =
        dimension.alongX()
            ? Math.abs(dimension.to().x() - dimension.from().x())
            : Math.abs(dimension.to().y() - dimension.from().y());
    return new DimensionLayout(
        dimension, span, TextSetting.of(TextStyle.DIMENSION, dimension.text()).width());
  }

  boolean headsInside() {
    return span >= 2 * HEAD + 1;
  }

  boolean textInside() {
    return span >= textWidth + 1;
  }

  /** How far the dimension line runs out before {@code from}. */
  double before() {
    return headsInside() ? 0 : STUB;
  }

  /** How far the dimension line runs out beyond {@code to}. */
  double beyond() {
    return textInside() ? before() : textStart() + textWidth;
  }

  private double textStart() {
    return (headsInside() ? 0 : HEAD) + BESIDE;
  }

  /** The dimension line of an element, without extension lines; none if it is no dimension. */
  static Optional<Paper.Stretch> line(Element element) {
    return switch (element) {
      case Dimension dimension -> Optional.of(of(dimension).line());
      case RunningDimension running -> Optional.of(new RunningLayout(running).line());
      default -> Optional.empty();
    };
  }

  /** The line that bears the arrowheads and, where they stand beyond it, the figures. */
  Paper.Stretch line() {
    return new Paper.Stretch(on(-before()), on(span + beyond()));
  }

  List<Element> elements() {
    List<Element> elements = new ArrayList<>();
    extensions()
        .forEach(each -> elements.add(new Line(Role.DIMENSION, List.of(each.from(), each.to()))));
    elements.add(new Line(Role.DIMENSION, List.of(line().from(), line().to())));
    if (headsInside()) {
      elements.add(Lowering.head(on(0), on(span), Head.SLIM));
      elements.add(Lowering.head(on(span), on(0), Head.SLIM));
    } else {
      elements.add(Lowering.head(on(0), on(-STUB), Head.SLIM));
      elements.add(Lowering.head(on(span), on(span + STUB), Head.SLIM));
    }
    elements.add(figures());
    return elements;
  }

  /** The extension lines; a point that lies on the dimension line has none. */
  List<Paper.Stretch> extensions() {
    return Stream.of(dimension.from(), dimension.to())
        .flatMap(point -> extension(point).stream())
        .toList();
  }

  private Optional<Paper.Stretch> extension(At point) {
    double across = dimension.line() - (dimension.alongX() ? point.y() : point.x());
    double sign = Math.signum(across);
    return Math.abs(across) > OFF_POINT
        ? Optional.of(
            new Paper.Stretch(
                moved(point, sign * OFF_POINT), moved(point, across + sign * PAST_LINE)))
        : Optional.empty();
  }

  private At moved(At point, double across) {
    return dimension.alongX() ? point.plus(0, across) : point.plus(across, 0);
  }

  /** The point of the dimension line at a distance from {@code from}. */
  private At on(double distance) {
    return dimension.alongX()
        ? new At(dimension.from().x() + sign() * distance, dimension.line())
        : new At(dimension.line(), dimension.from().y() + sign() * distance);
  }

  private double sign() {
    double way =
        dimension.alongX()
            ? dimension.to().x() - dimension.from().x()
            : dimension.to().y() - dimension.from().y();
    return way < 0 ? -1 : 1;
  }

  Text figures() {
    boolean inside = textInside();
    At foot = on(inside ? span / 2 : span + textStart());
    At base = dimension.alongX() ? foot.plus(0, -TEXT_ABOVE) : foot.plus(-TEXT_ABOVE, 0);
    return new Text(
        TextStyle.DIMENSION, base, anchor(inside), dimension.alongX(), dimension.text());
  }

  /** Upright figures run to the right, the others up the paper, against y. */
  private Anchor anchor(boolean inside) {
    if (inside) {
      return Anchor.MIDDLE;
    }
    boolean runsOn = dimension.alongX() == (sign() > 0);
    return runsOn ? Anchor.START : Anchor.END;
  }
}
