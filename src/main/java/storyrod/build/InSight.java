package storyrod.build;

import java.math.RoundingMode;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * How much of a face one sees from the front, in at open bays. One looks straight back, a little
 * over what lies, and from there at the face; parts are taken as the boxes round them.
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
    Range before = new Range(at, at).extended(face.sign(), OVER);
    Length over = before.end(face.sign());
    Box level = part.bounds().with(face.axis(), new Range(over, over));
    List<Box> others = others(part);
    return share(
        level,
        face,
        cell ->
            isFree(cell.extended(Face.FRONT, FAR), others)
                && isFree(cell.with(face.axis(), before), others));
  }

  /** How much of a face has nothing straight before it, from 0 to 1. */
  double open(Part part, Face face) {
    Length at = part.bounds().at(face);
    Box level = part.bounds().with(face.axis(), new Range(at, at));
    List<Box> others = others(part);
    return share(level, face, cell -> isFree(cell.extended(face, FAR), others));
  }

  private List<Box> others(Part part) {
    return parts.stream().filter(each -> !each.equals(part)).map(Part::bounds).toList();
  }

  private static double share(Box level, Face face, Predicate<Box> seen) {
    long cells =
        IntStream.range(0, CELLS * CELLS).mapToObj(i -> cell(level, face, i)).filter(seen).count();
    return (double) cells / (CELLS * CELLS);
  }

  private static boolean isFree(Box line, List<Box> others) {
    for (Box other : others) {
      if (line.overlaps(other)) {
        return false;
      }
    }
    return true;
  }

  /** A cell of a level, as a thin box. */
  private static Box cell(Box level, Face face, int cell) {
    Box thin = level;
    int number = cell;
    for (Axis axis : Axis.values()) {
      boolean isAcross = axis == face.axis();
      thin = thin.with(axis, thin(level.on(axis), isAcross ? 0 : number % CELLS));
      number = isAcross ? number : number / CELLS;
    }
    return thin;
  }

  private static Range thin(Range range, int cell) {
    Length from =
        range
            .from()
            .plus(range.length().times(2 * cell + 1).dividedBy(2 * CELLS, RoundingMode.DOWN));
    return new Range(from, from.plus(Length.mm(1)));
  }
}
