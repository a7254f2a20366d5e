package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Groups;
import storyrod.build.Levels;
import storyrod.build.Verb;
import storyrod.geometry.Face;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * On which side the piece lies for a step that fits to it; it lies down once for steps in a row.
 *
 * @param levels what is put together into which sub-assembly: these lie on the bench as they like
 */
record Lying(Words words, List<Step> steps, Map<String, String> levels) {
  Lying {
    steps = List.copyOf(steps);
    levels = Map.copyOf(levels);
  }

  static Lying of(Piece piece, Words words, List<Step> steps) {
    return new Lying(words, steps, Levels.byUnit(piece));
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

  /** The steps before it since it was laid down so, the latest first. */
  List<Step> since(Step step) {
    List<Step> all = new ArrayList<>();
    for (Step each = step; isAlready(each); each = all.getLast()) {
      all.add(step(each.number() - 1).orElseThrow());
    }
    return all;
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

  boolean isLying(Step step) {
    return step.down() != Face.BOTTOM && step.verb() == Verb.FIT && isPieces(step);
  }

  private boolean isPieces(Step step) {
    String unit = Groups.first(step.operations().getFirst().target());
    return levels.getOrDefault(unit, Nesting.PIECE).equals(Nesting.PIECE);
  }

  /** Whether it is a first part that lies so, on its edge, and nothing together yet. */
  boolean isOnEdge(Step step) {
    return isLying(step) && step.standing().isEmpty();
  }

  /** The word for the side that lies up of a sub-assembly that lies; empty where none does. */
  String up(Step step) {
    return step.down() == Face.BOTTOM || isLying(step) ? "" : step.down().opposite().word();
  }

  private static boolean isOneWork(Step one, Step next) {
    return next.standing().containsAll(one.standing());
  }

  private Optional<Step> step(int number) {
    return steps.stream().filter(step -> step.number() == number).findFirst();
  }
}
