package storyrod.drawing;

import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * A turn in space, given by the faces that become right, back and top.
 *
 * @param box the part before the turn; its near corner comes to lie at 0
 */
record Turn(Box box, Face right, Face back, Face up) {
  static Turn with(Box box, Face right, Face shown) {
    Face back = shown.opposite();
    int step = Math.floorMod(back.axis().ordinal() - right.axis().ordinal(), 3);
    int sign = (step == 1 ? 1 : -1) * right.sign() * back.sign();
    return new Turn(box, right, back, Face.of(Axis.other(right.axis(), back.axis()), sign));
  }

  /** The face that an axis of the turned frame points at, in the frame before. */
  Face old(Axis turned) {
    return switch (turned) {
      case X -> right;
      case Y -> back;
      case Z -> up;
    };
  }

  Axis turned(Axis old) {
    return old == right.axis() ? Axis.X : old == back.axis() ? Axis.Y : Axis.Z;
  }

  Face turned(Face face) {
    Axis axis = turned(face.axis());
    return Face.of(axis, face.sign() * old(axis).sign());
  }

  Length turned(Length at, Face old) {
    return at.minus(box.at(old.opposite())).times(old.sign());
  }

  Point turned(Point point) {
    return new Point(
        turned(point.on(right.axis()), right),
        turned(point.on(back.axis()), back),
        turned(point.on(up.axis()), up));
  }

  private Range turned(Box inside, Face old) {
    return turned(inside.on(old.axis()), old);
  }

  Box turned(Box inside) {
    return new Box(turned(inside, right), turned(inside, back), turned(inside, up));
  }

  Range turned(Range range, Face old) {
    return new Range(turned(range.end(-old.sign()), old), turned(range.end(old.sign()), old));
  }
}
