package storyrod.geometry;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.measure.Length;

/** An exact box along the axes. */
public record Box(Range x, Range y, Range z) {
  /** What arithmetic in floating point may be off before an end counts as on the next tick. */
  private static final double ROUNDING_TICKS = 1e-3;

  /** Between two corners in mm, its ends rounded outwards to whole ticks. */
  static Box outwards(Vector3D least, Vector3D most) {
    return new Box(
        outwards(least.getX(), most.getX()),
        outwards(least.getY(), most.getY()),
        outwards(least.getZ(), most.getZ()));
  }

  private static Range outwards(double from, double to) {
    double ticks = Length.TICKS_PER_MM;
    return new Range(
        new Length((long) Math.floor(from * ticks + ROUNDING_TICKS)),
        new Length((long) Math.ceil(to * ticks - ROUNDING_TICKS)));
  }

  public Range on(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  public Box with(Axis axis, Range range) {
    return switch (axis) {
      case X -> new Box(range, y, z);
      case Y -> new Box(x, range, z);
      case Z -> new Box(x, y, range);
    };
  }

  /** The corner where all its axes start. */
  public Point low() {
    return new Point(x.from(), y.from(), z.from());
  }

  public Point middle() {
    return new Point(x.middle(), y.middle(), z.middle());
  }

  /** Where a face of the box lies on its axis. */
  public Length at(Face face) {
    return on(face.axis()).end(face.sign());
  }

  public Box extended(Face face, Length by) {
    return with(face.axis(), on(face.axis()).extended(face.sign(), by));
  }

  /** The same box further on along an axis, or back where the length is negative. */
  public Box moved(Axis axis, Length by) {
    return with(axis, on(axis).moved(by));
  }

  /** The same box elsewhere by so many mm, on each axis to the nearest tick. */
  public Box moved(Vector3D by) {
    Box there = this;
    for (Axis axis : Axis.values()) {
      there = there.moved(axis, Length.nearest(by.dot(Face.of(axis, 1).normal())));
    }
    return there;
  }

  public boolean overlaps(Box other) {
    return x.overlaps(other.x) && y.overlaps(other.y) && z.overlaps(other.z);
  }

  public boolean contains(Box other) {
    return x.contains(other.x) && y.contains(other.y) && z.contains(other.z);
  }

  /** The space that two boxes share, if it has a volume. */
  public Optional<Box> shared(Box other) {
    return overlaps(other)
        ? Optional.of(new Box(x.shared(other.x), y.shared(other.y), z.shared(other.z)))
        : Optional.empty();
  }

  /** The smallest box round two boxes. */
  public Box around(Box other) {
    return new Box(x.around(other.x), y.around(other.y), z.around(other.z));
  }

  public Length size(Axis axis) {
    return on(axis).length();
  }

  /** The volume in mm³. */
  public double volumeMm3() {
    return x.length().toMm() * y.length().toMm() * z.length().toMm();
  }
}
