package storyrod.build;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * Tells whether the inside face of a part lies too deep for a brush and a rag: in a gap that takes
 * no hand, or farther in than an arm reaches. A space that is closed all round does not count, for
 * nobody sees it.
 *
 * <p>The limits are our own, by a hand with a brush in it. The gap is taken as one box between the
 * face and what is across from it, a side of it as open if less than half is covered.
 */
final class BrushReach {
  private static final List<Limit> LIMITS =
      List.of(
          new Limit(Length.mm(80), Length.mm(150)), // no hand: only what the brush reaches
          new Limit(Length.mm(300), Length.mm(600))); // no shoulder: only what an arm reaches

  /** How much of a face has to lie in the gap, as of one that is hard to sand. */
  private static final double COVERED = 0.25;

  private static final double CLOSED = 0.5;
  private static final Length THIN = Length.mm(1);

  private final Part part;
  private final Face face;
  private final List<Part> others;

  BrushReach(Part part, Face face, List<Part> others) {
    this.part = part;
    this.face = face;
    this.others = others;
  }

  /** How deep a gap up to some width may be. */
  private record Limit(Length gap, Length depth) {}

  /** The gap before the face, if a part of it lies too deep. */
  Optional<Box> gap() {
    return LIMITS.stream().flatMap(limit -> gap(limit).stream()).findFirst();
  }

  private Optional<Box> gap(Limit limit) {
    Box before = part.bounds().with(face.axis(), next(part.bounds(), face, limit.gap()));
    List<Box> across =
        others.stream()
            .filter(this::isAcross)
            .flatMap(each -> before.shared(each.bounds()).stream())
            .toList();
    double faced = across.stream().mapToDouble(each -> areaMm2(each, face.axis())).sum();
    if (across.isEmpty() || faced < COVERED * areaMm2(part.bounds(), face.axis())) {
      return Optional.empty();
    }
    Box all = across.stream().reduce(Box::around).orElseThrow();
    Box gap = all.with(face.axis(), between(all));
    double depth =
        Arrays.stream(Axis.values())
            .filter(axis -> axis != face.axis())
            .mapToDouble(axis -> depthMm(gap, axis))
            .min()
            .orElseThrow();
    return depth > limit.depth().toMm() && Double.isFinite(depth)
        ? Optional.of(gap)
        : Optional.empty();
  }

  /** Whether a part begins only beyond the plane of the face, as walls beside the gap do not. */
  private boolean isAcross(Part other) {
    Length away = other.bounds().at(face.opposite()).minus(part.bounds().at(face));
    return face.sign() > 0 ? away.isPositive() : away.isNegative();
  }

  private Range between(Box across) {
    Length near = part.bounds().at(face);
    Length far = across.at(face.opposite());
    return face.sign() > 0 ? new Range(near, far) : new Range(far, near);
  }

  /** How far in its deepest place lies from its open sides along an axis; without one, no end. */
  private double depthMm(Box gap, Axis axis) {
    boolean low = isOpen(gap, Face.of(axis, -1));
    boolean high = isOpen(gap, Face.of(axis, 1));
    double length = gap.size(axis).toMm();
    return low && high ? length / 2 : low || high ? length : Double.POSITIVE_INFINITY;
  }

  private boolean isOpen(Box gap, Face side) {
    Box beyond = gap.with(side.axis(), next(gap, side, THIN));
    double covered =
        others.stream()
            .flatMap(each -> beyond.shared(each.bounds()).stream())
            .mapToDouble(Box::volumeMm3)
            .sum();
    return covered < CLOSED * beyond.volumeMm3();
  }

  /** What lies beyond a face of a box, as far as a length goes. */
  private static Range next(Box box, Face face, Length far) {
    Length at = box.at(face);
    return new Range(at, at).extended(face.sign(), far);
  }

  /** Whether a face of a part is a wall of a gap. */
  static boolean isWall(Part part, Face face, Box gap) {
    Box before = part.bounds().with(face.axis(), next(part.bounds(), face, THIN));
    return before.overlaps(gap);
  }

  private static double areaMm2(Box box, Axis through) {
    return box.volumeMm3() / box.size(through).toMm();
  }
}
