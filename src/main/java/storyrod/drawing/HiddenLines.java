package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.index.strtree.STRtree;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Intervals;
import storyrod.geometry.Intervals.Stretch;

/**
 * Works out exactly, as vectors, what is seen of a scene of solids with flat faces.
 *
 * <ol>
 *   <li>Each face that looks at the viewer is projected. Its edges are the only lines that can be
 *       seen; an edge that two faces share is taken once.
 *   <li>For each edge, an index gives the faces whose pictures are near it. A face hides the stretch
 *       of the edge that is behind the face's plane (linear in the edge's parameter) and inside its
 *       picture (a scan along the edge by the even-odd rule). No order of painting is needed, so
 *       solids that overlap in a circle come out right.
 *   <li>The scan is made twice, a hair to the left of the edge and a hair to the right, and the edge
 *       is hidden where both sides are. So a line along the outline of a face in front of it is
 *       seen, a line behind the seam of two faces is not, and no line breaks where a face merely
 *       touches it.
 *   <li>Mouths of bores are cut from the plane of their face as ellipses, clipped by the face, and
 *       hidden like edges.
 *   <li>Visible stretches that lie on one line in the view are drawn once, for the item that stands
 *       first in the scene; hidden stretches give way to visible ones.
 *   <li>A region of a face is its picture less the pictures of the faces in front of it, each
 *       clipped to where it is in front.
 * </ol>
 *
 * <p>Tolerances are in mm at full size: a line less than 0.01 below a face lies on it, and visible or
 * hidden stretches shorter than 0.05 are dropped.
 */
public final class HiddenLines {
  private static final double HAIR_MM = 0.004;
  private static final double SHORT_MM = 0.05;
  private static final double POINT_MM = 1e-6;

  /** Of short lines, as round a small bore, no more than this share is dropped. */
  private static final double MOST_DROPPED = 0.2;

  private final Scene scene;
  private final View view;
  private final List<ScreenFace> faces = new ArrayList<>();
  private final STRtree index = new STRtree();

  private HiddenLines(Scene scene, View view) {
    this.scene = scene;
    this.view = view;
    for (int i = 0; i < scene.items().size(); i++) {
      addFaces(i, scene.items().get(i));
    }
    index.build();
  }

  /** A scene, ready to be asked what is seen of it. */
  public static HiddenLines of(Scene scene, View view) {
    return new HiddenLines(scene, view);
  }

  private void addFaces(int owner, Scene.Item item) {
    for (FlatFace face : item.solid().faces()) {
      if (ScreenFace.looksAt(view, face)) {
        ScreenFace seen = ScreenFace.of(owner, face, item.offset(), view);
        faces.add(seen);
        index.insert(seen.envelope(), seen);
      }
    }
  }

  /** What is seen of each item, in the order of the scene, with lines and regions. */
  public List<Seen> seen() {
    SharedLines shared = new SharedLines();
    List<List<Stroke>> hidden = new ArrayList<>();
    for (int i = 0; i < scene.items().size(); i++) {
      List<Stroke> behind = new ArrayList<>();
      for (ScreenLine edge : edges(i)) {
        Intervals seen = visibleStretches(edge);
        strokes(edge, seen).forEach(shared::add);
        behind.addAll(strokes(edge, Intervals.of(0, 1).minus(seen)));
      }
      hidden.add(behind);
      shared.endOfItem();
    }
    return gathered(shared.unique(), hidden);
  }

  private List<Seen> gathered(List<List<Stroke>> visible, List<List<Stroke>> hidden) {
    SharedLines drawn = new SharedLines();
    visible.forEach(strokes -> strokes.forEach(drawn::add));
    drawn.endOfItem();
    for (int i = 0; i < hidden.size(); i++) {
      hidden.get(i).forEach(drawn::add);
      backEdges(i).forEach(edge -> drawn.add(edge.picture()));
      drawn.endOfItem();
    }
    List<List<Stroke>> left = drawn.unique();
    Regions regions = new Regions(view, index);
    Mouths mouths = new Mouths(this, view);
    List<Seen> seen = new ArrayList<>();
    for (int i = 0; i < hidden.size(); i++) {
      List<ScreenFace> own = ownFaces(i);
      Scene.Item item = scene.items().get(i);
      seen.add(
          new Seen(item, visible.get(i), left.get(i + 1), mouths.of(item, own), regions.of(own)));
    }
    return seen;
  }

  /** The stretches of a line in space that are seen. */
  public List<Stroke> visible(Vector3D from, Vector3D to) {
    ScreenLine line = ScreenLine.of(from, to, view);
    return strokes(line, visibleStretches(line));
  }

  private List<ScreenFace> ownFaces(int item) {
    return faces.stream().filter(face -> face.owner() == item).toList();
  }

  private static List<Stroke> strokes(ScreenLine line, Intervals stretches) {
    return stretches.stretches().stream()
        .map(stretch -> line.picture().between(stretch.from(), stretch.to()))
        .toList();
  }

  Intervals visibleStretches(ScreenLine line) {
    if (line.length() < POINT_MM) {
      return Intervals.NONE;
    }
    double tooShort = Math.min(SHORT_MM / line.length(), MOST_DROPPED);
    Intervals left = covered(line, HAIR_MM);
    Intervals both = left.isEmpty() ? left : left.and(covered(line, -HAIR_MM));
    Intervals hidden = both.longerThan(tooShort);
    return Intervals.of(0, 1).minus(hidden).longerThan(tooShort);
  }

  private Intervals covered(ScreenLine line, double shift) {
    Stroke beside = line.beside(shift);
    List<Stretch> covered = new ArrayList<>();
    for (Object each : index.query(line.envelope())) {
      ScreenFace face = (ScreenFace) each;
      Intervals behind = face.behind(line);
      if (!behind.isEmpty()) {
        covered.addAll(behind.and(face.inside(beside)).stretches());
      }
    }
    return Intervals.union(covered, HAIR_MM / line.length());
  }

  List<ScreenLine> edges(int item) {
    Map<String, ScreenLine> edges = new LinkedHashMap<>();
    for (ScreenFace face : ownFaces(item)) {
      face.corners().forEach(ring -> addRing(ring, edges));
    }
    return List.copyOf(edges.values());
  }

  /** Edges of the faces that look away: whatever of them is not under a visible line is hidden. */
  private List<ScreenLine> backEdges(int item) {
    Map<String, ScreenLine> edges = new LinkedHashMap<>();
    Scene.Item each = scene.items().get(item);
    for (FlatFace face : each.solid().faces()) {
      if (!ScreenFace.looksAt(view, face)) {
        ScreenFace.of(item, face, each.offset(), view)
            .corners()
            .forEach(ring -> addRing(ring, edges));
      }
    }
    return edges.values().stream().filter(edge -> edge.length() >= SHORT_MM).toList();
  }

  private void addRing(List<Vector3D> ring, Map<String, ScreenLine> edges) {
    for (int i = 0; i < ring.size(); i++) {
      Vector3D from = ring.get(i);
      Vector3D to = ring.get((i + 1) % ring.size());
      edges.computeIfAbsent(key(from, to), key -> ScreenLine.of(from, to, view));
    }
  }

  private static String key(Vector3D one, Vector3D two) {
    String first = key(one);
    String second = key(two);
    return first.compareTo(second) < 0 ? first + second : second + first;
  }

  private static String key(Vector3D point) {
    return Math.round(point.getX() * 1e3)
        + ","
        + Math.round(point.getY() * 1e3)
        + ","
        + Math.round(point.getZ() * 1e3)
        + ";";
  }
}
