package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.piece.Joint;

/**
 * Hinges and slides are lined up on what stands, with the doors and drawers that they hang; a lid
 * is tried there too.
 */
final class TrialOnStandingParts implements Rule {
  @Override
  public String key() {
    return "trial-on-standing-parts";
  }

  @Override
  public String reason() {
    return "hinges, slides and sliding lids are fitted on trial when the case stands and what goes into it is made";
  }

  @Override
  public List<Need> needs(Job job) {
    Trials trials = new Trials(job.piece());
    return job.all(Verb.TRIAL_FIT)
        .flatMap(trial -> needs(job, trial, trials.partsHung(trial.target())))
        .distinct()
        .toList();
  }

  private Stream<Need> needs(Job job, Operation trial, List<String> hung) {
    return Stream.concat(standing(job, trial, hung), made(job, trial, hung));
  }

  /** What the hardware is fitted to, and all that holds this in its shape or bounds the opening. */
  private Stream<Need> standing(Job job, Operation trial, List<String> hung) {
    List<String> bearing = trial.parts().stream().filter(part -> !hung.contains(part)).toList();
    return job.placings().stream()
        .filter(placing -> !job.isLate(placing.unit()))
        .filter(
            placing ->
                placing.unit().partNames().stream().anyMatch(trial.parts()::contains)
                    || placing.closes().stream().anyMatch(joint -> joins(joint, bearing)))
        .map(placing -> need(Job.fit(placing), trial.name()));
  }

  private static boolean joins(Joint joint, List<String> parts) {
    return parts.contains(joint.first()) || parts.contains(joint.second());
  }

  private Stream<Need> made(Job job, Operation trial, List<String> hung) {
    Stream<String> worked =
        Stream.of(Verb.SIZE, Verb.CUT, Verb.DRILL)
            .flatMap(job::all)
            .filter(each -> hung.containsAll(each.parts()))
            .map(Operation::name);
    Stream<String> together =
        job.placings().stream()
            .filter(placing -> !job.isLate(placing.unit()))
            .filter(placing -> hung.containsAll(placing.unit().partNames()))
            .map(Job::fit);
    return Stream.concat(worked, together).map(before -> need(before, trial.name()));
  }
}
