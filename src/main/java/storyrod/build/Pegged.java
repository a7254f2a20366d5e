package storyrod.build;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Slots;

/**
 * Finds blind holes and slots of two parts that face each other: what lies in both, a dowel or the
 * like, lets the parts move only straight away from each other.
 */
final class Pegged {
  private Pegged() {}

  /** The faces towards which one part cannot leave another; none where nothing lies in both. */
  static List<Face> blocked(Part mover, Part other) {
    return blocked(mouths(mover), mouths(other));
  }

  /** The same by the mouths of their holes and slots. */
  static List<Face> blocked(Set<Mouth> mover, Set<Mouth> other) {
    List<Face> ways = Arrays.asList(Face.values());
    return mover.stream()
        .filter(mouth -> other.contains(mouth.facing()))
        .findFirst()
        .map(mouth -> ways.stream().filter(way -> way != mouth.from().opposite()).toList())
        .orElse(List.of());
  }

  static boolean isPegged(Part one, Part other) {
    return !blocked(one, other).isEmpty();
  }

  /** The middle of a blind hole or slot on the face from which it is cut. */
  record Mouth(Face from, Point centre) {
    Mouth facing() {
      return new Mouth(from.opposite(), centre);
    }
  }

  static Set<Mouth> mouths(Part part) {
    Set<Mouth> mouths = new LinkedHashSet<>();
    if (!part.pose().isTurned()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Cut.Holes holes && !holes.through()) {
          holes.centres().forEach(at -> mouths.add(new Mouth(cut.from(), at)));
        } else if (cut instanceof Slots slots && !slots.through()) {
          slots.centres().forEach(at -> mouths.add(new Mouth(cut.from(), at)));
        }
      }
    }
    return mouths;
  }
}
