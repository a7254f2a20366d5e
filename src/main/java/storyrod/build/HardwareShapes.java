package storyrod.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.geometry.Ring;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/**
 * Simple bodies of hardware about the origin, of their true sizes. Bodies that are equal are made
 * once.
 */
final class HardwareShapes {
  /** The height of a flat head against what it is wider than the shank: a cone of 82°. */
  private static final double CONE = 1 / StrictMath.tan(StrictMath.toRadians(41));

  /** A flat underside, twice as wide as the shank and half as high (from memory). */
  private static final double PAN = 0.5;

  private static final double USUAL_LENGTH_MM = 25;
  private static final double USUAL_SHANK_MM = 4;

  /** Up to this radius, in mm, a prism of few sides looks round on paper. */
  private static final double THIN_MM = 3.5;

  private static final int FEW = 6;
  private static final int MANY = 16;

  private final Map<List<Object>, Solid> known = new LinkedHashMap<>();

  private Solid once(List<Object> key, Supplier<Solid> made) {
    Solid found = known.get(key);
    if (found == null) {
      found = made.get();
      known.put(key, found);
    }
    return found;
  }

  /** A body turned about a line. */
  Solid turned(Vector3D out, List<Ring> rings) {
    double widest = rings.stream().mapToDouble(Ring::radiusMm).max().orElse(0);
    return once(List.of(out, rings), () -> Solid.turned(out, rings, widest > THIN_MM ? MANY : FEW));
  }

  /** A round rod from one height to another. */
  Solid rod(Vector3D out, Range along, Length diameter) {
    double radius = diameter.toMm() / 2;
    return turned(
        out, List.of(new Ring(along.from().toMm(), radius), new Ring(along.to().toMm(), radius)));
  }

  /** A screw whose flat head lies flush. */
  Solid flatHead(Vector3D out, ItemEntry screw) {
    double shank = shankMm(screw) / 2;
    return turned(
        out,
        List.of(
            new Ring(-lengthMm(screw), shank),
            new Ring(-shank * CONE, shank),
            new Ring(0, 2 * shank)));
  }

  /** A screw whose head stands on what it holds. */
  Solid panHead(Vector3D out, ItemEntry screw) {
    double shank = shankMm(screw) / 2;
    return turned(
        out,
        List.of(
            new Ring(-lengthMm(screw), shank),
            new Ring(0, shank),
            new Ring(0, 2 * shank),
            new Ring(2 * PAN * shank, 2 * shank)));
  }

  private static double lengthMm(ItemEntry item) {
    return item.length().map(Length::toMm).orElse(USUAL_LENGTH_MM);
  }

  private static double shankMm(ItemEntry item) {
    return item.diameter().map(Length::toMm).orElse(USUAL_SHANK_MM);
  }

  /** What stands on an outline. */
  Solid prism(Contour outline, Range run) {
    return once(List.of(outline, run), () -> Solid.of(outline, run, Fineness.USUAL));
  }

  /** Boxes as one body, turned as a part is. */
  Solid boxes(Pose pose, Box... boxes) {
    Pose turn = new Pose(pose.about(), pose.by(), Point.ORIGIN);
    return once(
        List.of(turn, List.of(boxes)),
        () -> List.of(boxes).stream().map(Solid::of).reduce(Solid::with).orElseThrow().posed(turn));
  }

  /** A box about the origin: from one height to another out of a face, and its sides along axes. */
  static Box box(Face face, Range high, Axis along, Length length, Length width) {
    Range out = face.sign() > 0 ? high : new Range(high.to().negated(), high.from().negated());
    Range none = new Range(Length.ZERO, Length.ZERO);
    return new Box(none, none, none)
        .with(face.axis(), out)
        .with(along, about(length))
        .with(Axis.other(face.axis(), along), about(width));
  }

  /** As long to both sides of the origin. */
  static Range about(Length length) {
    Length half = Length.nearest(length.toMm() / 2);
    return new Range(half.negated(), length.minus(half));
  }
}
