package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Edges.Edge;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Cylinder;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Intervals;
import storyrod.geometry.Intervals.Stretch;
import storyrod.geometry.Lazy;

/**
 * Works out exactly, as vectors, what is seen of a scene of solids with flat faces.
 *
 * <ol>
 *   <li>Each face that looks at the viewer is projected. Its edges are the only lines that can be
 *       seen; an edge that two faces share is taken once.
 *   <li>For each edge, an index gives the faces whose pictures are near it. A face hides the
 *       stretch of the edge that is behind the face's plane (linear in the edge's parameter) and
 *       inside its picture (a scan along the edge by the even-odd rule). No order of painting is
 *       needed, so solids that overlap in a circle come out right.
 *   <li>The scan is made twice, a hair to the left of the edge and a hair to the right, and the
 *       edge is hidden where both sides are. So a line along the outline of a face in front of it
 *       is seen, a line behind the seam of two faces is not, and no line breaks where a face merely
 *       touches it.
 *   <li>Mouths of bores are cut from the plane of their face as ellipses, clipped by the face, and
 *       hidden like edges.
 *   <li>Visible stretches that lie on one line in the view are drawn once, for the item that stands
 *       first in the scene; hidden stretches give way to visible ones.
 *   <li>A region of a face is its picture less the pictures of the faces in front of it, each
 *       clipped to where it is in front.
 * </ol>
 *
 * <p>Tolerances are in mm at full size: a line less than 0.01 below a face lies on it, and visible
 * or hidden stretches shorter than 0.05 are dropped.
 */
final class HiddenLines {
  private static final double HAIR_MM = 0.004;
  private static final double SHORT_MM = 0.05;
  private static final double POINT_MM = 1e-6;

  /** Of short lines, as round a small bore, no more than this share is dropped. */
  private static final double MOST_DROPPED = 0.2;

  private final Scene scene;
  private final View view;

  /** The faces of each item that look at the viewer. */
  private final List<List<ScreenFace>> own = new ArrayList<>();

  private final STRtree index = new STRtree();
  private final Lazy<SharedEdges> shared = new Lazy<>(this::sharedEdges);

  private HiddenLines(Scene scene, View view) {
    this.scene = scene;
    this.view = view;
    for (int i = 0; i < scene.items().size(); i++) {
      addFaces(i, scene.items().get(i));
    }
    index.build();
  }

  private SharedEdges sharedEdges() {
    List<List<Edge>> edges = IntStream.range(0, own.size()).mapToObj(this::edges).toList();
    return new SharedEdges(edges, line -> strokes(line, visibleStretches(line)));
  }

  /** A scene, ready to be asked what is seen of it. */
  public static HiddenLines of(Scene scene, View view) {
    return new HiddenLines(scene, view);
  }

  private void addFaces(int owner, Scene.Item item) {
    List<ScreenFace> faces = new ArrayList<>();
    for (FlatFace face : item.solid().faces()) {
      if (ScreenFace.looksAt(view, face)) {
        ScreenFace seen = ScreenFace.of(owner, face, item.offset(), view);
        faces.add(seen);
        if (!item.isOpen()) {
          index.insert(seen.envelope(), seen);
        }
      }
    }
    own.add(faces);
  }

  /** What is seen of each item, in the order of the scene, without hidden lines. */
  public List<Seen> seen() {
    return seen(item -> true);
  }

  /** The same, with regions only for some items: they take by far the most time. */
  public List<Seen> seen(Predicate<Scene.Item> withRegions) {
    return gathered(item -> List.of(), withRegions);
  }

  /** What is seen of each item, in the order of the scene, and what is hidden of its edges. */
  public List<Seen> seenAndHidden() {
    return seenAndHidden(item -> true);
  }

  /** The same, with regions only for some items. */
  List<Seen> seenAndHidden(Predicate<Scene.Item> withRegions) {
    Lazy<List<List<Stroke>>> hidden = new Lazy<>(this::hidden);
    return gathered(item -> hidden.get().get(item), withRegions);
  }

  /** Of the edges of each item what is hidden and under no line that is seen. */
  private List<List<Stroke>> hidden() {
    int count = scene.items().size();
    SharedLines drawn = new SharedLines();
    for (boolean outline : new boolean[] {true, false}) {
      for (int i = 0; i < count; i++) {
        drawn.addAll(shared.get().of(i, outline));
      }
    }
    drawn.endOfItem();
    for (int i = 0; i < count; i++) {
      edges(i).forEach(edge -> drawn.addAll(strokes(edge.line(), hiddenStretches(edge.line()))));
      backEdges(i).forEach(edge -> drawn.add(edge.line().picture()));
      drawn.endOfItem();
    }
    return drawn.unique().subList(1, count + 1);
  }

  private List<Seen> gathered(IntFunction<List<Stroke>> hidden, Predicate<Scene.Item> withRegions) {
    Regions regions = new Regions(view, index);
    List<Seen> seen = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      int number = i;
      Scene.Item item = scene.items().get(i);
      seen.add(
          new Seen(
              item,
              () -> lines(number, hidden),
              () -> withRegions.test(item) ? regions.of(own.get(number)) : List.of()));
    }
    return seen;
  }

  private Seen.Lines lines(int item, IntFunction<List<Stroke>> hidden) {
    return new Seen.Lines(
        shared.get().of(item, true),
        shared.get().of(item, false),
        hidden.apply(item),
        new Mouths(this, view).of(scene.items().get(item), own.get(item)));
  }

  /** The seen stretches of the mouths that further bores would have in an item. */
  List<List<At>> mouths(int item, List<Cylinder> bores) {
    Vector3D offset = scene.items().get(item).offset();
    return new Mouths(this, view).of(bores, offset, own.get(item));
  }

  /** A line in space, whether it is seen or not. */
  Stroke whole(Vector3D from, Vector3D to) {
    return ScreenLine.of(from, to, view).picture();
  }

  /** The stretches of a line in space that are seen. */
  public List<Stroke> visible(Vector3D from, Vector3D to) {
    ScreenLine line = ScreenLine.of(from, to, view);
    return strokes(line, visibleStretches(line));
  }

  private static List<Stroke> strokes(ScreenLine line, Intervals stretches) {
    return stretches.stretches().stream()
        .map(stretch -> line.picture().between(stretch.from(), stretch.to()))
        .toList();
  }

  Intervals visibleStretches(ScreenLine line) {
    return visibleStretches(line, inFrontOf(List.of(line.from(), line.to())));
  }

  /** The stretches of a line that are seen past faces of which none other can hide it. */
  Intervals visibleStretches(ScreenLine line, List<ScreenFace> faces) {
    return line.length() < POINT_MM
        ? Intervals.NONE
        : Intervals.of(0, 1).minus(hiddenStretches(line, faces)).longerThan(tooShort(line));
  }

  private Intervals hiddenStretches(ScreenLine line) {
    return hiddenStretches(line, inFrontOf(List.of(line.from(), line.to())));
  }

  private static Intervals hiddenStretches(ScreenLine line, List<ScreenFace> faces) {
    if (faces.isEmpty() || line.length() < POINT_MM) {
      return Intervals.NONE;
    }
    Intervals left = covered(line, HAIR_MM, faces);
    Intervals both = left.isEmpty() ? left : left.and(covered(line, -HAIR_MM, faces));
    return both.longerThan(tooShort(line));
  }

  private static double tooShort(ScreenLine line) {
    return Math.min(SHORT_MM / line.length(), MOST_DROPPED);
  }

  /**
   * The faces near some points in the view, also a hair beside them, whose planes have any of the
   * points behind them.
   */
  List<ScreenFace> inFrontOf(List<Vector3D> points) {
    Envelope envelope = new Envelope();
    for (Vector3D point : points) {
      At at = view.project(point);
      envelope.expandToInclude(at.x(), at.y());
    }
    envelope.expandBy(2 * HAIR_MM);
    List<ScreenFace> faces = new ArrayList<>();
    index.query(
        envelope,
        each -> {
          ScreenFace face = (ScreenFace) each;
          if (face.isBeforeAny(points)) {
            faces.add(face);
          }
        });
    return faces;
  }

  private static Intervals covered(ScreenLine line, double shift, List<ScreenFace> faces) {
    Stroke beside = line.beside(shift);
    List<Stretch> covered = new ArrayList<>();
    for (ScreenFace face : faces) {
      Intervals behind = face.behind(line);
      if (!behind.isEmpty()) {
        covered.addAll(behind.and(face.inside(beside)).stretches());
      }
    }
    return Intervals.union(covered, HAIR_MM / line.length());
  }

  List<Edge> edges(int item) {
    return new Edges(scene.items().get(item), view).of(own.get(item));
  }

  /** Edges of the faces that look away: whatever of them is not under a visible line is hidden. */
  private List<Edge> backEdges(int item) {
    Scene.Item each = scene.items().get(item);
    List<ScreenFace> away =
        each.solid().faces().stream()
            .filter(face -> !ScreenFace.looksAt(view, face))
            .map(face -> ScreenFace.of(item, face, each.offset(), view))
            .toList();
    return new Edges(each, view)
        .of(away).stream().filter(edge -> edge.line().length() >= SHORT_MM).toList();
  }
}
