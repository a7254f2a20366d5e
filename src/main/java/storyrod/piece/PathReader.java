package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.PointAt;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Segment;
import storyrod.geometry.Segment.Arc;
import storyrod.geometry.Segment.Line;
import storyrod.geometry.Shapes;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/** Reads a path given point by point, and says what is wrong with it. */
final class PathReader {
  /** An arc that rises less than this is a straight line. */
  private static final double LEAST_RISE_MM = 0.01;

  private final Blank blank;
  private final Face face;
  private final LengthFormat format;
  private final Diagnostics diagnostics;

  PathReader(Blank blank, LengthFormat format, Diagnostics diagnostics) {
    this.blank = blank;
    this.face = face(blank);
    this.format = format;
    this.diagnostics = diagnostics;
  }

  /** The face on which a part is set out. */
  static Face face(Blank blank) {
    return blank.thickness() == Axis.Y ? Face.FRONT : Face.of(blank.thickness(), 1);
  }

  private List<Axis> axes() {
    return List.of(Axis.values()).stream().filter(axis -> axis != face.axis()).toList();
  }

  /** A point of the path, and how the path comes to it. */
  private record Stop(Entry entry, Point at) {}

  Optional<Contour> read(Entry path) {
    List<Stop> stops = new ArrayList<>();
    for (Entry point : path.list("points")) {
      place(point).ifPresent(at -> stops.add(new Stop(point, at)));
    }
    if (stops.size() < path.list("points").size()) {
      return Optional.empty();
    }
    boolean arcs = stops.stream().anyMatch(stop -> isArc(stop.entry));
    if (stops.size() < (arcs ? 2 : 3)) {
      return fail(
          Diagnostic.error("path", path.at("points"), "a path needs at least three points")
              .hint("write its points all round; it closes by itself"));
    }
    return segments(stops).map(all -> new Contour(face.axis(), all)).flatMap(c -> whole(path, c));
  }

  private static boolean isArc(Entry point) {
    return point.has("rise") || point.has("through");
  }

  private Optional<Point> place(Entry entry) {
    if (entry.has(face.axis().word())) {
      return fail(
          Diagnostic.error(
                  "path",
                  entry.at(face.axis().word()),
                  "the path lies in the plane of %s and %s, across the thickness of %s"
                      .formatted(axes().get(0).word(), axes().get(1).word(), blank.name()))
              .hint("take `" + face.axis().word() + "` away"));
    }
    return given(entry, axis -> entry.findLength(axis.word()));
  }

  private Optional<Point> given(Entry entry, Function<Axis, Optional<Length>> places) {
    PointOnFace point = new PointOnFace(blank, face, places);
    Optional<Axis> missing = point.missing();
    return missing.isPresent() ? fail(missing(entry, missing.get())) : Optional.of(point.point());
  }

  private Diagnostic missing(Entry entry, Axis axis) {
    return Diagnostic.error("path", entry.at(), "this point has no place on " + axis.word())
        .hint("give its %s and its %s".formatted(axes().get(0).word(), axes().get(1).word()));
  }

  private Optional<List<Segment>> segments(List<Stop> stops) {
    boolean left = isClockwise(stops);
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < stops.size(); i++) {
      Stop from = stops.get((i + stops.size() - 1) % stops.size());
      Optional<Segment> segment = segment(from.at, stops.get(i), left);
      if (segment.isEmpty()) {
        return Optional.empty();
      }
      segments.add(segment.get());
    }
    return Optional.of(segments);
  }

  private boolean isClockwise(List<Stop> stops) {
    double area = 0;
    for (int i = 0; i < stops.size(); i++) {
      Point at = stops.get(i).at;
      area += flat(at).signedArea(flat(stops.get((i + 1) % stops.size()).at));
    }
    return area < 0;
  }

  private Vector2D flat(Point point) {
    return Vector2D.of(point.on(axes().get(0)).toMm(), point.on(axes().get(1)).toMm());
  }

  private Optional<Segment> segment(Point from, Stop to, boolean clockwise) {
    if (from.equals(to.at)) {
      return fail(
          Diagnostic.error("path", to.entry.at(), "this point is the one before it again")
              .hint("take it away; the path closes by itself"));
    }
    if (to.entry.has("rise") && to.entry.has("through")) {
      return fail(
          Diagnostic.error("arc", to.entry.at("rise"), "an arc has either a rise or a through")
              .hint("take one of them away"));
    }
    if (to.entry.has("rise")) {
      return risen(from, to, clockwise);
    }
    return to.entry.has("through") ? through(from, to) : Optional.of(new Line(from, to.at));
  }

  private Optional<Segment> risen(Point from, Stop to, boolean clockwise) {
    double rise = to.entry.length("rise").toMm();
    Vector2D chord = flat(to.at).subtract(flat(from));
    if (rise == 0) {
      return fail(
          Diagnostic.error("arc", to.entry.at("rise"), "this arc has no height")
              .hint("give its rise, or take `rise` away for a straight line"));
    }
    Vector2D out = Vector2D.of(chord.getY(), -chord.getX()).normalize();
    Vector2D top = flat(from).lerp(flat(to.at), 0.5).add(out.multiply(clockwise ? -rise : rise));
    Point through =
        Point.ORIGIN
            .with(face.axis(), blank.box().at(face))
            .with(axes().get(0), Length.nearest(top.getX()))
            .with(axes().get(1), Length.nearest(top.getY()));
    return Optional.of(new Arc(from, through, to.at));
  }

  private Optional<Segment> through(Point from, Stop to) {
    return given(to.entry, to.entry.expect("through", PointAt.class)::on)
        .flatMap(through -> arc(from, through, to));
  }

  private Optional<Segment> arc(Point from, Point through, Stop to) {
    Vector2D chord = flat(to.at).subtract(flat(from));
    double off = Math.abs(chord.signedArea(flat(through).subtract(flat(from)))) / chord.norm();
    return off < LEAST_RISE_MM
        ? fail(
            Diagnostic.error(
                    "arc",
                    to.entry.at("through"),
                    "this arc has no height: it goes through a point of its own chord")
                .hint("move the point off the line, or take `through` away"))
        : Optional.of(new Arc(from, through, to.at));
  }

  /** The contour, if it neither crosses itself nor leaves the part. */
  Optional<Contour> whole(Entry entry, Contour contour) {
    Optional<Vector2D> crossing = Shapes.crossing(contour);
    if (crossing.isPresent()) {
      return fail(
          Diagnostic.error(
                  "path",
                  entry.at(),
                  "the path crosses itself at " + place(contour, crossing.get()))
              .hint("give its points in the order in which a pencil would draw it"));
    }
    for (Axis axis : contour.axes()) {
      if (!blank.box().on(axis).contains(contour.extent(axis))) {
        return fail(outside(entry, contour, axis));
      }
    }
    return Optional.of(contour);
  }

  private String place(Contour contour, Vector2D at) {
    return "%s = %s, %s = %s"
        .formatted(
            contour.across().word(),
            format.formatWithUnit(Length.nearest(at.getX())),
            contour.up().word(),
            format.formatWithUnit(Length.nearest(at.getY())));
  }

  private Diagnostic outside(Entry entry, Contour contour, Axis axis) {
    Range made = blank.box().on(axis);
    Range path = contour.extent(axis);
    Length before = made.from().minus(path.from());
    Length behind = path.to().minus(made.to());
    Face side = Face.of(axis, behind.isLongerThan(before) ? 1 : -1);
    return Diagnostic.error(
            "path-outside",
            entry.at(),
            "the %s leaves %s by %s at its %s, which is at %s = %s"
                .formatted(
                    entry.kind(),
                    blank.name(),
                    fine(before.max(behind)),
                    side.word(),
                    axis.word(),
                    format.formatWithUnit(made.end(side.sign()))))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("keep it inside the part, arcs too, or make the part larger");
  }

  /** A length as printed; in millimetres where print would show nothing of it. */
  private String fine(Length length) {
    return format.rounded(length).isZero()
        ? Length.micrometres(Math.max(1, length.toMicrometres())).toString()
        : format.formatWithUnit(length);
  }

  private <T> Optional<T> fail(Diagnostic fault) {
    diagnostics.add(fault);
    return Optional.empty();
  }
}
