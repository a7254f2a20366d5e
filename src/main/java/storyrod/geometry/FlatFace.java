package storyrod.geometry;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A flat face of a solid: one outer ring and the rings of its openings, in mm. Seen from outside
 * (against the normal) the outer ring runs counter-clockwise, openings clockwise; no ring repeats
 * its first point, and no three points in a row lie on one line.
 *
 * @param normal a unit vector that points out of the wood
 */
public record FlatFace(Vector3D normal, List<Vector3D> outer, List<List<Vector3D>> openings) {
  public FlatFace {
    outer = List.copyOf(outer);
    openings = openings.stream().map(List::copyOf).toList();
  }
}
