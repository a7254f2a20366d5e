package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Intervals;

/** Finds where bores meet the faces that look at the viewer, as lines in the view. */
final class Mouths {
  private static final int SIDES = 32;
  private static final double AT_END_MM = 1e-3;
  private static final double ALONG_FACE = 1e-6;
  private static final double JOINED_MM = 1e-6;

  private final HiddenLines lines;
  private final View view;

  /** Cosine and sine of the angles all round, the first again at the end. */
  private static final List<At> TURNS =
      IntStream.rangeClosed(0, SIDES)
          .mapToDouble(i -> 2 * Math.PI * (i % SIDES) / SIDES)
          .mapToObj(angle -> new At(StrictMath.cos(angle), StrictMath.sin(angle)))
          .toList();

  Mouths(HiddenLines lines, View view) {
    this.lines = lines;
    this.view = view;
  }

  List<List<At>> of(Scene.Item item, List<ScreenFace> faces) {
    return of(item.solid().bores(), item.offset(), faces);
  }

  /** Those of some bores in the faces of an item that is drawn away from its place. */
  List<List<At>> of(List<Cylinder> bores, Vector3D offset, List<ScreenFace> faces) {
    List<List<At>> mouths = new ArrayList<>();
    for (Cylinder bore : bores) {
      for (ScreenFace face : faces) {
        List<Vector3D> ellipse = ellipse(bore, offset, face);
        if (!ellipse.isEmpty()) {
          mouths.addAll(chained(seen(ellipse, face)));
        }
      }
    }
    return mouths;
  }

  /**
   * The points where lines of the bore's wall meet the face's plane, as far as the bore reaches.
   */
  private static List<Vector3D> ellipse(Cylinder bore, Vector3D by, ScreenFace face) {
    double slope = face.normal().dot(bore.direction());
    Vector3D mouth = bore.mouth().add(by);
    double along = -face.inFront(mouth) / slope;
    boolean reaches = along > -AT_END_MM && along < bore.depthMm() + AT_END_MM;
    if (Math.abs(slope) < ALONG_FACE || !reaches) {
      return List.of();
    }
    Vector3D one = bore.direction().orthogonal();
    Vector3D two = bore.direction().cross(one);
    List<Vector3D> points = new ArrayList<>();
    for (At turn : TURNS) {
      Vector3D out = one.multiply(turn.x()).add(two.multiply(turn.y()));
      Vector3D wall = mouth.add(out.multiply(bore.radiusMm()));
      points.add(wall.add(bore.direction().multiply(-face.inFront(wall) / slope)));
    }
    return points;
  }

  private List<Stroke> seen(List<Vector3D> ellipse, ScreenFace face) {
    List<At> picture = ellipse.stream().map(view::project).toList();
    List<ScreenFace> before = lines.inFrontOf(ellipse);
    if (before.stream().anyMatch(each -> each.hides(ellipse, picture))) {
      return List.of();
    }
    boolean whole = before.isEmpty() && face.isAround(picture);
    List<Stroke> seen = new ArrayList<>();
    for (int i = 0; i + 1 < ellipse.size(); i++) {
      if (whole) {
        seen.add(new Stroke(picture.get(i), picture.get(i + 1)));
      } else {
        seen.addAll(seen(ScreenLine.of(ellipse.get(i), ellipse.get(i + 1), view), face, before));
      }
    }
    return seen;
  }

  private List<Stroke> seen(ScreenLine side, ScreenFace face, List<ScreenFace> before) {
    Intervals inFace = face.inside(side.picture());
    return inFace.isEmpty()
        ? List.of()
        : inFace.and(lines.visibleStretches(side, before)).stretches().stream()
            .map(stretch -> side.picture().between(stretch.from(), stretch.to()))
            .toList();
  }

  private static List<List<At>> chained(List<Stroke> strokes) {
    List<List<At>> chains = new ArrayList<>();
    for (Stroke stroke : strokes) {
      boolean follows =
          !chains.isEmpty() && chains.getLast().getLast().distance(stroke.from()) < JOINED_MM;
      if (!follows) {
        chains.add(new ArrayList<>(List.of(stroke.from())));
      }
      chains.getLast().add(stroke.to());
    }
    return chains;
  }
}
