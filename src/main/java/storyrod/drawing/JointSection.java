package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Point;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * A joint put together and sawn through, to a scale, broken off where the wood goes on (ISO 128-3).
 *
 * @param sawn the rings of the faces that the saw leaves, by part, in mm of the view
 * @param fasteners what the saw goes round
 */
record JointSection(
    JointPlace place, Map<Part, List<List<List<At>>>> sawn, JointFasteners fasteners, Scale scale)
    implements ViewOnPaper {
  private static final double ON_SIDE_MM = 2e-3;

  /** How far the lines of breaks run out beyond what is shown. */
  static final double OVER = 1.5;

  private static final double KINK = 0.7;

  /** Sawn where both parts can be seen in the window, if there is such a place. */
  static JointSection of(JointPlace place, List<Hardware> hardware, Scale scale) {
    JointFasteners fasteners = JointFasteners.of(place, hardware);
    Function<Length, JointSection> sawn =
        at -> new JointSection(place, sawn(place, at), fasteners.at(at), scale);
    List<Length> places =
        Stream.concat(
                fasteners.places().limit(place.row().isPresent() ? 0 : 1),
                place.sectionsAt().stream())
            .toList();
    JointSection first = sawn.apply(places.getFirst());
    return Stream.concat(Stream.of(first), places.stream().skip(1).map(sawn))
        .filter(JointSection::showsBoth)
        .findFirst()
        .orElse(first);
  }

  private boolean showsBoth() {
    return sawn.keySet().stream().allMatch(part -> mark(part).isPresent());
  }

  JointSection to(Scale other) {
    return new JointSection(place, sawn, fasteners, other);
  }

  private static Map<Part, List<List<List<At>>>> sawn(JointPlace place, Length at) {
    Map<Part, List<List<List<At>>>> faces = new LinkedHashMap<>();
    for (JointPart each : place.parts()) {
      faces.put(each.part(), faces(place.sectionFace(), at, each.part().placed()));
    }
    return faces;
  }

  /** The faces that the saw leaves, without the bores that it goes through. */
  private static List<List<List<At>>> faces(Face face, Length sawnAt, Solid solid) {
    Vector3D at = Point.ORIGIN.with(face.axis(), sawnAt).toMm();
    View view = View.at(face);
    List<ExactArea> bores =
        solid.bores().stream()
            .map(bore -> bore.sawn(at, face.normal()))
            .filter(ring -> !ring.isEmpty())
            .map(ring -> ExactArea.of(List.of(ring.stream().map(view::project).toList())))
            .toList();
    return solid.sawn(at, face.normal()).stream()
        .map(each -> rings(each, view))
        .flatMap(each -> bores.isEmpty() ? Stream.of(each) : less(each, bores))
        .toList();
  }

  private static List<List<At>> rings(FlatFace face, View view) {
    return Stream.concat(Stream.of(face.outer()), face.openings().stream())
        .map(ring -> ring.stream().map(view::project).toList())
        .toList();
  }

  private static Stream<List<List<At>>> less(List<List<At>> rings, List<ExactArea> bores) {
    ExactArea left = ExactArea.of(rings);
    for (ExactArea bore : bores) {
      left = left.less(bore);
    }
    return left.apart().stream().map(ExactArea::points);
  }

  @Override
  public Face face() {
    return place.sectionFace();
  }

  @Override
  public At at(Point point) {
    return onPaper(View.at(face()).project(point.toMm()));
  }

  @Override
  public Bounds bounds() {
    Box window = place.window();
    Point high = new Point(window.x().to(), window.y().to(), window.z().to());
    return Bounds.NONE.with(at(window.low())).with(at(high));
  }

  @Override
  public double factor() {
    return scale.factor();
  }

  @Override
  public boolean shows(Point point) {
    return bounds().widened(ON_SIDE_MM).contains(at(point));
  }

  /** The hatched faces with the lines where they are broken off, and what the saw goes round. */
  List<Element> elements() {
    List<Element> elements = new ArrayList<>();
    Bounds window = bounds().widened(ON_SIDE_MM);
    for (Element each : CutFaces.of(rings()).elements()) {
      if (each instanceof Group group) {
        List<Element> inside = new ArrayList<>();
        group.elements().forEach(own -> inside.addAll(Clipping.inside(own, window)));
        elements.add(new Group(group.id(), group.mark(), group.name(), inside));
      }
    }
    for (List<List<List<At>>> faces : rings().values()) {
      faces.forEach(face -> breaks(face, elements));
    }
    elements.addAll(fasteners.elements(factor(), bounds()));
    return elements;
  }

  private Map<Part, List<List<List<At>>>> rings() {
    Map<Part, List<List<List<At>>>> rings = new LinkedHashMap<>();
    sawn.forEach((part, faces) -> rings.put(part, faces.stream().map(this::onPaper).toList()));
    return rings;
  }

  private List<List<At>> onPaper(List<List<At>> face) {
    return face.stream().map(ring -> ring.stream().map(this::onPaper).toList()).toList();
  }

  private At onPaper(At at) {
    return new At(at.x() * factor(), at.y() * factor());
  }

  /** Zigzags along the sides of the window through which a face runs on. */
  private void breaks(List<List<At>> face, List<Element> elements) {
    Bounds bounds = bounds();
    for (List<At> ring : inside(face)) {
      for (int i = 0; i < ring.size(); i++) {
        At from = ring.get(i);
        At to = ring.get((i + 1) % ring.size());
        if (isOnSide(bounds, from, to) && !isEdge(face, from, to)) {
          elements.add(new Line(Role.DIMENSION, zigzag(from, to)));
        }
      }
    }
  }

  private List<List<At>> inside(List<List<At>> face) {
    return Clipping.inside(new Area(Drawing.Tone.WHITE, face), bounds()).stream()
        .flatMap(each -> each instanceof Area area ? area.rings().stream() : Stream.empty())
        .toList();
  }

  private static boolean isOnSide(Bounds bounds, At from, At to) {
    return Math.abs(from.x() - to.x()) < ON_SIDE_MM
            && (isAt(from.x(), bounds.left()) || isAt(from.x(), bounds.right()))
        || Math.abs(from.y() - to.y()) < ON_SIDE_MM
            && (isAt(from.y(), bounds.top()) || isAt(from.y(), bounds.bottom()));
  }

  /** Whether the part itself ends there. */
  private static boolean isEdge(List<List<At>> face, At from, At to) {
    Bounds all = Bounds.NONE;
    for (At at : face.getFirst()) {
      all = all.with(at);
    }
    return Math.abs(from.x() - to.x()) < ON_SIDE_MM
        ? isAt(from.x(), all.left()) || isAt(from.x(), all.right())
        : isAt(from.y(), all.top()) || isAt(from.y(), all.bottom());
  }

  private static boolean isAt(double one, double other) {
    return Math.abs(one - other) < ON_SIDE_MM;
  }

  private static List<At> zigzag(At from, At to) {
    double length = from.distance(to);
    double x = (to.x() - from.x()) / length;
    double y = (to.y() - from.y()) / length;
    double half = length / 2;
    double kink = Math.min(1, half);
    double[][] steps = {
      {-OVER, 0},
      {half - kink, 0},
      {half - 0.4 * kink, -KINK},
      {half + 0.4 * kink, KINK},
      {half + kink, 0},
      {length + OVER, 0}
    };
    List<At> line = new ArrayList<>();
    for (double[] step : steps) {
      line.add(from.plus(step[0] * x - step[1] * y, step[0] * y + step[1] * x));
    }
    return line;
  }

  /** A point inside what is shown of a part's largest face. */
  Optional<JointMark> mark(Part part) {
    return sawn.get(part).stream()
        .map(face -> inside(onPaper(face)))
        .filter(rings -> !rings.isEmpty())
        .map(rings -> new Seen.Region(face().normal(), rings, Outline.area(rings.getFirst())))
        .max(Comparator.comparingDouble(Seen.Region::areaMm2))
        .map(Tips::inside)
        .map(at -> new JointMark(part.mark(), at));
  }
}
