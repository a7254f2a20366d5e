package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Sanding comes after the machines, or it is done twice. */
final class SandAfterMachining implements Rule {
  @Override
  public String key() {
    return "sand-after-machining";
  }

  @Override
  public String reason() {
    return "the last marks of machine and pencil are sanded off in one go";
  }

  @Override
  public List<Need> needs(Job job) {
    return Stream.of(Verb.SIZE, Verb.CUT, Verb.DRILL)
        .flatMap(verb -> job.onEachPart(this, verb, Verb.SAND).stream())
        .toList();
  }
}
