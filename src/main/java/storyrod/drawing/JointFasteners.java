package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/**
 * What holds a joint and lies in the plane of its section: screws, dowels, brads. The saw goes
 * round it: it is drawn whole, neither cut nor hatched (ISO 128-50, from memory).
 */
record JointFasteners(Face face, List<Hardware> lying) {
  private static final double ON_PLANE_MM = 1;
  private static final double SQUARE = 1e-6;

  JointFasteners {
    lying = List.copyOf(lying);
  }

  /** Those of a joint that lie across the line of sight, wherever the saw goes. */
  static JointFasteners of(JointPlace place, List<Hardware> all) {
    Face face = place.sectionFace();
    return new JointFasteners(
        face,
        all.stream()
            .filter(
                each -> each.placed().origin().joint().filter(place.joint()::equals).isPresent())
            .filter(each -> Math.abs(each.placed().out().dot(face.normal())) < SQUARE)
            .toList());
  }

  /** Where the saw has to go to meet them. */
  Stream<Length> places() {
    Vector3D along = Point.ORIGIN.with(face.axis(), Length.mm(1)).toMm();
    return lying.stream().map(each -> Length.nearest(each.placed().at().dot(along)));
  }

  /** Those that the saw meets along their middle line. */
  JointFasteners at(Length sawn) {
    Vector3D plane = Point.ORIGIN.with(face.axis(), sawn).toMm();
    return new JointFasteners(
        face,
        lying.stream()
            .filter(
                each ->
                    Math.abs(each.placed().at().subtract(plane).dot(face.normal())) < ON_PLANE_MM)
            .toList());
  }

  /** What is inside a window of the paper, white before the hatching, to a scale. */
  List<Element> elements(double factor, Bounds window) {
    List<Element> elements = new ArrayList<>();
    for (Hardware each : lying) {
      List<Element> inside = new ArrayList<>();
      for (List<At> outline : outlines(each, factor)) {
        inside.addAll(Clipping.inside(new Area(Tone.WHITE, List.of(outline)), window));
        inside.addAll(Clipping.inside(new Line(Role.VISIBLE, outline), window));
      }
      elements.add(new Group(each.id(), each.mark(), each.title(), inside));
    }
    return elements;
  }

  private List<List<At>> outlines(Hardware hardware, double factor) {
    View view = View.at(face);
    At at = view.project(hardware.placed().at());
    List<List<At>> outlines = new ArrayList<>();
    for (Object each :
        PolygonExtracter.getPolygons(SolidView.silhouette(hardware.placed().solid(), view))) {
      outlines.add(
          Arrays.stream(((Polygon) each).getExteriorRing().getCoordinates())
              .map(corner -> scaled(corner, at, factor))
              .toList());
    }
    return outlines;
  }

  private static At scaled(Coordinate corner, At at, double factor) {
    return new At(factor * (at.x() + corner.x), factor * (at.y() + corner.y));
  }
}
