package storyrod.piece;

import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.EdgeShapes.Hollow;

/** Draws the way round a part's outline, side by side with the shapes on it. */
final class OutlineTracer {
  private final EdgeShapes shapes;
  private final Rectangle rectangle;
  private final Pencil pencil = new Pencil();

  private OutlineTracer(EdgeShapes shapes) {
    this.shapes = shapes;
    this.rectangle = shapes.rectangle();
  }

  static Contour trace(EdgeShapes shapes) {
    OutlineTracer tracer = new OutlineTracer(shapes);
    List<Face> sides = tracer.rectangle.sides();
    for (int i = 0; i < sides.size(); i++) {
      tracer.side(sides.get(i), i < 2 ? 1 : -1);
    }
    return new Contour(tracer.rectangle.face().axis(), tracer.pencil.closed());
  }

  /** Draws a side and the corner at its end; the sign says which way it runs. */
  private void side(Face side, int sign) {
    Axis along = rectangle.along(side);
    Point line = rectangle.on(side, shapes.level(side));
    Face end = Face.of(along, sign);
    Point start = line.with(along, shapes.level(end.opposite()));
    pencil.to(start.moved(along, shapes.radius(side, end.opposite()).times(sign)));
    if (shapes.isCrowned(side)) {
      Range crown = shapes.room(along).shared(rectangle.blank().shoulder().on(along));
      arc(line, rectangle.on(side, rectangle.blank().box().at(side)), crown, end);
    }
    List<Hollow> hollows = shapes.hollows(side);
    for (Hollow hollow : sign > 0 ? hollows : hollows.reversed()) {
      Point top = rectangle.on(side, rectangle.inwards(side, hollow.rise()));
      arc(line, top, hollow.range(), end);
    }
    corner(line.with(along, shapes.level(end)), side, end);
  }

  /** Draws an arc that starts and ends on the line of a side, its middle level with a point. */
  private void arc(Point line, Point top, Range range, Face towards) {
    Axis along = towards.axis();
    pencil.to(line.with(along, range.end(-towards.sign())));
    pencil.arc(top.with(along, range.middle()), line.with(along, range.end(towards.sign())));
  }

  private void corner(Point corner, Face side, Face end) {
    Length radius = shapes.radius(side, end);
    if (radius.isPositive()) {
      pencil.rounded(corner, side, end, radius);
    } else {
      pencil.to(corner);
    }
  }
}
