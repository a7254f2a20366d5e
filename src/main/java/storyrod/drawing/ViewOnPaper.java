package storyrod.drawing;

import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;

/** A view in its place on the paper, beside which dimensions and notes find theirs. */
interface ViewOnPaper {
  /** The face that it shows. */
  Face face();

  At at(Point point);

  /** The outline's rectangle on the paper. */
  Bounds bounds();

  /** Millimetres on paper for a millimetre of what is shown. */
  double factor();

  /** Whether a point is not left out by a break. */
  boolean shows(Point point);

  /** A point, or what a break leaves out just beside the break: what runs through it is alike. */
  default Stream<Point> besideBreak(Point point) {
    return Stream.of(point).filter(this::shows);
  }

  /** The axis that runs across the paper. */
  default Axis across() {
    return face().axis() == Axis.X ? Axis.Y : Axis.X;
  }

  /** The axis that runs up or down the paper. */
  default Axis upright() {
    Axis across = face().axis() == Axis.X ? Axis.Y : Axis.X;
    return Axis.other(face().axis(), across);
  }
}
