package storyrod.planset;

import storyrod.build.BuildPlan.Step;

/** Puts a step into words. */
@FunctionalInterface
interface Wording {
  StepText of(Step step);
}
