package storyrod.drawing;

import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.PocketHoles;

/**
 * How much of a joint and its parts a drawing shows.
 *
 * @param core the joint itself, of a long one its first end, of one with holes what is around them
 * @param beside how much is shown beside it
 * @param all the joint with some of both parts around it, and ends that are near
 */
record JointWindow(Box core, Length beside, Box all) {
  /** Of a joint this many times as long as it is thick, only the end is shown. */
  private static final int LONG = 3;

  /** What is shown beside a joint, as a share of its size, and its bounds in mm of the piece. */
  private static final double BESIDE = 0.45;

  private static final double LEAST_BESIDE_MM = 7;
  private static final double MOST_BESIDE_MM = 18;

  /** How much of where the parts meet is shown beside holes. */
  private static final double HOLE_BESIDE_MM = 12;

  /** An end of a part no further off than this share of what is shown beside is shown too. */
  private static final double NEAR = 1.6;

  static JointWindow of(JointPlace place) {
    return new Frame(place).window();
  }

  private record Frame(JointPlace place) {
    JointWindow window() {
      Box core = drilled().orElseGet(this::fromEnd);
      Length beside = beside(core);
      Box all = core;
      for (Axis axis : Axis.values()) {
        Range shown = core.on(axis).extended(-1, beside).extended(1, beside);
        all = all.with(axis, withEnds(axis, shown, Length.nearest(NEAR * beside.toMm())));
      }
      return new JointWindow(core, beside, all);
    }

    /** A pocket hole with its screw is long: where it is shown, little else can be. */
    private Length beside(Box core) {
      double size = place.pockets().isEmpty() ? thickness(core).toMm() : 0;
      return Length.nearest(Math.clamp(BESIDE * size, LEAST_BESIDE_MM, MOST_BESIDE_MM));
    }

    private Box contact() {
      return place.joint().contact();
    }

    private Box fromEnd() {
      Box core = contact();
      for (Cut cut : place.squareCuts().toList()) {
        core = JointPart.box(cut).map(core::around).orElse(core);
      }
      Range whole = contact().on(place.longer());
      Length end = whole.from().plus(thickness(core).times(LONG)).min(whole.to());
      return core.with(place.longer(), new Range(whole.from(), end));
    }

    /** Where holes from the meeting faces are its only cuts, what is around the shown ones. */
    private Optional<Box> drilled() {
      boolean isDrilled =
          place
              .squareCuts()
              .allMatch(cut -> cut instanceof Cut.Holes || cut instanceof PocketHoles);
      return place.row().filter(each -> isDrilled).map(this::around);
    }

    private Box around(JointRow row) {
      Axis normal = place.normal();
      Box core = contact();
      for (Cut cut : place.squareCuts().toList()) {
        Range deep = JointPart.box(cut).orElseThrow().on(normal);
        core = core.with(normal, core.on(normal).around(deep));
      }
      for (Cylinder bore : place.pockets()) {
        core = core.with(normal, core.on(normal).around(JointPockets.along(normal, bore)));
      }
      for (Axis axis : DimensionSides.inPlane(place.joint().firstFace())) {
        core = core.with(axis, row.around(axis, Length.nearest(HOLE_BESIDE_MM)));
      }
      return core;
    }

    private Length thickness(Box core) {
      return core.size(place.shorter())
          .max(core.size(place.normal()))
          .max(Length.nearest(LEAST_BESIDE_MM));
    }

    private Range withEnds(Axis axis, Range shown, Length near) {
      Length from = shown.from();
      Length to = shown.to();
      for (JointPart each : place.parts()) {
        Range own = each.part().bounds().on(axis);
        boolean endsLow =
            own.from().isShorterThan(from) && !own.from().isShorterThan(from.minus(near));
        boolean endsHigh = own.to().isLongerThan(to) && !own.to().isLongerThan(to.plus(near));
        from = endsLow ? own.from() : from;
        to = endsHigh ? own.to() : to;
      }
      return new Range(from, to);
    }
  }
}
