package storyrod.geometry;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A piece of wood as a body with flat faces, less round bores that are kept beside it. Immutable.
 *
 * <p>The flat body is exact to 1 µm; the bores are exact cylinders.
 */
public final class Solid {
  private Solid() {}

  /** A solid box. */
  public static Solid of(Box box) {
    throw new UnsupportedOperationException();
  }

  /** What remains after boxes are cut away. */
  public Solid minus(List<Box> boxes) {
    throw new UnsupportedOperationException();
  }

  /** The same body with further bores. */
  public Solid bored(List<Cylinder> bores) {
    throw new UnsupportedOperationException();
  }

  /** The same solid elsewhere. */
  public Solid moved(Vector3D byMm) {
    throw new UnsupportedOperationException();
  }

  /** Whether no wood is left. */
  public boolean isEmpty() {
    throw new UnsupportedOperationException();
  }

  /** The flat faces, coplanar neighbours merged, in a fixed order; bores are not cut out of them. */
  public List<FlatFace> faces() {
    throw new UnsupportedOperationException();
  }

  public List<Cylinder> bores() {
    throw new UnsupportedOperationException();
  }

  /** The wood left, in mm³: the flat body less what each bore takes out of it. */
  public double volumeMm3() {
    throw new UnsupportedOperationException();
  }

  /** The volume in mm³ that the flat bodies of two solids share; 0 where they only touch. */
  public double sharedVolumeMm3(Solid other) {
    throw new UnsupportedOperationException();
  }
}
