package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Slanted.Slope;

/**
 * Where the face of a part that looks up ends before its outline does: at the short point of a
 * bevelled or mitred end or edge, whose long point is on the other face.
 */
final class FaceEnds {
  private static final Set<Slope.Kind> THROUGH = Set.of(Slope.Kind.BEVEL, Slope.Kind.MITRE);

  /** Half the width of the strip along such a line in which the face is looked for, in mm. */
  private static final double NEAR_MM = 0.1;

  private FaceEnds() {}

  /** The lines on paper, from the part's top left corner; none where no bevel leans that way. */
  static List<TruePath> of(FlatPart flat) {
    List<Slope> slopes =
        flat.cuts(Slope.class).stream()
            .filter(slope -> THROUGH.contains(slope.kind()) && slope.towards() == Face.FRONT)
            .toList();
    if (slopes.isEmpty()) {
      return List.of();
    }
    Geometry face = new SolidView(flat, Face.FRONT).nearest();
    List<TruePath> lines = new ArrayList<>();
    slopes.forEach(slope -> lines.addAll(lines(flat, slope, face)));
    return lines;
  }

  /** One line for each run of the face along the slope: two where the end is hollowed out. */
  private static List<TruePath> lines(FlatPart flat, Slope slope, Geometry face) {
    boolean upright = slope.from().axis() == Axis.X;
    double at = slope.second().on(slope.from().axis()).toMm();
    Envelope near = face.getEnvelopeInternal();
    near =
        upright
            ? new Envelope(at - NEAR_MM, at + NEAR_MM, near.getMinY(), near.getMaxY())
            : new Envelope(near.getMinX(), near.getMaxX(), at - NEAR_MM, at + NEAR_MM);
    Geometry strip = face.intersection(face.getFactory().toGeometry(near));
    List<TruePath> lines = new ArrayList<>();
    for (Object each : PolygonExtracter.getPolygons(strip)) {
      Envelope run = ((Polygon) each).getEnvelopeInternal();
      double height = flat.size(Axis.Z).toMm();
      lines.add(
          upright
              ? TruePath.line(
                  new At(at, height - run.getMaxY()), new At(at, height - run.getMinY()))
              : TruePath.line(
                  new At(run.getMinX(), height - at), new At(run.getMaxX(), height - at)));
    }
    return lines;
  }
}
