package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Placing;
import storyrod.build.Verb;
import storyrod.build.WeakUnits;
import storyrod.build.WeakUnits.Weak;

/**
 * What hangs on one glued line carries nothing and is not driven into: a screw or a chisel levers
 * it out of its joint as turning does. What ties it to something else is no load.
 */
public final class FirmBeforeLoading implements Rule {
  public static final String KEY = "firm-before-loading";

  @Override
  public String key() {
    return KEY;
  }

  @Override
  public String reason() {
    return "what hangs on one line of glue carries nothing and takes no screws until it is firm";
  }

  @Override
  public List<Need> needs(Job job) {
    List<Placing> order = job.built();
    return new WeakUnits(job.piece())
        .in(order.stream().map(WeakUnits.Fitted::of).toList()).stream()
            .flatMap(weak -> needs(job, order, weak))
            .distinct()
            .toList();
  }

  private Stream<Need> needs(Job job, List<Placing> order, Weak weak) {
    List<String> held = order.get(weak.unit()).unit().partNames();
    String firm = Job.fit(order.get(weak.until()));
    Stream<String> hung =
        job.placings().stream()
            .filter(placing -> !placing.unit().partNames().equals(held))
            .filter(placing -> hangsOn(placing, held) && !Job.fit(placing).equals(firm))
            .map(Job::fit);
    Stream<String> mounted =
        Stream.of(Verb.TRIAL_FIT, Verb.MOUNT)
            .flatMap(job::all)
            .filter(each -> each.parts().stream().anyMatch(held::contains))
            .map(Operation::name);
    return Stream.concat(hung, mounted).map(later -> need(firm, later));
  }

  /** Whether a unit is fastened to some parts, and to nothing else that could hold them. */
  private static boolean hangsOn(Placing placing, List<String> held) {
    return !placing.closes().isEmpty()
        && placing.closes().stream().allMatch(joint -> joint.driven().isPresent())
        && placing.closes().stream()
            .flatMap(joint -> Stream.of(joint.first(), joint.second()))
            .filter(part -> !placing.unit().partNames().contains(part))
            .allMatch(held::contains);
  }
}
