package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;
import storyrod.build.Verb;

/** A face frame or a drawer is built on the bench, where it can be squared and clamped. */
final class AssemblyBeforeFitting implements Rule {
  @Override
  public String key() {
    return "assembly-before-fitting";
  }

  @Override
  public String reason() {
    return "a sub-assembly is put together as a unit before it is fitted";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .map(Placing::unit)
        .filter(unit -> job.has(Verb.FIT, unit.level()))
        .map(unit -> need(Job.name(Verb.FIT, unit.name()), Job.name(Verb.FIT, unit.level())))
        .toList();
  }
}
