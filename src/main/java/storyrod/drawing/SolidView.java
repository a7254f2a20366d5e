package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Lazy;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Carving;
import storyrod.piece.Slanted.Slope;

/**
 * What is seen of a part with curves or slants from one of its faces, in mm on the two axes of the
 * view. Its arcs are chords too fine to be told from the true curve.
 */
final class SolidView implements Shown {
  private static final PrecisionModel GRID = new PrecisionModel(1e4);
  private static final GeometryFactory FACTORY = new GeometryFactory(GRID);
  private static final double NEAREST_MM = 0.01;
  private static final double SAME_WAY = 1e-6;

  private final Lazy<Inked> inked;
  private final Lazy<Geometry> whole;
  private final Lazy<Geometry> nearest;
  private final Lazy<Geometry> surface;
  private final Map<Strip, Geometry> strips = new ConcurrentHashMap<>();

  /** A stretch of one of the areas. */
  private record Strip(Tone tone, Range range) {}

  /** Its lines as chains. */
  private record Inked(List<List<At>> visible, List<List<At>> hidden) {}

  SolidView(FlatPart flat, Face face) {
    this(flat, solid(flat), face);
  }

  /**
   * @param solid the flat part's, worked out once for all its views
   */
  SolidView(FlatPart flat, Solid solid, Face face) {
    View view = view(face);
    double deep = reach(solid, view) - NEAREST_MM;
    List<Slope> tapers = tapers(flat, face);
    Predicate<FlatFace> isNearest = each -> depth(each, view) > deep;
    Predicate<FlatFace> isTaper = each -> tapers.stream().anyMatch(taper -> isOn(each, taper));
    this.inked = new Lazy<>(() -> inked(flat, solid, view));
    this.whole = new Lazy<>(() -> united(solid, view, SolidView::down, each -> true));
    this.nearest = new Lazy<>(() -> united(solid, view, SolidView::down, isNearest));
    this.surface = new Lazy<>(() -> united(solid, view, SolidView::down, isNearest.or(isTaper)));
  }

  private static At down(At at) {
    return new At(at.x(), -at.y());
  }

  private static Inked inked(FlatPart flat, Solid solid, View view) {
    Scene.Item item = new Scene.Item(flat.part().name(), solid, Vector3D.ZERO);
    Seen.Lines lines =
        HiddenLines.of(new Scene(List.of(item)), view)
            .seenAndHidden(each -> false)
            .getFirst()
            .lines();
    return new Inked(chains(lines.visible()), chains(lines.hidden()));
  }

  static Solid solid(FlatPart flat) {
    return Carving.of(flat.box(), flat.cuts(), Fineness.DRAWN);
  }

  /** The tapers planed or sawn on a face: they belong to it, though they lie deeper. */
  private static List<Slope> tapers(FlatPart flat, Face face) {
    return flat.cuts(Slope.class).stream()
        .filter(slope -> slope.kind() == Slope.Kind.TAPER && slope.from() == face)
        .toList();
  }

  private static boolean isOn(FlatFace face, Slope slope) {
    double apart = slope.first().toMm().dot(slope.normal()) - face.offsetMm();
    return face.normal().dot(slope.normal()) > 1 - SAME_WAY && Math.abs(apart) < NEAREST_MM;
  }

  /** All that is covered of a part as it is seen from a face, in mm, its arcs as fine chords. */
  static Geometry silhouette(FlatPart flat, Face face, Fineness fineness) {
    Solid solid = Carving.of(flat.box(), flat.cuts(), fineness);
    return united(solid, view(face), SolidView::down, each -> true);
  }

  /** All that a solid covers of a view, in mm. */
  static Geometry silhouette(Solid solid, View view) {
    return united(solid, view, at -> at, each -> true);
  }

  /** All that is seen of the part, in mm, y upwards. */
  Geometry whole() {
    return whole.get();
  }

  /** What lies nearest to the eye: the face without what is cut into it. */
  Geometry nearest() {
    return nearest.get();
  }

  /** The face with its tapers, without what is cut into it. */
  Geometry surface() {
    return surface.get();
  }

  /** An area without that of some faces. */
  static Geometry without(Geometry area, List<FlatFace> faces, Function<Vector3D, At> place) {
    List<Geometry> taken = new ArrayList<>();
    faces.forEach(face -> taken.add(polygon(face, place)));
    return taken.isEmpty()
        ? area
        : OverlayNG.overlay(area, UnaryUnionNG.union(taken, GRID), OverlayNG.DIFFERENCE, GRID);
  }

  /** The polygons of an area between two x, each as rings of points without the last. */
  static List<List<List<At>>> rings(Geometry area, double from, double to) {
    List<List<List<At>>> all = new ArrayList<>();
    for (Object each : PolygonExtracter.getPolygons(between(area, from, to))) {
      Polygon polygon = (Polygon) each;
      if (!polygon.isEmpty()) {
        all.add(rings(polygon, at -> at));
      }
    }
    return all;
  }

  /** A view with axes along those of the flat part; for some faces it is a mirror image. */
  private static View view(Face face) {
    Vector3D out = Extent.direction(face);
    Vector3D right = Extent.direction(face.axis() == Axis.X ? Face.BACK : Face.RIGHT);
    Vector3D up = Extent.direction(face.axis() == Axis.Z ? Face.BACK : Face.TOP);
    return new View(right, up, out);
  }

  private static List<Stroke> mapped(List<Stroke> strokes, Function<At, At> place) {
    return strokes.stream()
        .map(each -> new Stroke(place.apply(each.from()), place.apply(each.to())))
        .toList();
  }

  private static double reach(Solid solid, View view) {
    return solid.faces().stream().mapToDouble(face -> depth(face, view)).max().orElse(0);
  }

  private static double depth(FlatFace face, View view) {
    return face.outer().stream().mapToDouble(at -> at.dot(view.toViewer())).min().orElse(0);
  }

  private static Geometry united(
      Solid solid, View view, Function<At, At> place, Predicate<FlatFace> wanted) {
    List<Geometry> pictures = new ArrayList<>();
    for (FlatFace face : solid.faces()) {
      if (ScreenFace.looksAt(view, face) && wanted.test(face)) {
        pictures.add(polygon(face, corner -> place.apply(view.project(corner))));
      }
    }
    return UnaryUnionNG.union(pictures, GRID);
  }

  private static Polygon polygon(FlatFace face, Function<Vector3D, At> place) {
    LinearRing[] openings =
        face.openings().stream().map(ring -> ring(ring, place)).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(ring(face.outer(), place), openings);
  }

  private static LinearRing ring(List<Vector3D> ring, Function<Vector3D, At> place) {
    return FACTORY.createLinearRing(
        Stream.concat(ring.stream(), Stream.of(ring.getFirst()))
            .map(place)
            .map(at -> new Coordinate(GRID.makePrecise(at.x()), GRID.makePrecise(at.y())))
            .toArray(Coordinate[]::new));
  }

  /** Its areas and lines on paper, without what the ruler leaves out. */
  void addTo(PlacedView view, List<Element> elements) {
    addAreas(view, Tone.SIDE, whole(), elements);
    addAreas(view, Tone.FRONT, nearest(), elements);
    inked.get().hidden().forEach(chain -> addLine(view, Role.HIDDEN, chain, elements));
    inked.get().visible().forEach(chain -> addLine(view, Role.VISIBLE, chain, elements));
  }

  private static List<List<At>> chains(List<Stroke> strokes) {
    return Chains.of(mapped(strokes, SolidView::down));
  }

  private void addAreas(PlacedView view, Tone tone, Geometry area, List<Element> elements) {
    for (Range shown : shown(view)) {
      Geometry part =
          view.ruler().breaks().isEmpty()
              ? area
              : strips.computeIfAbsent(new Strip(tone, shown), each -> between(area, shown));
      for (Object each : PolygonExtracter.getPolygons(part)) {
        elements.add(new Area(tone, rings((Polygon) each, at -> paper(at, view))));
      }
    }
  }

  private static List<Range> shown(PlacedView view) {
    Range all = view.flat().box().on(view.across());
    return view.across() == Axis.X ? view.ruler().shown(all) : List.of(all);
  }

  private static Geometry between(Geometry area, Range range) {
    return between(area, range.from().toMm(), range.to().toMm());
  }

  private static Geometry between(Geometry area, double from, double to) {
    Envelope strip = new Envelope(area.getEnvelopeInternal());
    Envelope cut = new Envelope(from, to, strip.getMinY(), strip.getMaxY());
    return OverlayNG.overlay(area, FACTORY.toGeometry(cut), OverlayNG.INTERSECTION, GRID);
  }

  private static List<List<At>> rings(Polygon polygon, Function<At, At> place) {
    List<List<At>> rings = new ArrayList<>();
    rings.add(points(polygon.getExteriorRing(), place));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(points(polygon.getInteriorRingN(i), place));
    }
    return rings;
  }

  private static List<At> points(LinearRing ring, Function<At, At> place) {
    List<At> points = new ArrayList<>();
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      points.add(place.apply(new At(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y)));
    }
    return points;
  }

  private static At paper(At at, PlacedView view) {
    return view.at(Length.nearest(at.x()), Length.nearest(at.y()));
  }

  private static void addLine(PlacedView view, Role role, List<At> chain, List<Element> elements) {
    if (view.across() != Axis.X || view.ruler().breaks().isEmpty()) {
      elements.add(new Line(role, chain.stream().map(at -> paper(at, view)).toList()));
      return;
    }
    for (int i = 0; i + 1 < chain.size(); i++) {
      for (Stroke stroke : shown(new Stroke(chain.get(i), chain.get(i + 1)), view)) {
        elements.add(new Line(role, List.of(paper(stroke.from(), view), paper(stroke.to(), view))));
      }
    }
  }

  /** The stretches of a stroke that the ruler does not leave out. */
  private static List<Stroke> shown(Stroke stroke, PlacedView view) {
    double from = Math.min(stroke.from().x(), stroke.to().x());
    double to = Math.max(stroke.from().x(), stroke.to().x());
    if (to - from < NEAREST_MM) {
      return view.ruler().shows(Length.nearest(from)) ? List.of(stroke) : List.of();
    }
    Range range = new Range(Length.nearest(from), Length.nearest(to));
    boolean forwards = stroke.from().x() < stroke.to().x();
    return view.ruler().shown(range).stream()
        .sorted(Comparator.comparing(Range::from))
        .map(each -> between(stroke, each, forwards))
        .toList();
  }

  private static Stroke between(Stroke stroke, Range range, boolean forwards) {
    double run = stroke.to().x() - stroke.from().x();
    double one = (range.from().toMm() - stroke.from().x()) / run;
    double two = (range.to().toMm() - stroke.from().x()) / run;
    return forwards ? stroke.between(one, two) : stroke.between(two, one);
  }
}
