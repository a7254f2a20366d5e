package storyrod.planset;

import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Face;
import storyrod.words.Words;

/** On which side the piece lies for a step; it lies down once for steps in a row. */
record Lying(Words words, List<Step> steps) {
  Lying {
    steps = List.copyOf(steps);
  }

  /** The word for the side on which what stands is laid; empty where it stands upright. */
  String on(Step step) {
    return isLying(step) ? words.say("lie." + step.down().word()) : "";
  }

  /** Whether it lies so from the step before. */
  boolean isAlready(Step step) {
    return step(step.number() - 1)
        .filter(before -> isLying(before) && isOneWork(before, step))
        .filter(before -> before.down() == step.down())
        .isPresent();
  }

  /** Whether the step before has left it on another side, from which it is turned over. */
  boolean isTurnedOver(Step step) {
    return isLying(step)
        && step(step.number() - 1)
            .filter(before -> isLying(before) && isOneWork(before, step))
            .filter(before -> before.down() != step.down())
            .isPresent();
  }

  /** Whether the next step takes it as it lies. */
  boolean stays(Step step) {
    return step(step.number() + 1).filter(this::isAlready).isPresent();
  }

  /** Whether the next step turns it over. */
  boolean isTurnedNext(Step step) {
    return step(step.number() + 1).filter(this::isTurnedOver).isPresent();
  }

  /** Whether a step, by its number, leaves it lying for no other step. */
  boolean isStoodUpAfter(int number) {
    return step(number)
        .filter(each -> isLying(each) && !stays(each) && !isTurnedNext(each))
        .isPresent();
  }

  /** Whether nobody lifts or turns it: it lies as it did before the step and after it. */
  boolean isLeft(Step step) {
    return isAlready(step) && stays(step) && !isTurnedNext(step);
  }

  static boolean isLying(Step step) {
    return step.down() != Face.BOTTOM;
  }

  private static boolean isOneWork(Step one, Step next) {
    return next.standing().containsAll(one.standing());
  }

  private Optional<Step> step(int number) {
    return steps.stream().filter(step -> step.number() == number).findFirst();
  }
}
