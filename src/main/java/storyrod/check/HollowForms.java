package storyrod.check;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.check.Hollow.Form;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Convex;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Slots;

/** The convex bodies that make up a hollow. */
final class HollowForms {
  private HollowForms() {}

  static List<Form> of(List<Box> boxes) {
    return boxes.stream().map(HollowForms::box).toList();
  }

  static List<Form> rods(List<Cylinder> bores) {
    return bores.stream().map(bore -> new Form(new Convex.Rod(bore))).toList();
  }

  static List<Form> of(Slots slots) {
    return slots.centres().stream()
        .flatMap(
            centre ->
                slots.form() == Slots.Form.PLUNGED
                    ? Stream.of(plunged(slots, centre))
                    : rounded(slots, centre))
        .toList();
  }

  /** The part of a disc that a plunge leaves: a rod across the slot, and the box round the slot. */
  private static Form plunged(Slots slots, Point centre) {
    double half = slots.length().toMm() / 2;
    double deep = slots.depth().toMm();
    double radius = (half * half + deep * deep) / (2 * deep);
    Vector3D across = unit(slots.across());
    Vector3D middle =
        centre
            .toMm()
            .add(slots.from().normal().multiply(radius - deep))
            .subtract(across.multiply(slots.width().toMm() / 2));
    Convex disc = new Convex.Rod(new Cylinder(middle, across, radius, slots.width().toMm()));
    return new Form(Convex.of(slots.around(centre)), disc);
  }

  private static Stream<Form> rounded(Slots slots, Point centre) {
    Length radius = new Length(slots.width().ticks() / 2);
    Length half = new Length(slots.length().ticks() / 2).minus(radius);
    Box whole = slots.around(centre);
    Length middle = centre.on(slots.along());
    Box between = whole.with(slots.along(), new Range(middle.minus(half), middle.plus(half)));
    Stream<Form> ends =
        Stream.of(half, Length.ZERO.minus(half))
            .map(by -> centre.moved(slots.along(), by).toMm())
            .map(at -> bore(at, slots.from(), radius, slots.depth()))
            .map(bore -> new Form(new Convex.Rod(bore)));
    return half.isPositive() ? Stream.concat(Stream.of(box(between)), ends) : ends;
  }

  private static Cylinder bore(Vector3D at, Face from, Length radius, Length depth) {
    return new Cylinder(at, from.normal().negate(), radius.toMm(), depth.toMm());
  }

  private static Vector3D unit(Axis axis) {
    return Stream.of(Face.values())
        .filter(face -> face.axis() == axis && face.sign() > 0)
        .findFirst()
        .orElseThrow()
        .normal();
  }

  private static Form box(Box box) {
    return new Form(Convex.of(box));
  }
}
