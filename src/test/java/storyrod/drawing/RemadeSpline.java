package storyrod.drawing;

import java.util.List;
import java.util.regex.Pattern;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.SplineSlot;

/**
 * The profile of a spline's slot made again: its width and depth from the note, its place on the
 * mitre that the drawing gives. From the slot comes only to which side it is cut.
 *
 * @param first a point of the mitre as it is made again
 * @param second another one
 */
record RemadeSpline(SplineSlot slot, Point first, Point second, Figures figures, String note) {
  private static final Pattern DEEP = Pattern.compile(", (" + Figures.NUMBER + ") deep");
  private static final Pattern WIDE = Pattern.compile("(" + Figures.NUMBER + ") spline slot");

  private double deep() {
    return figures.length(Figures.found(DEEP, note, 1)).mm();
  }

  /** In a frame: a band along the mitre, as deep square to it as the note says. */
  Contour inFrame(double angle) {
    Axis from = slot.from().axis();
    Length back = Length.nearest(-slot.from().sign() * deep() / Math.cos(angle));
    Point one = first.with(Axis.Y, Length.ZERO);
    Point two = second.with(Axis.Y, Length.ZERO);
    return Contour.of(Axis.Y, List.of(one, two, two.moved(from, back), one.moved(from, back)));
  }

  /**
   * In a case: a rectangle on the mitre, whose first corner lies as high in the thickness as it is
   * dimensioned.
   */
  Contour inCase(Length height) {
    Axis from = slot.from().axis();
    double x = mm(first, from);
    double y = mm(first, Axis.Y);
    double run = mm(second, from) - x;
    double rise = mm(second, Axis.Y) - y;
    double length = Math.hypot(run, rise);
    double share = (height.toMm() - y) / rise;
    Point corner = first.with(slot.along(), Length.ZERO).with(Axis.Y, height);
    corner = corner.with(from, Length.nearest(x + share * run));
    double wide = figures.length(Figures.found(WIDE, note, 1)).mm();
    double along =
        Math.signum(mm(slot.onMitre().getLast(), Axis.Y) - mm(slot.onMitre().getFirst(), Axis.Y));
    double ahead = along * Math.signum(rise) * wide / length;
    Point other = moved(corner, ahead * run, ahead * rise);
    double inwards = -slot.from().sign() * Math.signum(rise) * deep() / length;
    return Contour.of(
        slot.along(),
        List.of(
            corner,
            other,
            moved(other, inwards * rise, -inwards * run),
            moved(corner, inwards * rise, -inwards * run)));
  }

  private static double mm(Point point, Axis axis) {
    return point.on(axis).toMm();
  }

  private Point moved(Point point, double along, double up) {
    return point.moved(slot.from().axis(), Length.nearest(along)).moved(Axis.Y, Length.nearest(up));
  }
}
