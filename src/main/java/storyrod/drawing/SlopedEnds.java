package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.FlatArc;
import storyrod.geometry.Point;
import storyrod.geometry.Segment;
import storyrod.geometry.Segment.Arc;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Slanted.Slope;

/** What slanted ends leave of a part's corners and edges, so that nothing is measured from air. */
record SlopedEnds(FlatPart flat) {
  private static final int HALVINGS = 40;
  private static final double EXACT_MM = 1e-3;

  private List<Slope> ends() {
    return flat.cuts(Slope.class).stream()
        .filter(each -> each.kind() == Slope.Kind.BEVEL || each.kind() == Slope.Kind.MITRE)
        .toList();
  }

  /** Where the face that a view shows ends on a side: at a bevel, before the part's own end. */
  Length edge(Face view, Face side) {
    return ends().stream()
        .filter(each -> each.from() == side && each.towards() == view)
        .map(each -> each.second().on(side.axis()))
        .findFirst()
        .orElse(flat.box().at(side));
  }

  /** Whether a part's outline takes away the long corner that a mitred end would leave. */
  boolean isGone(Slope end) {
    return end.along() == Axis.Y
        && flat.cuts(Cut.Shaped.class).stream()
            .filter(each -> !each.inside())
            .noneMatch(each -> passes(each.contour(), end.first()))
        && flat.cuts(Cut.Shaped.class).stream().anyMatch(each -> !each.inside());
  }

  private static boolean passes(Contour contour, Point corner) {
    return contour.segments().stream()
        .anyMatch(each -> contour.flat(each.from()).distance(contour.flat(corner)) < EXACT_MM);
  }

  /** Whether an end of the part reaches out to the end of its box. */
  boolean reaches(Face end) {
    return ends().stream().noneMatch(each -> each.from() == end && isGone(each));
  }

  /** How far along the part its left end begins at the level where nothing takes it away. */
  Length start() {
    return ends().stream()
        .filter(each -> each.from() == Face.LEFT && isGone(each))
        .map(each -> each.second().x())
        .findFirst()
        .orElse(Length.ZERO);
  }

  /** The level at which a part is as long as its box: not where mitres make it shorter. */
  Face longSide() {
    boolean shortTop =
        ends().stream().anyMatch(each -> each.along() == Axis.Y && each.towards() == Face.TOP);
    return shortTop ? Face.BOTTOM : Face.TOP;
  }

  /** The slanted end that takes away a corner of an outline; nothing if that stays. */
  Optional<Slope> taking(Point corner) {
    return ends().stream()
        .filter(each -> each.along() == Axis.Y && beyond(each, corner.toMm()) > EXACT_MM)
        .findFirst();
  }

  private static double beyond(Slope slope, Vector3D at) {
    Point start = slope.first();
    return at.subtract(start.toMm()).dot(slope.normal());
  }

  /** Where an arc of an outline that would end at a corner meets the slanted end that takes it. */
  Optional<Point> onArc(Contour contour, Point corner, Slope end) {
    for (Segment segment : contour.segments()) {
      boolean ends = segment.from().equals(corner) || segment.to().equals(corner);
      if (segment instanceof Arc arc && ends) {
        return Optional.of(met(contour, arc, end, corner));
      }
    }
    return Optional.empty();
  }

  private static Point met(Contour contour, Arc arc, Slope end, Point corner) {
    FlatArc flat = contour.flat(arc);
    double out = arc.from().equals(corner) ? 0 : 1;
    double in = 0.5;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (in + out) / 2;
      boolean gone = beyond(end, lifted(contour, flat.at(middle), corner).toMm()) > 0;
      in = gone ? in : middle;
      out = gone ? middle : out;
    }
    return lifted(contour, flat.at(in), corner);
  }

  private static Point lifted(Contour contour, Vector2D at, Point near) {
    return near.with(contour.across(), Length.nearest(at.getX()))
        .with(contour.up(), Length.nearest(at.getY()));
  }
}
