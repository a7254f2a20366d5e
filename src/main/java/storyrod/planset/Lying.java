package storyrod.planset;

import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.words.Words;

/** On which side the piece lies for a step; it lies down once for steps in a row. */
record Lying(Words words, List<Step> steps) {
  Lying {
    steps = List.copyOf(steps);
  }

  /** The word for the side on which what stands is laid; empty where it stays upright. */
  String on(Step step) {
    return comesSideways(step) ? before(step) : needed(step);
  }

  /**
   * What comes in from the left or the right comes as well while the piece lies: it is left as the
   * steps before it had it, for it may not be able to stand yet.
   */
  private String before(Step step) {
    return step(step.number() - 1)
        .filter(earlier -> isOnePiece(earlier, step))
        .map(this::on)
        .orElse("");
  }

  private static boolean isOnePiece(Step earlier, Step later) {
    return earlier.verb() == Verb.FIT && later.standing().containsAll(earlier.newParts());
  }

  private static boolean comesSideways(Step step) {
    return step.enters().filter(way -> way.axis() == Axis.X).isPresent();
  }

  private String needed(Step step) {
    return step.enters()
        .filter(way -> step.verb() == Verb.FIT && !step.standing().isEmpty())
        .map(Face::opposite)
        .map(from -> "lie." + from.word())
        .filter(words::has)
        .map(words::say)
        .orElse("");
  }

  boolean isAlready(Step step) {
    return step(step.number() - 1).filter(before -> isOneLying(before, step)).isPresent();
  }

  boolean stays(Step step) {
    return step(step.number() + 1).filter(after -> isOneLying(step, after)).isPresent();
  }

  private boolean isOneLying(Step one, Step next) {
    return !on(one).isEmpty()
        && on(one).equals(on(next))
        && next.standing().containsAll(one.standing());
  }

  private Optional<Step> step(int number) {
    return steps.stream().filter(step -> step.number() == number).findFirst();
  }
}
