package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A turn by quarter turns, a mirror image, or both: where each axis of a frame comes to lie.
 *
 * @param images for x, y and z the face at which the axis points afterwards
 */
public record Turn(List<Face> images) {
  public static final Turn NONE = new Turn(List.of(Face.RIGHT, Face.BACK, Face.TOP));

  public Turn {
    images = List.copyOf(images);
    if (images.stream().map(Face::axis).distinct().count() != 3) {
      throw new IllegalArgumentException("bug: two axes come to lie on one: " + images);
    }
  }

  /** A mirror image along one axis: what was at its one end is at the other. */
  public static Turn mirrored(Axis along) {
    List<Face> images = new ArrayList<>(NONE.images);
    images.set(along.ordinal(), NONE.of(along).opposite());
    return new Turn(images);
  }

  /** Quarter turns about an axis; seen with the axis pointing at the eye, counterclockwise. */
  public static Turn quarters(Axis about, int count) {
    Axis first = Axis.values()[(about.ordinal() + 1) % 3];
    Axis second = Axis.other(about, first);
    List<Face> images = new ArrayList<>(NONE.images);
    images.set(first.ordinal(), Face.of(second, 1));
    images.set(second.ordinal(), Face.of(first, -1));
    Turn quarter = new Turn(images);
    Turn turned = NONE;
    for (int i = 0; i < Math.floorMod(count, 4); i++) {
      turned = turned.then(quarter);
    }
    return turned;
  }

  /** Whether what has a left and a right hand changes them. */
  public boolean isMirrored() {
    int sign = images.stream().mapToInt(Face::sign).reduce(1, (a, b) -> a * b);
    int step = images.get(1).axis().ordinal() - images.get(0).axis().ordinal();
    boolean odd = step != 1 && step != -2;
    return sign < 0 != odd;
  }

  /** The face at which an axis points afterwards. */
  public Face of(Axis axis) {
    return images.get(axis.ordinal());
  }

  /** Where a face looks afterwards. */
  public Face of(Face face) {
    Face image = of(face.axis());
    return face.sign() > 0 ? image : image.opposite();
  }

  /** The face that looks at the given one afterwards. */
  public Face before(Face after) {
    for (Face face : Face.values()) {
      if (of(face) == after) {
        return face;
      }
    }
    throw new IllegalStateException("bug: nothing turns to " + after);
  }

  /** This turn and then another. */
  public Turn then(Turn next) {
    return new Turn(images.stream().map(next::of).toList());
  }
}
