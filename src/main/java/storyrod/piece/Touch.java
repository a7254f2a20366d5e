package storyrod.piece;

import java.util.Comparator;
import java.util.Optional;
import storyrod.geometry.FlatFace;

/** Where two parts lie on each other as they stand, cuts made. */
public final class Touch {
  private static final double TOUCHING_MM = 0.02;
  private static final double OPPOSITE = 1 - 1e-7;

  private Touch() {}

  /** The largest stretch that a face of the one shares with one of the other, in the piece. */
  public static Optional<FlatFace> between(Part one, Part other) {
    return one.placed().faces().stream()
        .flatMap(
            mine ->
                other.placed().faces().stream()
                    .filter(theirs -> lieTogether(mine, theirs))
                    .flatMap(theirs -> mine.shared(theirs).stream()))
        .max(Comparator.comparingDouble(FlatFace::areaMm2));
  }

  private static boolean lieTogether(FlatFace one, FlatFace other) {
    return one.normal().dot(other.normal()) < -OPPOSITE
        && Math.abs(one.offsetMm() + other.offsetMm()) < TOUCHING_MM;
  }
}
