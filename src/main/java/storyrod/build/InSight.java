package storyrod.build;

import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * How much of a face one sees from the front, in at open bays. One looks straight back, a little
 * over what lies; parts are taken as the boxes round them.
 */
final class InSight {
  private static final Length FAR = Length.inches(1000);

  /** How far over a face one looks in: eyes are above a bottom and look over its front rail. */
  private static final Length OVER = Length.mm(50);

  private static final int CELLS = 16;

  private final List<Part> parts;

  InSight(List<Part> parts) {
    this.parts = parts;
  }

  /** From 0, all hidden, to 1. */
  double share(Part part, Face face) {
    Length at = part.bounds().at(face);
    Length over = new Range(at, at).extended(face.sign(), OVER).end(face.sign());
    Box level = part.bounds().with(face.axis(), new Range(over, over));
    List<Box> others = parts.stream().filter(each -> !each.equals(part)).map(Part::bounds).toList();
    long seen =
        IntStream.range(0, CELLS * CELLS)
            .mapToObj(i -> sight(level, face, i))
            .filter(sight -> others.stream().noneMatch(sight::overlaps))
            .count();
    return (double) seen / (CELLS * CELLS);
  }

  /** The line along which one sees a cell of a level, as a thin box. */
  private static Box sight(Box level, Face face, int cell) {
    Box thin = level;
    int number = cell;
    for (Axis axis : Axis.values()) {
      boolean isAcross = axis == face.axis();
      thin = thin.with(axis, thin(level.on(axis), isAcross ? 0 : number % CELLS));
      number = isAcross ? number : number / CELLS;
    }
    return thin.extended(Face.FRONT, FAR);
  }

  private static Range thin(Range range, int cell) {
    Length from =
        range
            .from()
            .plus(range.length().times(2 * cell + 1).dividedBy(2 * CELLS, RoundingMode.DOWN));
    return new Range(from, from.plus(Length.mm(1)));
  }
}
