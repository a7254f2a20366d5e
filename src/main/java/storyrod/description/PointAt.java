package storyrod.description;

import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.measure.Length;

/** A point of which one coordinate may be left to the face it lies on. */
public record PointAt(Optional<Length> x, Optional<Length> y, Optional<Length> z) {
  public Optional<Length> on(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }
}
