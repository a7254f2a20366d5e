package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;

/**
 * What a viewer sees of one item of a scene, in the measures of the view (full size, x right, y
 * down).
 *
 * @param regions the seen parts of faces
 */
public record Seen(Scene.Item item, Lines lines, List<Region> regions) {
  public Seen {
    regions = List.copyOf(regions);
  }

  /**
   * Lines, none of them drawn twice in the whole scene.
   *
   * @param outlines seen edges where the item ends for the eye
   * @param edges seen edges between two faces that look at the viewer
   * @param hidden stretches of edges that are behind something and under no seen line
   * @param mouths the seen stretches of the mouths of bores
   */
  public record Lines(
      List<Stroke> outlines, List<Stroke> edges, List<Stroke> hidden, List<List<At>> mouths) {
    public Lines {
      outlines = List.copyOf(outlines);
      edges = List.copyOf(edges);
      hidden = List.copyOf(hidden);
      mouths = mouths.stream().map(List::copyOf).toList();
    }

    /** All seen edges. */
    public List<Stroke> visible() {
      return Stream.concat(outlines.stream(), edges.stream()).toList();
    }
  }

  /** A straight stretch of a line. */
  public record Stroke(At from, At to) {
    public double length() {
      return from.distance(to);
    }

    /** The point at a share of the length. */
    public At at(double share) {
      return new At(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }

    Stroke between(double from, double to) {
      return new Stroke(at(from), at(to));
    }
  }

  /**
   * A seen region of a face: an outer ring, then openings.
   *
   * @param normal the direction in which the face looks
   */
  public record Region(Vector3D normal, List<List<At>> rings, double areaMm2) {
    public Region {
      rings = rings.stream().map(List::copyOf).toList();
    }
  }
}
