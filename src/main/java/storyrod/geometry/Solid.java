package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
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

  private static final double SAME_DIRECTION = 1e-9;
  private static final double ON_CUT_MM = 1e-3;

  private static final Precision.DoubleEquivalence PRECISION =
      Precision.doubleEquivalenceOfEpsilon(EXACT_TO_MM);

  /** Never changed once the solid is made: every operation works on a copy. */
  private final Lazy<RegionBSPTree3D> body;

  private final List<Cylinder> bores;
  private final Lazy<List<FlatFace>> faces;
  private final Lazy<Double> volume;
  private final Lazy<Optional<Bounds3D>> bounds;
  private final Lazy<List<ConvexBody>> convex;

  private final Form form;

  private Solid(RegionBSPTree3D body, List<Cylinder> bores, Form form) {
    this(new Lazy<>(() -> body), bores, form);
  }

  private Solid(Lazy<RegionBSPTree3D> body, List<Cylinder> bores, Form form) {
    this.body = body;
    this.form = form;
    this.convex = new Lazy<>(() -> body().toConvex().stream().map(ConvexBody::of).toList());
    this.bores = List.copyOf(bores);
    this.faces = new Lazy<>(() -> FaceMerger.merge(body().boundaries()));
    this.volume = new Lazy<>(() -> body().getSize() - new Bores(body(), this.bores).volumeMm3());
    this.bounds = new Lazy<>(() -> Optional.ofNullable(body().getBounds()));
  }

  private RegionBSPTree3D body() {
    return body.get();
  }

  /** A solid box. */
  public static Solid of(Box box) {
    return new Solid(tree(box), List.of(), Form.SQUARE);
  }

  /** A contour pulled out over a stretch of its normal axis, its arcs as facets. */
  public static Solid of(Contour contour, Range along, Fineness fineness) {
    Facets facets = new Facets(contour, along, fineness);
    return new Solid(facets.tree(PRECISION), List.of(), new Form(false, facets.seams()));
  }

  /**
   * A body turned about an axis through the origin, its round surface as facets.
   *
   * @param along the unit vector of the axis
   * @param rings in their order along the axis; where two lie in one plane the body has a step
   */
  public static Solid turned(Vector3D along, List<Ring> rings, int sides) {
    TurnedBody body = new TurnedBody(along, rings, sides);
    Lazy<RegionBSPTree3D> tree = new Lazy<>(() -> body.tree(PRECISION));
    return new Solid(tree, List.of(), new Form(false, body.seams()));
  }

  /** Both as one body. */
  public Solid with(Solid other) {
    RegionBSPTree3D both = RegionBSPTree3D.empty();
    both.union(body(), other.body());
    return new Solid(both, bores, form.with(other.form));
  }

  /** What remains where another solid was; its seams are seams of this one from then on. */
  public Solid minus(Solid other) {
    RegionBSPTree3D left = body().copy();
    left.difference(other.body());
    return new Solid(left, bores, form.with(other.form));
  }

  /** What remains after boxes are cut away. */
  public Solid minus(List<Box> boxes) {
    RegionBSPTree3D left = body().copy();
    boxes.stream().filter(box -> box.volumeMm3() > 0).forEach(box -> left.difference(tree(box)));
    return new Solid(left, bores, form);
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
    left.intersection(body());
    return new Solid(left, bores, new Form(false, form.seams()));
  }

  /**
   * The faces that such a cut leaves where it goes through the wood; bores are not cut out of them.
   */
  public List<FlatFace> sawn(Vector3D at, Vector3D beyond) {
    List<PlaneConvexSubset> onCut = new ArrayList<>();
    for (PlaneConvexSubset piece : trimmed(at, beyond).body().boundaries()) {
      Plane plane = piece.getPlane();
      if (plane.getNormal().dot(beyond) > beyond.norm() * (1 - SAME_DIRECTION)
          && Math.abs(plane.offset(at)) < ON_CUT_MM) {
        onCut.add(piece);
      }
    }
    return FaceMerger.merge(onCut);
  }

  /** The body with its bores cut out of it, each as a prism whose sides touch it all round. */
  public Solid hollowed() {
    RegionBSPTree3D left = body().copy();
    bores.forEach(bore -> left.difference(Facets.around(bore, PRECISION)));
    return new Solid(left, bores, new Form(false, form.seams()));
  }

  /** The same body with further bores. */
  public Solid bored(List<Cylinder> more) {
    List<Cylinder> all = new ArrayList<>(bores);
    all.addAll(more);
    return new Solid(body, all, form);
  }

  /** The same body without its bores. */
  public Solid unbored() {
    return new Solid(body, List.of(), form);
  }

  /** The same solid elsewhere. */
  public Solid moved(Vector3D byMm) {
    RegionBSPTree3D there = body().copy();
    there.transform(AffineTransformMatrix3D.createTranslation(byMm));
    return new Solid(
        there, bores.stream().map(bore -> bore.moved(byMm)).toList(), form.moved(byMm));
  }

  /** The same solid as it stands after a turn; itself where there is none. */
  public Solid posed(Pose pose) {
    if (!pose.isTurned()) {
      return this;
    }
    RegionBSPTree3D there = body().copy();
    there.transform(matrix(pose));
    return new Solid(
        there, bores.stream().map(bore -> bore.posed(pose)).toList(), form.posed(pose));
  }

  private static AffineTransformMatrix3D matrix(Pose pose) {
    Vector3D x = pose.direction(Vector3D.of(1, 0, 0));
    Vector3D y = pose.direction(Vector3D.of(0, 1, 0));
    Vector3D z = pose.direction(Vector3D.of(0, 0, 1));
    return AffineTransformMatrix3D.fromColumnVectors(x, y, z, pose.point(Vector3D.ZERO));
  }

  /** What remains after other flat bodies are cut away. */
  public Solid without(List<Solid> others) {
    RegionBSPTree3D left = body().copy();
    others.stream().filter(each -> !each.isEmpty()).forEach(each -> left.difference(each.body()));
    Form all = others.stream().map(each -> each.form).reduce(form, Form::with);
    return new Solid(left, bores, all);
  }

  /** The least box round its flat body, its ends rounded outwards to whole ticks. */
  public Optional<Box> bounds() {
    return bounds(Vector3D.ZERO);
  }

  /** The same of the solid elsewhere, without moving it. */
  public Optional<Box> bounds(Vector3D movedMm) {
    return bounds
        .get()
        .map(found -> Box.outwards(found.getMin().add(movedMm), found.getMax().add(movedMm)));
  }

  /** Whether no wood is left. */
  public boolean isEmpty() {
    return body().isEmpty();
  }

  /** Whether a point, in mm, lies in its flat body or on its surface. */
  public boolean holds(Vector3D pointMm) {
    return body().contains(pointMm);
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
    return form.seams();
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
    if (!boundsOverlap(other, Vector3D.ZERO)) {
      return 0;
    }
    if (!form.square() || !other.form.square()) {
      return sharedVolumeMm3(other, Vector3D.ZERO);
    }
    RegionBSPTree3D shared = RegionBSPTree3D.empty();
    shared.intersection(body(), other.body());
    return shared.isEmpty() ? 0 : shared.getSize();
  }

  /** The same with the other one moved; slanted faces that nearly coincide do no harm here. */
  public double sharedVolumeMm3(Solid other, Vector3D movedMm) {
    if (!boundsOverlap(other, movedMm)) {
      return 0;
    }
    double shared = 0;
    for (ConvexBody one : convex.get()) {
      for (ConvexBody two : other.convex.get()) {
        shared += one.sharedMm3(two, movedMm);
      }
    }
    return shared;
  }

  private boolean boundsOverlap(Solid other, Vector3D movedMm) {
    return bounds.get().isPresent()
        && other.bounds.get().isPresent()
        && overlap(bounds.get().get(), other.bounds.get().get(), movedMm);
  }

  private static boolean overlap(Bounds3D one, Bounds3D two, Vector3D moved) {
    Vector3D gap =
        least(one.getMax(), two.getMax().add(moved), 1)
            .subtract(least(one.getMin(), two.getMin().add(moved), -1));
    return gap.getX() > EXACT_TO_MM && gap.getY() > EXACT_TO_MM && gap.getZ() > EXACT_TO_MM;
  }

  /** The least coordinates of two points for a sign of 1, the greatest for -1. */
  private static Vector3D least(Vector3D one, Vector3D two, int sign) {
    return Vector3D.of(
        sign * Math.min(sign * one.getX(), sign * two.getX()),
        sign * Math.min(sign * one.getY(), sign * two.getY()),
        sign * Math.min(sign * one.getZ(), sign * two.getZ()));
  }

  private static RegionBSPTree3D tree(Box box) {
    Vector3D low = Vector3D.of(box.x().from().toMm(), box.y().from().toMm(), box.z().from().toMm());
    Vector3D high = Vector3D.of(box.x().to().toMm(), box.y().to().toMm(), box.z().to().toMm());
    return Parallelepiped.axisAligned(low, high, PRECISION).toTree();
  }
}
