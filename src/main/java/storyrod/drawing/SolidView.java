package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.FlatFace;
import storyrod.piece.Carving;

/**
 * What is seen of a part with slanted cuts from one of its faces: the edges of its solid, each cut
 * where it crosses another, are seen where no face lies before their middle.
 */
final class SolidView {
  private static final double NEAR = 1e-4;
  private static final double FACING = 1e-9;

  private final Axis across;
  private final Axis up;
  private final Vector3D towards;
  private final List<FlatFace> faces;
  private final List<FlatFace> facing;

  /** A point of the view: its coordinates across and up, in mm of the part. */
  record Spot(double across, double up) {
    double distance(Spot other) {
      return Math.hypot(across - other.across, up - other.up);
    }

    Spot lerp(Spot other, double share) {
      return new Spot(across + (other.across - across) * share, up + (other.up - up) * share);
    }
  }

  /** A straight edge of one role. */
  record Stroke(Role role, Spot from, Spot to) {}

  /** An area of one tone, with openings. */
  record Patch(Tone tone, List<List<Spot>> rings) {}

  private record Segment(Vector3D from, Vector3D to) {}

  SolidView(FlatPart flat, Face seenFrom) {
    this.across = seenFrom.axis() == Axis.X ? Axis.Y : Axis.X;
    this.up = Axis.other(seenFrom.axis(), across);
    this.towards = seenFrom.normal();
    this.faces = Carving.of(flat.box(), flat.cuts(), Fineness.DRAWN).faces();
    this.facing = faces.stream().filter(face -> face.normal().dot(towards) > FACING).toList();
  }

  /** The faces that look this way, the farthest first. */
  List<Patch> patches() {
    double nearest = facing.stream().mapToDouble(this::nearness).max().orElse(0);
    return facing.stream()
        .sorted(Comparator.comparingDouble(this::nearness))
        .map(face -> new Patch(tone(face, nearest), rings(face)))
        .toList();
  }

  private double nearness(FlatFace face) {
    return face.outer().stream().mapToDouble(point -> point.dot(towards)).max().orElse(0);
  }

  private Tone tone(FlatFace face, double nearest) {
    boolean flat = face.normal().dot(towards) > 1 - FACING;
    return flat && nearness(face) > nearest - NEAR ? Tone.FRONT : Tone.SIDE;
  }

  private List<List<Spot>> rings(FlatFace face) {
    List<List<Spot>> rings = new ArrayList<>();
    rings.add(face.outer().stream().map(this::spot).toList());
    face.openings().forEach(ring -> rings.add(ring.stream().map(this::spot).toList()));
    return rings;
  }

  /** Its edges; where a seen and a hidden one fall together, the seen one alone. */
  List<Stroke> strokes() {
    List<Segment> segments = segments();
    List<Stroke> seen = new ArrayList<>();
    List<Stroke> hidden = new ArrayList<>();
    for (Segment segment : segments) {
      double from = 0;
      for (double to : crossings(segment, segments)) {
        Vector3D middle = segment.from.lerp(segment.to, (from + to) / 2);
        Spot start = spot(segment.from).lerp(spot(segment.to), from);
        Spot end = spot(segment.from).lerp(spot(segment.to), to);
        boolean isHidden = isCovered(middle);
        add(
            new Stroke(isHidden ? Role.HIDDEN : Role.VISIBLE, start, end),
            isHidden ? hidden : seen);
        from = to;
      }
    }
    List<Stroke> all = new ArrayList<>(seen);
    hidden.stream().filter(each -> seen.stream().noneMatch(s -> covers(s, each))).forEach(all::add);
    return all;
  }

  private static void add(Stroke stroke, List<Stroke> to) {
    if (stroke.from.distance(stroke.to) > NEAR && to.stream().noneMatch(s -> covers(s, stroke))) {
      to.removeIf(shorter -> covers(stroke, shorter));
      to.add(stroke);
    }
  }

  private List<Segment> segments() {
    List<Segment> segments = new ArrayList<>();
    for (FlatFace face : faces) {
      addRing(face.outer(), segments);
      face.openings().forEach(ring -> addRing(ring, segments));
    }
    return segments;
  }

  private void addRing(List<Vector3D> ring, List<Segment> segments) {
    for (int i = 0; i < ring.size(); i++) {
      Segment next = new Segment(ring.get(i), ring.get((i + 1) % ring.size()));
      boolean isPoint = spot(next.from).distance(spot(next.to)) < NEAR;
      if (!isPoint) {
        segments.add(next);
      }
    }
  }

  /** Where along a segment, as shares of it, others cross it; its end last. */
  private TreeSet<Double> crossings(Segment segment, List<Segment> others) {
    TreeSet<Double> at = new TreeSet<>(List.of(1.0));
    Spot a = spot(segment.from);
    Spot b = spot(segment.to);
    for (Segment other : others) {
      Spot c = spot(other.from);
      Spot d = spot(other.to);
      double turn = cross(a, b, c, d);
      if (Math.abs(turn) < NEAR * NEAR) {
        for (Spot end : List.of(c, d)) {
          addInside(shareOf(a, b, end), at);
        }
      } else {
        double share = cross(a, c, c, d) / turn;
        double there = cross(a, c, a, b) / turn;
        if (there > -NEAR && there < 1 + NEAR) {
          addInside(share, at);
        }
      }
    }
    return at;
  }

  private static void addInside(double share, TreeSet<Double> at) {
    if (share > NEAR && share < 1 - NEAR) {
      at.add(share);
    }
  }

  private static double cross(Spot a, Spot b, Spot c, Spot d) {
    return (b.across - a.across) * (d.up - c.up) - (b.up - a.up) * (d.across - c.across);
  }

  private static double shareOf(Spot a, Spot b, Spot point) {
    double along =
        (point.across - a.across) * (b.across - a.across) + (point.up - a.up) * (b.up - a.up);
    double length = a.distance(b);
    return a.lerp(b, along / (length * length)).distance(point) < NEAR
        ? along / (length * length)
        : -1;
  }

  /** Whether a stroke lies wholly on another one. */
  private static boolean covers(Stroke whole, Stroke part) {
    for (Spot end : List.of(part.from, part.to)) {
      double share = shareOf(whole.from, whole.to, end);
      if (share < -NEAR || share > 1 + NEAR || isOff(whole, end)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOff(Stroke whole, Spot end) {
    double away = cross(whole.from, whole.to, whole.from, end);
    return Math.abs(away) > NEAR * whole.from.distance(whole.to) * 10;
  }

  /** Whether a face that looks this way lies before a point. */
  private boolean isCovered(Vector3D point) {
    return facing.stream().anyMatch(face -> isBefore(face, point));
  }

  private boolean isBefore(FlatFace face, Vector3D point) {
    double steep = face.normal().dot(towards);
    double before = (face.offsetMm() - face.normal().dot(point)) / steep;
    return before > 10 * NEAR && isInside(face, spot(point));
  }

  private boolean isInside(FlatFace face, Spot spot) {
    return contains(face.outer(), spot)
        && face.openings().stream().noneMatch(ring -> contains(ring, spot));
  }

  private boolean contains(List<Vector3D> ring, Spot spot) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      Spot a = spot(ring.get(i));
      Spot b = spot(ring.get((i + 1) % ring.size()));
      if (shareOnEdge(a, b, spot)) {
        return false;
      }
      boolean straddles = a.up > spot.up != b.up > spot.up;
      double at = a.across + (spot.up - a.up) / (b.up - a.up) * (b.across - a.across);
      inside ^= straddles && spot.across < at;
    }
    return inside;
  }

  private static boolean shareOnEdge(Spot a, Spot b, Spot spot) {
    if (a.distance(b) < NEAR) {
      return false;
    }
    double share = shareOf(a, b, spot);
    return share >= 0 && share <= 1;
  }

  private Spot spot(Vector3D point) {
    return new Spot(on(point, across), on(point, up));
  }

  private static double on(Vector3D point, Axis axis) {
    return switch (axis) {
      case X -> point.getX();
      case Y -> point.getY();
      case Z -> point.getZ();
    };
  }
}
