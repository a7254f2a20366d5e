package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Intervals;
import storyrod.geometry.Intervals.Stretch;

/**
 * A face that looks at the viewer, with its picture.
 *
 * @param owner the number of its item in the scene
 * @param offset the product of the normal and any point of the face, in mm
 * @param corners rings in space, the outer one first
 * @param rings the same rings in the view
 */
record ScreenFace(
    int owner,
    Vector3D normal,
    double offset,
    List<List<Vector3D>> corners,
    List<List<At>> rings,
    Envelope envelope) {
  /** A line no deeper than this below a face lies on it. */
  static final double ON_FACE_MM = 0.01;

  private static final int FEW = 4;
  private static final double FACING = 1e-6;
  private static final double HAIR_MM = 0.004;

  static boolean looksAt(View view, FlatFace face) {
    return face.normal().dot(view.toViewer()) > FACING;
  }

  static ScreenFace of(int owner, FlatFace face, Vector3D by, View view) {
    List<List<Vector3D>> corners =
        Stream.concat(Stream.of(face.outer()), face.openings().stream())
            .map(ring -> ring.stream().map(by::add).toList())
            .toList();
    List<List<At>> rings =
        corners.stream().map(ring -> ring.stream().map(view::project).toList()).toList();
    double offset = face.normal().dot(corners.getFirst().getFirst());
    return new ScreenFace(owner, face.normal(), offset, corners, rings, around(rings.getFirst()));
  }

  private static Envelope around(List<At> ring) {
    Envelope envelope = new Envelope();
    ring.forEach(at -> envelope.expandToInclude(at.x(), at.y()));
    return envelope;
  }

  /** How far a point is in front of the face's plane, in mm; negative behind it. */
  double inFront(Vector3D point) {
    return normal.dot(point) - offset;
  }

  /** Whether any of some points lies behind the face's plane. */
  boolean isBeforeAny(List<Vector3D> points) {
    for (Vector3D point : points) {
      if (inFront(point) < -ON_FACE_MM) {
        return true;
      }
    }
    return false;
  }

  /** Whether any of a line is behind it and inside its picture. */
  boolean hidesAny(ScreenLine line) {
    return !behind(line).and(inside(line.picture())).isEmpty();
  }

  /** The stretch of a line that is behind the face's plane. */
  Intervals behind(ScreenLine line) {
    double start = inFront(line.from()) + ON_FACE_MM;
    double end = inFront(line.to()) + ON_FACE_MM;
    if (start >= 0 && end >= 0) {
      return Intervals.NONE;
    }
    if (start <= 0 && end <= 0) {
      return Intervals.of(0, 1);
    }
    double crossing = start / (start - end);
    return start < 0 ? Intervals.of(0, crossing) : Intervals.of(crossing, 1);
  }

  /** The stretches of a line in the view, as shares of its length, that run inside the picture. */
  Intervals inside(Stroke stroke) {
    double dx = stroke.to().x() - stroke.from().x();
    double dy = stroke.to().y() - stroke.from().y();
    double[] crossings = new double[FEW];
    int count = 0;
    for (List<At> ring : rings) {
      At before = ring.getLast();
      double one = side(stroke.from(), dx, dy, before);
      for (At at : ring) {
        double two = side(stroke.from(), dx, dy, at);
        if (one > 0 != two > 0) {
          double share = one / (one - two);
          double x = before.x() + share * (at.x() - before.x()) - stroke.from().x();
          double y = before.y() + share * (at.y() - before.y()) - stroke.from().y();
          crossings = count < crossings.length ? crossings : Arrays.copyOf(crossings, 2 * count);
          crossings[count++] = (x * dx + y * dy) / (dx * dx + dy * dy);
        }
        before = at;
        one = two;
      }
    }
    return betweenPairs(crossings, count);
  }

  private static double side(At from, double dx, double dy, At at) {
    return dx * (at.y() - from.y()) - dy * (at.x() - from.x());
  }

  private static Intervals betweenPairs(double[] crossings, int count) {
    if (count == 2) {
      double from = Math.min(crossings[0], crossings[1]);
      double to = Math.max(crossings[0], crossings[1]);
      return Intervals.of(Math.max(0, from), Math.min(1, to));
    }
    Arrays.sort(crossings, 0, count);
    List<Stretch> inside = new ArrayList<>();
    for (int i = 0; i + 1 < count; i += 2) {
      double from = Math.max(0, crossings[i]);
      double to = Math.min(1, crossings[i + 1]);
      if (to > from) {
        inside.add(new Stretch(from, to));
      }
    }
    return Intervals.union(inside, 0);
  }

  /**
   * Whether all of some points, which have a picture, are behind the face and inside its picture.
   */
  boolean hides(List<Vector3D> points, List<At> picture) {
    return isAround(picture) && points.stream().allMatch(point -> inFront(point) < -ON_FACE_MM);
  }

  /** Whether the picture is convex, without openings, and holds all of some points of the view. */
  boolean isAround(List<At> points) {
    return rings.size() == 1 && (isAround(points, 1) || isAround(points, -1));
  }

  private boolean isAround(List<At> points, int sign) {
    List<At> ring = rings.getFirst();
    At before = ring.getLast();
    for (At at : ring) {
      if (!isOneSided(ring, before, at, sign) || !isOneSided(points, before, at, sign)) {
        return false;
      }
      before = at;
    }
    return true;
  }

  /** Whether points lie, but for a hair, on one side of the line through two points. */
  static boolean isOneSided(List<At> points, At from, At to, int sign) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double slack = HAIR_MM * (Math.abs(dx) + Math.abs(dy));
    for (At at : points) {
      if (sign * (dx * (at.y() - from.y()) - dy * (at.x() - from.x())) < -slack) {
        return false;
      }
    }
    return true;
  }
}
