package storyrod.geometry;

import java.util.List;
import java.util.Optional;
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

  /** How far it lies from the origin along its normal, in mm. */
  public double offsetMm() {
    return outer.getFirst().dot(normal);
  }

  /** Its area in mm². */
  public double areaMm2() {
    return FacesTouching.polygon(this, frame()).getArea();
  }

  /** The largest stretch that this and another face share, both laid in this one's plane. */
  public Optional<FlatFace> shared(FlatFace other) {
    return new FacesTouching(this, other).shared();
  }

  /** The area that this and another face share, both laid in this one's plane, in mm². */
  public double sharedMm2(FlatFace other) {
    return new FacesTouching(this, other).areaMm2();
  }

  PlaneFrame frame() {
    return PlaneFrame.of(normal, offsetMm());
  }
}
