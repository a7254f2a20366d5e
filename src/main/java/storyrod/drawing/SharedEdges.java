package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import storyrod.drawing.Edges.Edge;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Lazy;

/**
 * What is seen of the edges of a scene, where they share a line only of the first: outlines before
 * the edges inside them, then in the order of the scene. What is seen of an edge is worked out only
 * when it or one on its line is asked for.
 */
final class SharedEdges {
  private final Function<ScreenLine, List<Stroke>> seen;
  private final List<List<Numbered>> outlines = new ArrayList<>();
  private final List<List<Numbered>> inner = new ArrayList<>();
  private final STRtree index = new STRtree();
  private int count;

  private record Numbered(int number, Lazy<List<Stroke>> strokes) {}

  /**
   * Edges to be asked for.
   *
   * @param edges those of each item
   * @param seen gives what is seen of an edge
   */
  SharedEdges(List<List<Edge>> edges, Function<ScreenLine, List<Stroke>> seen) {
    this.seen = seen;
    edges.forEach(each -> outlines.add(numbered(each, true)));
    edges.forEach(each -> inner.add(numbered(each, false)));
    index.build();
  }

  private List<Numbered> numbered(List<Edge> edges, boolean outline) {
    List<Numbered> numbered = new ArrayList<>();
    for (Edge edge : edges) {
      if (edge.isOutline() == outline) {
        ScreenLine line = edge.line();
        Numbered each = new Numbered(count++, new Lazy<>(() -> seen.apply(line)));
        index.insert(SharedLines.around(line.picture()), each);
        numbered.add(each);
      }
    }
    return numbered;
  }

  /** What is seen of the outlines of an item, or of its other edges. */
  List<Stroke> of(int item, boolean outline) {
    List<Stroke> left = new ArrayList<>();
    for (Numbered each : (outline ? outlines : inner).get(item)) {
      for (Stroke stroke : each.strokes().get()) {
        left.addAll(SharedLines.left(stroke, before(each, stroke)));
      }
    }
    return left;
  }

  private List<Stroke> before(Numbered edge, Stroke stroke) {
    Envelope around = SharedLines.around(stroke);
    List<Stroke> before = new ArrayList<>();
    for (Object each : index.query(around)) {
      Numbered other = (Numbered) each;
      if (other.number() < edge.number()) {
        before.addAll(other.strokes().get());
      }
    }
    return before;
  }
}
