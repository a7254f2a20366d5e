package storyrod.build;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * Tells whether other parts stand up round a face, as the sides of a drawer do round its bottom: in
 * their corners no sander gets and a hand with paper badly (common practice). A strip that stands
 * up less is but a lip, and what stands on two sides leaves a way to sand through. On a board that
 * is narrower than the sander's pad, the pad reaches over the edge: there a wall that stands off it
 * is in the way too.
 *
 * <p>The limits are our own. Parts that stand askew are taken as the boxes round them.
 */
final class Walls {
  /** How far a wall stands up from the face, at least. */
  private static final Length HIGH = Length.mm(20);

  /** How far from the end of the face a wall may stand: the face runs on into a groove. */
  private static final Length NEAR = Length.mm(15);

  /** The pad of a usual sander (common practice). */
  private static final Length PAD = Length.inches(5);

  /** How much of a side has to be walled. */
  private static final double LONG = 0.5;

  private static final int SIDES = 3;

  private final List<Part> others;

  Walls(List<Part> others) {
    this.others = others;
  }

  /** Whether walls stand on three sides of a face, or on all four. */
  boolean areRound(Part part, Face face) {
    Box box = part.bounds();
    Length at = box.at(face);
    Box before = box.with(face.axis(), new Range(at, at).extended(face.sign(), HIGH));
    long walled =
        Arrays.stream(Face.values())
            .filter(side -> side.axis() != face.axis())
            .filter(side -> isWalled(before, side, face.axis()))
            .count();
    return walled >= SIDES;
  }

  private boolean isWalled(Box before, Face side, Axis high) {
    Length end = before.at(side);
    Length over = before.size(side.axis()).isShorterThan(PAD) ? PAD : Length.ZERO;
    Range strip = new Range(end, end).extended(-side.sign(), NEAR).extended(side.sign(), over);
    Box zone = before.with(side.axis(), strip);
    Axis along = other(side.axis(), high);
    double walled =
        others.stream()
            .flatMap(each -> zone.shared(each.bounds()).stream())
            .filter(wall -> wall.size(high).equals(HIGH))
            .mapToDouble(wall -> wall.size(along).toMm())
            .sum();
    return walled >= LONG * zone.size(along).toMm();
  }

  private static Axis other(Axis one, Axis two) {
    return Stream.of(Axis.values())
        .filter(axis -> axis != one && axis != two)
        .findFirst()
        .orElseThrow();
  }
}
