package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.shape.Parallelepiped;
import org.apache.commons.numbers.core.Precision;

/**
 * A piece of wood as a body with flat faces, less round bores that are kept beside it. Immutable.
 *
 * <p>The flat body is exact to 1 µm; the bores are exact cylinders.
 */
public final class Solid {
  private static final double EXACT_TO_MM = 1e-6;
  private static final Precision.DoubleEquivalence PRECISION =
      Precision.doubleEquivalenceOfEpsilon(EXACT_TO_MM);

  /** Never changed once the solid is made: every operation works on a copy. */
  private final RegionBSPTree3D body;

  private final List<Cylinder> bores;
  private final List<Seam> seams;
  private final Lazy<List<FlatFace>> faces;
  private final Lazy<Double> volume;
  private final Lazy<Optional<Bounds3D>> bounds;

  private Solid(RegionBSPTree3D body, List<Cylinder> bores, List<Seam> seams) {
    this.body = body;
    this.bores = List.copyOf(bores);
    this.seams = List.copyOf(seams);
    this.faces = new Lazy<>(() -> FaceMerger.merge(body.boundaries()));
    this.volume = new Lazy<>(() -> body.getSize() - new Bores(body, this.bores).volumeMm3());
    this.bounds = new Lazy<>(() -> Optional.ofNullable(body.getBounds()));
  }

  /** A solid box. */
  public static Solid of(Box box) {
    return new Solid(tree(box), List.of(), List.of());
  }

  /** A contour pulled out over a stretch of its normal axis, its arcs as facets. */
  public static Solid of(Contour contour, Range along, Fineness fineness) {
    Facets facets = new Facets(contour, along, fineness);
    return new Solid(facets.tree(PRECISION), List.of(), facets.seams());
  }

  /** What remains where another solid was; its seams are seams of this one from then on. */
  public Solid minus(Solid other) {
    RegionBSPTree3D left = body.copy();
    left.difference(other.body);
    List<Seam> all = new ArrayList<>(seams);
    all.addAll(other.seams);
    return new Solid(left, bores, all);
  }

  /** What remains after boxes are cut away. */
  public Solid minus(List<Box> boxes) {
    RegionBSPTree3D left = body.copy();
    boxes.stream().filter(box -> box.volumeMm3() > 0).forEach(box -> left.difference(tree(box)));
    return new Solid(left, bores, seams);
  }

  /**
   * What remains after everything beyond a plane is cut away, as by a slanted saw cut.
   *
   * @param at a point of the plane, in mm
   * @param beyond the plane's normal, which points at what falls off
   */
  public Solid trimmed(Vector3D at, Vector3D beyond) {
    RegionBSPTree3D left = RegionBSPTree3D.empty();
    left.insert(Planes.fromPointAndNormal(at, beyond, PRECISION).span());
    left.intersection(body);
    return new Solid(left, bores, seams);
  }

  /** The same body with further bores. */
  public Solid bored(List<Cylinder> more) {
    List<Cylinder> all = new ArrayList<>(bores);
    all.addAll(more);
    return new Solid(body, all, seams);
  }

  /** The same solid elsewhere. */
  public Solid moved(Vector3D byMm) {
    RegionBSPTree3D there = body.copy();
    there.transform(AffineTransformMatrix3D.createTranslation(byMm));
    return new Solid(
        there,
        bores.stream().map(bore -> moved(bore, byMm)).toList(),
        seams.stream().map(seam -> seam.moved(byMm)).toList());
  }

  /** Whether no wood is left. */
  public boolean isEmpty() {
    return body.isEmpty();
  }

  /**
   * The flat faces, coplanar neighbours merged, in a fixed order; bores are not cut out of them.
   */
  public List<FlatFace> faces() {
    return faces.get();
  }

  public List<Cylinder> bores() {
    return bores;
  }

  /** The lines between the facets of its curved surfaces, which no drawing shows as edges. */
  public List<Seam> seams() {
    return seams;
  }

  /**
   * The wood left, in mm³: the flat body less what each bore takes out of it.
   *
   * <p>A bore takes its cross-section times the length of its axis inside the flat body. That is
   * exact where each end of the bore is flat or lies wholly in one flat face, slanted or not; where
   * a bore breaks out of a side or runs over an edge, it is as if its axis spoke for all of it.
   * Bores on one axis, as of a stepped bit, are counted once, at the widest; bores that cross at an
   * angle or lie side by side are counted twice where they meet.
   */
  public double volumeMm3() {
    return volume.get();
  }

  /** The volume in mm³ that the flat bodies of two solids share; 0 where they only touch. */
  public double sharedVolumeMm3(Solid other) {
    if (!boundsOverlap(other)) {
      return 0;
    }
    RegionBSPTree3D shared = RegionBSPTree3D.empty();
    shared.intersection(body, other.body);
    return shared.isEmpty() ? 0 : shared.getSize();
  }

  private boolean boundsOverlap(Solid other) {
    return bounds.get().isPresent()
        && other.bounds.get().isPresent()
        && overlap(bounds.get().get(), other.bounds.get().get());
  }

  private static boolean overlap(Bounds3D one, Bounds3D two) {
    Vector3D gap =
        least(one.getMax(), two.getMax(), 1).subtract(least(one.getMin(), two.getMin(), -1));
    return gap.getX() > EXACT_TO_MM && gap.getY() > EXACT_TO_MM && gap.getZ() > EXACT_TO_MM;
  }

  /** The least coordinates of two points for a sign of 1, the greatest for -1. */
  private static Vector3D least(Vector3D one, Vector3D two, int sign) {
    return Vector3D.of(
        sign * Math.min(sign * one.getX(), sign * two.getX()),
        sign * Math.min(sign * one.getY(), sign * two.getY()),
        sign * Math.min(sign * one.getZ(), sign * two.getZ()));
  }

  private static Cylinder moved(Cylinder bore, Vector3D by) {
    return new Cylinder(bore.mouth().add(by), bore.direction(), bore.radiusMm(), bore.depthMm());
  }

  private static RegionBSPTree3D tree(Box box) {
    Vector3D low = Vector3D.of(box.x().from().toMm(), box.y().from().toMm(), box.z().from().toMm());
    Vector3D high = Vector3D.of(box.x().to().toMm(), box.y().to().toMm(), box.z().to().toMm());
    return Parallelepiped.axisAligned(low, high, PRECISION).toTree();
  }
}
