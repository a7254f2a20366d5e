package storyrod.drawing;

import java.util.Arrays;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;

/** Where trenches run out into other cuts. */
final class RunOuts {
  private RunOuts() {}

  /**
   * A trench as the finished part shows it: where its end lies in the void that another cut leaves
   * at the part's end, nothing is seen of it, and the trench is measured to where that void begins.
   */
  static Box seen(FlatPart flat, Cut.Trench trench) {
    Box seen = trench.removed();
    for (Face face : Face.values()) {
      Optional<Length> edge = edge(flat, trench, face);
      if (edge.isPresent()) {
        Range range = seen.on(face.axis());
        Range shorter =
            face.sign() < 0
                ? new Range(edge.get(), range.to())
                : new Range(range.from(), edge.get());
        seen = seen.with(face.axis(), shorter);
      }
    }
    return seen;
  }

  /** Where the void begins that takes a trench's end, if one does. */
  private static Optional<Length> edge(FlatPart flat, Cut.Trench trench, Face face) {
    Length whole = flat.box().at(face);
    if (face.axis() == trench.from().axis() || trench.removed().at(face).equals(whole)) {
      return Optional.empty();
    }
    return flat.cuts().stream()
        .filter(cut -> cut != trench)
        .flatMap(cut -> cut.boxes().stream())
        .filter(box -> box.at(face).equals(whole) && takesEnd(box, trench.removed(), face))
        .map(box -> box.at(face.opposite()))
        .filter(trench.removed().on(face.axis())::contains)
        .findFirst();
  }

  /** Whether a box takes away all that lies beside the end of another one. */
  private static boolean takesEnd(Box box, Box trench, Face face) {
    return box.on(face.axis()).contains(trench.at(face))
        && Arrays.stream(Axis.values())
            .filter(axis -> axis != face.axis())
            .allMatch(axis -> box.on(axis).contains(trench.on(axis)));
  }
}
