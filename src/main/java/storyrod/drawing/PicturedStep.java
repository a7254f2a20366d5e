package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Lazy;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/** The picture of a step before its room is known. */
sealed interface PicturedStep
    permits StepPicture, MountPicture, CutPicture, BoardPicture, GridPicture, NotedPicture {
  /**
   * Of a step that brings or tries parts, mounts hardware, cuts, glues up boards, marks, sands,
   * tries the finish, or finishes; empty of any other.
   */
  static Optional<PicturedStep> of(
      Piece piece, BuildPlan plan, Step step, List<Hardware> hardware) {
    StepHardware own = StepHardware.of(plan, step, hardware);
    Lazy<Piece> then = new Lazy<>(() -> new ByThen(plan).piece(piece, step));
    return StepPicture.of(then, step, own)
        .map(PicturedStep.class::cast)
        .or(
            () ->
                new TriedParts(plan, Nesting.of(piece))
                    .in(step)
                    .flatMap(tried -> StepPicture.of(then, tried, own)))
        .or(() -> MountPicture.of(then, plan, step, own))
        .or(() -> CutPicture.of(piece, plan, step))
        .or(() -> BoardPicture.of(piece, step))
        .or(() -> GridPicture.of(piece, plan, step))
        .or(() -> FinishPicture.of(then, plan, step))
        .or(() -> SpotPicture.of(then, plan, step, own));
  }

  /** The number of the step. */
  int step();

  /** The height in mm that the picture fills where only its width is given. */
  double heightMm(double widthMm);

  /** The picture, as large as a room allows. */
  Drawing drawn(Size room);
}
