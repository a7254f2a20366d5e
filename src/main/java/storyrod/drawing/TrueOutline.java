package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.TruePath.Round;
import storyrod.drawing.TruePath.Straight;
import storyrod.drawing.TruePath.Stretch;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.FlatArc;
import storyrod.geometry.Point;
import storyrod.geometry.Segment;
import storyrod.piece.Cut;
import storyrod.piece.Slots;

/**
 * The outline of a part's face with its openings, at full size. It comes from the solid, so tapers
 * and notches are in it; runs of its chords that lie on an arc of the part are that arc again.
 */
final class TrueOutline {
  private static final Fineness FINE = new Fineness(0.002, 4000);
  private static final double ON_ARC_MM = 0.004;

  private final FlatPart flat;
  private final List<FlatArc> arcs = new ArrayList<>();

  private TrueOutline(FlatPart flat) {
    this.flat = flat;
    flat.cuts(Cut.Shaped.class)
        .forEach(
            shaped ->
                shaped
                    .contour()
                    .arcs()
                    .forEach((Segment.Arc arc) -> arcs.add(shaped.contour().flat(arc))));
    flat.cuts(Slots.class).stream()
        .filter(slots -> slots.form() == Slots.Form.ROUND_ENDS)
        .forEach(this::addEnds);
  }

  private void addEnds(Slots slots) {
    double radius = slots.width().toMm() / 2;
    double reach = slots.length().toMm() / 2 - radius;
    for (Point centre : slots.centres()) {
      for (int sign : new int[] {-1, 1}) {
        double x = centre.x().toMm() + (slots.along() == Axis.X ? sign * reach : 0);
        double z = centre.z().toMm() + (slots.along() == Axis.Z ? sign * reach : 0);
        arcs.add(new FlatArc(Vector2D.of(x, z), radius, 0, 2 * Math.PI));
      }
    }
  }

  /** The closed lines, the outer ones first; the part's top left corner is the origin. */
  static List<TruePath> of(FlatPart flat) {
    return new TrueOutline(flat).paths();
  }

  private List<TruePath> paths() {
    Geometry whole = SolidView.silhouette(flat, Face.FRONT, FINE);
    List<TruePath> paths = new ArrayList<>();
    for (Object each : PolygonExtracter.getPolygons(whole)) {
      Polygon polygon = (Polygon) each;
      paths.add(path(polygon.getExteriorRing()));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        paths.add(path(polygon.getInteriorRingN(i)));
      }
    }
    return paths;
  }

  private TruePath path(LinearRing ring) {
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      corners.add(Vector2D.of(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y));
    }
    List<Optional<FlatArc>> on = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      on.add(arc(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new TruePath(stretches(corners, on), true);
  }

  /** The arc on which a chord lies. */
  private Optional<FlatArc> arc(Vector2D from, Vector2D to) {
    Vector2D middle = from.add(to).multiply(0.5);
    return arcs.stream()
        .filter(arc -> isOn(arc, from) && isOn(arc, to) && isOn(arc, middle))
        .findFirst();
  }

  private static boolean isOn(FlatArc arc, Vector2D at) {
    return Math.abs(at.distance(arc.centre()) - arc.radius()) < ON_ARC_MM;
  }

  private List<Stretch> stretches(List<Vector2D> corners, List<Optional<FlatArc>> on) {
    int count = corners.size();
    int first = 0;
    while (first < count
        && on.get(first).equals(on.get((first + count - 1) % count))
        && on.get(first).isPresent()) {
      first++;
    }
    boolean circle = first == count;
    List<Stretch> stretches = new ArrayList<>();
    int done = 0;
    while (done < count) {
      int start = (first + done) % count;
      int run = 1;
      while (on.get(start).isPresent()
          && done + run < count
          && on.get((start + run) % count).equals(on.get(start))
          && (!circle || run < count / 2)) {
        run++;
      }
      stretches.add(stretch(corners, on.get(start), start, run));
      done += run;
    }
    return stretches;
  }

  private Stretch stretch(List<Vector2D> corners, Optional<FlatArc> on, int start, int run) {
    At from = at(corners.get(start));
    At to = at(corners.get((start + run) % corners.size()));
    if (on.isEmpty()) {
      return new Straight(from, to);
    }
    At centre = at(on.get().centre());
    At next = at(corners.get((start + 1) % corners.size()));
    double turn =
        (from.x() - centre.x()) * (next.y() - centre.y())
            - (from.y() - centre.y()) * (next.x() - centre.x());
    return new Round(from, to, centre, on.get().radius(), turn > 0);
  }

  private At at(Vector2D at) {
    return new At(at.getX(), flat.size(Axis.Z).toMm() - at.getY());
  }
}
