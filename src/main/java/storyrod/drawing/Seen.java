package storyrod.drawing;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Lazy;

/**
 * What a viewer sees of one item of a scene, in the measures of the view (full size, x right, y
 * down). It is worked out when it is first asked for: of views that are only weighed hardly
 * anything is.
 */
public final class Seen {
  private final Scene.Item item;
  private final Lazy<Lines> lines;
  private final Lazy<List<Region>> regions;

  Seen(Scene.Item item, Supplier<Lines> lines, Supplier<List<Region>> regions) {
    this.item = item;
    this.lines = new Lazy<>(lines);
    this.regions = new Lazy<>(regions);
  }

  public Scene.Item item() {
    return item;
  }

  public Lines lines() {
    return lines.get();
  }

  /** Works out all of it now. */
  void workOut() {
    lines();
    regions();
  }

  /** The seen parts of faces. */
  public List<Region> regions() {
    return regions.get();
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
