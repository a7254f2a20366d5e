package storyrod.planset;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;

/** Which way the cuts of a step run on their parts. */
record CutWays(Piece piece) {
  /** Whether a slope takes off an edge at an end of its part, across the grain. */
  boolean slopesAcross(Step step) {
    return step.operations().stream()
        .anyMatch(
            operation ->
                Cut.only(Slanted.Slope.class, operation.cuts()).stream()
                    .flatMap(slope -> Stream.of(slope.from(), slope.towards()))
                    .map(Face::axis)
                    .anyMatch(axis -> axis == piece.part(operation.target()).length()));
  }

  /** The letter of the axis along which all slots are long; empty where they differ. */
  String slotsRun(Step step) {
    List<Axis> ways =
        step.operations().stream()
            .flatMap(operation -> Cut.only(Slots.class, operation.cuts()).stream())
            .map(Slots::along)
            .distinct()
            .toList();
    return ways.size() == 1 ? ways.getFirst().name().toLowerCase(Locale.ROOT) : "";
  }
}
