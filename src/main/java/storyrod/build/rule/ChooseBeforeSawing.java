package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/**
 * What is sawn up cannot be chosen any more: the longest parts and those of one grain come first.
 */
final class ChooseBeforeSawing implements Rule {
  @Override
  public String key() {
    return "choose-before-sawing";
  }

  @Override
  public String reason() {
    return "boards are chosen for all parts before the first is sawn up";
  }

  @Override
  public List<Need> needs(Job job) {
    return Stream.of(Verb.MILL, Verb.BLANK, Verb.SIZE)
        .flatMap(verb -> job.onEachPart(this, Verb.CHOOSE, verb).stream())
        .toList();
  }
}
