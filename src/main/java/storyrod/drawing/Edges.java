package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Seam;

/** Finds the edges of an item of a scene: the sides of its faces, each once. */
final class Edges {
  private static final double PER_MM = 1e3;

  private final Scene.Item item;
  private final View view;

  Edges(Scene.Item item, View view) {
    this.item = item;
    this.view = view;
  }

  /** An edge, and whether only one face that it bounds looks at the viewer. */
  record Edge(ScreenLine line, boolean isOutline) {}

  /** Points no farther apart than a step of the grid are one. */
  private record Corner(long x, long y, long z) implements Comparable<Corner> {
    static Corner of(Vector3D point) {
      return new Corner(
          Math.round(point.getX() * PER_MM),
          Math.round(point.getY() * PER_MM),
          Math.round(point.getZ() * PER_MM));
    }

    @Override
    public int compareTo(Corner other) {
      int byX = Long.compare(x, other.x);
      int byY = byX == 0 ? Long.compare(y, other.y) : byX;
      return byY == 0 ? Long.compare(z, other.z) : byY;
    }

    @Override
    public int hashCode() {
      return Long.hashCode((x * 31 + y) * 31 + z);
    }
  }

  /** The ends of an edge, whichever way it runs. */
  private record Ends(Corner low, Corner high) {
    static Ends of(Corner one, Corner two) {
      return one.compareTo(two) < 0 ? new Ends(one, two) : new Ends(two, one);
    }
  }

  /** Those of some faces, without the seams of a curved surface that stays in sight there. */
  List<Edge> of(List<ScreenFace> faces) {
    Map<Ends, Edge> edges = new LinkedHashMap<>();
    for (ScreenFace face : faces) {
      face.corners().forEach(ring -> addRing(ring, edges));
    }
    return sharp(List.copyOf(edges.values()));
  }

  private void addRing(List<Vector3D> ring, Map<Ends, Edge> edges) {
    List<Corner> corners = ring.stream().map(Corner::of).toList();
    for (int i = 0; i < ring.size(); i++) {
      int next = (i + 1) % ring.size();
      ScreenLine line = ScreenLine.of(ring.get(i), ring.get(next), view);
      edges.merge(
          Ends.of(corners.get(i), corners.get(next)),
          new Edge(line, true),
          (first, again) -> new Edge(first.line(), false));
    }
  }

  private List<Edge> sharp(List<Edge> edges) {
    List<Seam> smooth =
        item.solid().seams().stream().filter(seam -> seam.isSmooth(view.toViewer())).toList();
    return smooth.isEmpty()
        ? edges
        : edges.stream().filter(edge -> !isOn(smooth, edge.line())).toList();
  }

  private boolean isOn(List<Seam> seams, ScreenLine line) {
    Vector3D from = line.from().subtract(item.offset());
    Vector3D to = line.to().subtract(item.offset());
    return seams.stream().anyMatch(seam -> seam.holds(from) && seam.holds(to));
  }
}
