package storyrod.drawing;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Tone;

/** The arrowheads of a drawing, and which of them lie on each other. */
final class Arrowheads {
  /** Heads point to point touch; that is no overlap. */
  private static final double TOUCHES_MM2 = 1e-4;

  private Arrowheads() {}

  /**
   * Heads that overlap. Where a narrow stretch of a chain has its heads outside, its neighbour's
   * head in the same place is one head on paper, which serves both.
   */
  static List<String> overlaps(Drawing drawing) {
    List<List<At>> heads = of(drawing);
    List<String> found = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      for (List<At> other : heads.subList(i + 1, heads.size())) {
        if (!same(heads.get(i), other) && sharedMm2(heads.get(i), other) > TOUCHES_MM2) {
          found.add("an arrowhead at " + heads.get(i).getFirst() + " on " + other.getFirst());
        }
      }
    }
    return found;
  }

  private static List<List<At>> of(Drawing drawing) {
    List<List<At>> heads = new ArrayList<>();
    for (Element element : Clean.flat(drawing.elements())) {
      if (isHeaded(element)) {
        for (Element simple : Lowering.simple(element)) {
          if (simple instanceof Drawing.Area area && area.tone() == Tone.INK) {
            heads.add(area.rings().getFirst());
          }
        }
      }
    }
    return heads;
  }

  private static boolean isHeaded(Element element) {
    return DimensionLayout.line(element).isPresent()
        || element instanceof Note
        || element instanceof Arrow;
  }

  private static boolean same(List<At> one, List<At> other) {
    return one.getFirst().distance(other.getFirst()) < 1e-6
        && middle(one).distance(middle(other)) < 1e-6;
  }

  private static At middle(List<At> head) {
    return new At(
        head.stream().mapToDouble(At::x).average().orElseThrow(),
        head.stream().mapToDouble(At::y).average().orElseThrow());
  }

  /** The rectangle round what two heads share. */
  private static double sharedMm2(List<At> one, List<At> other) {
    Area shared = new Area(path(one));
    shared.intersect(new Area(path(other)));
    Rectangle2D round = shared.getBounds2D();
    return round.getWidth() * round.getHeight();
  }

  private static Path2D path(List<At> ring) {
    Path2D path = new Path2D.Double();
    path.moveTo(ring.getFirst().x(), ring.getFirst().y());
    ring.forEach(at -> path.lineTo(at.x(), at.y()));
    path.closePath();
    return path;
  }
}
