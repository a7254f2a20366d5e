package storyrod.drawing;

import java.util.List;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Part;

/**
 * The hardware of a step.
 *
 * @param coming what the step fits
 * @param on what earlier steps have mounted; what was on trial is off again
 */
record StepHardware(List<Hardware> coming, List<Hardware> on) {
  StepHardware {
    coming = List.copyOf(coming);
    on = List.copyOf(on);
  }

  /** Of a step by itself. */
  static StepHardware of(Step step, List<Hardware> all) {
    return new StepHardware(
        all.stream().filter(each -> each.placed().isFittedIn(step)).toList(), List.of());
  }

  static StepHardware of(BuildPlan plan, Step step, List<Hardware> all) {
    List<Step> before =
        plan.steps().stream()
            .filter(each -> each.number() < step.number() && each.verb() != Verb.TRIAL_FIT)
            .toList();
    return new StepHardware(
        of(step, all).coming,
        all.stream()
            .filter(Hardware::isMounted)
            .filter(each -> before.stream().anyMatch(each.placed()::isFittedIn))
            .toList());
  }

  /** What of it is put into some parts. */
  StepHardware into(List<Part> parts) {
    List<String> names = parts.stream().map(Part::name).toList();
    return new StepHardware(
        coming.stream().filter(each -> names.contains(each.placed().host())).toList(), on);
  }
}
