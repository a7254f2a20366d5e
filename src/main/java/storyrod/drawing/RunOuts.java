package storyrod.drawing;

import java.util.Arrays;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.piece.Cut;

/** Where trenches run out into other cuts. */
final class RunOuts {
  private RunOuts() {}

  /**
   * A trench as the finished part shows it: where its end lies in the void that another cut leaves
   * at the part's end, nothing is seen of it and nothing can be measured to it, so it runs out.
   */
  static Box seen(FlatPart flat, Cut.Trench trench) {
    Box seen = trench.removed();
    for (Face face : Face.values()) {
      if (face.axis() != trench.from().axis() && runsOut(flat, trench, face)) {
        Range range = seen.on(face.axis());
        seen = seen.with(face.axis(), range.around(end(flat, face)));
      }
    }
    return seen;
  }

  private static Range end(FlatPart flat, Face face) {
    return new Range(flat.box().at(face), flat.box().at(face));
  }

  private static boolean runsOut(FlatPart flat, Cut.Trench trench, Face face) {
    return flat.cuts().stream()
        .filter(cut -> cut != trench)
        .flatMap(cut -> cut.boxes().stream())
        .filter(box -> box.at(face).equals(flat.box().at(face)))
        .anyMatch(box -> takesEnd(box, trench.removed(), face));
  }

  /** Whether a box takes away all that lies beside the end of another one. */
  private static boolean takesEnd(Box box, Box trench, Face face) {
    return box.on(face.axis()).contains(trench.at(face))
        && Arrays.stream(Axis.values())
            .filter(axis -> axis != face.axis())
            .allMatch(axis -> box.on(axis).contains(trench.on(axis)));
  }
}
