package storyrod.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import storyrod.geometry.Segment.Arc;
import storyrod.geometry.Segment.Line;
import storyrod.measure.Length;

/**
 * A closed path of straight lines and arcs in a plane at right angles to an axis; each segment
 * starts where the one before it ends, the first where the last ends.
 */
public record Contour(Axis normal, List<Segment> segments) {
  /** Two directions no further apart than this run on into each other without a corner. */
  private static final double SMOOTH = StrictMath.cos(StrictMath.toRadians(0.5));

  public Contour {
    segments = List.copyOf(segments);
    for (int i = 0; i < segments.size(); i++) {
      Segment before = segments.get((i + segments.size() - 1) % segments.size());
      if (!before.to().equals(segments.get(i).from())) {
        throw new IllegalArgumentException("bug: a contour that is not closed at " + before.to());
      }
    }
  }

  /**
   * A corner of the path drawn with chords.
   *
   * @param smooth whether the true path runs on here without a corner
   */
  record Vertex(Vector2D at, boolean smooth) {}

  /** The rectangle that a box shows along an axis, in the plane of one of its faces. */
  public static Contour rectangle(Box box, Face face) {
    Point low = box.low();
    Point high = new Point(box.x().to(), box.y().to(), box.z().to());
    Axis normal = face.axis();
    Axis across = normal == Axis.X ? Axis.Y : Axis.X;
    Axis up = Axis.other(normal, across);
    Point first = low.with(normal, box.at(face));
    Point second = first.with(across, high.on(across));
    Point third = second.with(up, high.on(up));
    Point fourth = first.with(up, high.on(up));
    return new Contour(
        normal,
        List.of(
            new Line(first, second),
            new Line(second, third),
            new Line(third, fourth),
            new Line(fourth, first)));
  }

  /** The polygon through some corners of one plane. */
  public static Contour of(Axis normal, List<Point> corners) {
    List<Segment> sides = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      sides.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Contour(normal, sides);
  }

  /** The first axis of its plane. */
  public Axis across() {
    return normal == Axis.X ? Axis.Y : Axis.X;
  }

  /** The second axis of its plane. */
  public Axis up() {
    return Axis.other(normal, across());
  }

  /** A point's place in the plane, in mm. */
  public Vector2D flat(Point point) {
    return Vector2D.of(point.on(across()).toMm(), point.on(up()).toMm());
  }

  /** An arc's place in the plane. */
  public FlatArc flat(Arc arc) {
    return FlatArc.through(flat(arc.from()), flat(arc.through()), flat(arc.to()));
  }

  /** The same path with every point mapped, in a plane at right angles to some axis. */
  public Contour mapped(Axis newNormal, UnaryOperator<Point> map) {
    return new Contour(newNormal, segments.stream().map(each -> each.mapped(map)).toList());
  }

  /** From where to where it runs on an axis of its plane, to the nearest tick. */
  public Range extent(Axis axis) {
    List<Length> places = new ArrayList<>();
    for (Segment segment : segments) {
      places.add(segment.from().on(axis));
      if (segment instanceof Arc arc) {
        flat(arc).extremes().forEach(at -> places.add(Length.nearest(part(at, axis))));
      }
    }
    Length from = places.stream().min(Length::compareTo).orElseThrow();
    Length to = places.stream().max(Length::compareTo).orElseThrow();
    return new Range(from, to);
  }

  private double part(Vector2D at, Axis axis) {
    return axis == across() ? at.getX() : at.getY();
  }

  /** The area inside in mm²: the polygon of its points, and what arcs add to it or take. */
  public double areaMm2() {
    return Math.abs(signedAreaMm2());
  }

  private double signedAreaMm2() {
    double area = 0;
    for (Segment segment : segments) {
      area += flat(segment.from()).signedArea(flat(segment.to())) / 2;
      area += segment instanceof Arc arc ? flat(arc).segmentAreaMm2() : 0;
    }
    return area;
  }

  /** Whether the path runs on from a segment to the next without a corner. */
  public boolean isSmoothAfter(int index) {
    Segment next = segments.get((index + 1) % segments.size());
    return direction(segments.get(index), 1).dot(direction(next, 0)) > SMOOTH;
  }

  /** The unit vector along which a segment runs at its start (0) or its end (1). */
  private Vector2D direction(Segment segment, int end) {
    return switch (segment) {
      case Line line -> flat(line.to()).subtract(flat(line.from())).normalize();
      case Arc arc -> flat(arc).tangent(end);
    };
  }

  /**
   * The path drawn with chords, counter-clockwise.
   *
   * @param sagittaMm how far a chord may be from its arc
   * @param most into how many chords an arc is cut at most
   */
  List<Vertex> drawn(double sagittaMm, int most) {
    List<Vertex> vertices = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      int before = (i + segments.size() - 1) % segments.size();
      vertices.add(new Vertex(flat(segments.get(i).from()), isSmoothAfter(before)));
      if (segments.get(i) instanceof Arc arc) {
        addInner(flat(arc), sagittaMm, most, vertices);
      }
    }
    return signedAreaMm2() < 0 ? vertices.reversed() : vertices;
  }

  private static void addInner(FlatArc arc, double sagittaMm, int most, List<Vertex> vertices) {
    int chords = arc.chords(sagittaMm, most);
    for (int i = 1; i < chords; i++) {
      vertices.add(new Vertex(arc.at((double) i / chords), true));
    }
  }

  /** The points of one segment drawn with chords, both ends included. */
  public List<Vector2D> points(Segment segment, double sagittaMm) {
    List<Vertex> inner = new ArrayList<>();
    if (segment instanceof Arc arc) {
      addInner(flat(arc), sagittaMm, Integer.MAX_VALUE, inner);
    }
    List<Vector2D> points = new ArrayList<>(List.of(flat(segment.from())));
    inner.forEach(each -> points.add(each.at()));
    points.add(flat(segment.to()));
    return points;
  }

  /** The arcs, in order. */
  public List<Arc> arcs() {
    return segments.stream().filter(Arc.class::isInstance).map(Arc.class::cast).toList();
  }

  /** The two axes of its plane. */
  public List<Axis> axes() {
    return Arrays.stream(Axis.values()).filter(axis -> axis != normal).toList();
  }
}
