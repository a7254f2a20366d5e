package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.rule.Job;
import storyrod.description.Diagnostic;
import storyrod.piece.Piece;

/** What the steps of a plan show that neither piece nor order does: tools and clamps at work. */
record StepFindings(Job job, Surroundings round) {
  List<Diagnostic> of(List<Step> steps) {
    Piece piece = job.piece();
    return Stream.of(
            new MissingTools(piece).among(steps),
            new HardwareRoom(piece).findings(),
            new DriverReach(job).findings(),
            new MountReach(piece, round.mounts()).findings(steps),
            new ClampFaces(piece).findings(steps),
            new ClampsTooFew(piece).findings(steps))
        .flatMap(List::stream)
        .toList();
  }
}
