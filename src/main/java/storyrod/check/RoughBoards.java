package storyrod.check;

import java.math.RoundingMode;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.piece.Part;

/** The boards that a part is planed from, one or several face to face. */
record RoughBoards(Part part) {
  /** What planing takes off a face of a board that is fairly straight (common practice). */
  private static final Length OFF_A_FACE = Length.inch(1, 16);

  Length bought() {
    return part.stock().boughtAs().orElse(part.finishedThickness());
  }

  /** How thick a board is when both faces are planed. */
  Length planed() {
    return bought().minus(OFF_A_FACE.times(2));
  }

  /** How many of them make the part, if they are thick enough to be planed at all. */
  Optional<Integer> layers() {
    return Optional.of(planed())
        .filter(Length::isPositive)
        .map(each -> (int) Math.ceilDiv(part.finishedThickness().ticks(), each.ticks()));
  }

  /** How thick boards have to be bought of which so many make the part. */
  Length thickness(int layers) {
    return part.finishedThickness()
        .dividedBy(layers, RoundingMode.CEILING)
        .plus(OFF_A_FACE.times(2));
  }
}
