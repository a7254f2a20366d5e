package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Placing;
import storyrod.build.Verb;
import storyrod.build.WeakUnits;
import storyrod.build.WeakUnits.Weak;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/**
 * What hangs on one glued line carries nothing and is not driven into: a screw or a chisel levers
 * it out of its joint as turning does. So does the weight of a part or of a whole sub-assembly that
 * is set on it. What ties it to something else is no load.
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
    return job.placings().stream()
        .map(placing -> placing.unit().level())
        .distinct()
        .map(level -> new Level(job, job.built(level)))
        .flatMap(Level::needs)
        .distinct()
        .toList();
  }

  /** What is fitted to a sub-assembly or to the piece, in order. */
  private final class Level {
    private final Job job;
    private final List<Placing> order;
    private final WeakUnits units;
    private final List<Weak> weak;

    Level(Job job, List<Placing> order) {
      this.job = job;
      this.order = order;
      this.units = new WeakUnits(job.piece());
      this.weak = units.in(order.stream().map(WeakUnits.Fitted::of).toList());
    }

    Stream<Need> needs() {
      return weak.stream().flatMap(this::needs);
    }

    private Stream<Need> needs(Weak each) {
      List<String> held = parts(each);
      String firm = Job.fit(order.get(each.until()));
      Stream<String> hung =
          job.placings().stream()
              .filter(placing -> !placing.unit().partNames().equals(held))
              .filter(placing -> hangsOn(placing, held) && !Job.fit(placing).equals(firm))
              .map(Job::fit);
      Stream<String> mounted =
          Stream.of(Verb.TRIAL_FIT, Verb.MOUNT)
              .flatMap(job::all)
              .filter(op -> op.parts().stream().anyMatch(held::contains))
              .map(Operation::name);
      return Stream.of(hung, mounted, loads(each))
          .flatMap(later -> later)
          .map(later -> need(firm, later));
    }

    private List<String> parts(Weak each) {
      return order.get(each.unit()).unit().partNames();
    }

    /**
     * What is heavy and set from above on what is weak alone, unless it is needed to stiffen it.
     */
    private Stream<String> loads(Weak each) {
      Placing firm = order.get(each.until());
      return order.subList(each.from() + 1, order.size()).stream()
          .filter(load -> load.enters().filter(Face.BOTTOM::equals).isPresent())
          .filter(load -> units.isLoad(load.unit().partNames()))
          .filter(load -> isOn(load, parts(each)) && restsOnWeak(load))
          .filter(load -> !load.equals(firm) && !isOn(firm, load.unit().partNames()))
          .map(Job::fit);
    }

    private boolean restsOnWeak(Placing load) {
      int place = order.indexOf(load);
      List<String> held =
          weak.stream()
              .filter(each -> each.from() < place && !standsOnTheBench(each))
              .flatMap(each -> parts(each).stream())
              .toList();
      return met(load).allMatch(held::contains);
    }

    /** Whether something reaches down to where all stands, so that no joint bears its load. */
    private boolean standsOnTheBench(Weak each) {
      return lowest(parts(each))
          .equals(lowest(order.stream().flatMap(p -> p.unit().partNames().stream()).toList()));
    }

    private Length lowest(List<String> parts) {
      return parts.stream()
          .map(part -> job.piece().part(part).bounds().at(Face.BOTTOM))
          .reduce(Length::min)
          .orElseThrow();
    }
  }

  private static boolean isOn(Placing unit, List<String> parts) {
    return met(unit).anyMatch(parts::contains);
  }

  /** The parts that a unit is joined to as it comes. */
  private static Stream<String> met(Placing placing) {
    return placing.closes().stream()
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .filter(part -> !placing.unit().partNames().contains(part));
  }

  /** Whether a unit is fastened to some parts, and to nothing else that could hold them. */
  private static boolean hangsOn(Placing placing, List<String> held) {
    return !placing.closes().isEmpty()
        && placing.closes().stream().allMatch(joint -> joint.driven().isPresent())
        && met(placing).allMatch(held::contains);
  }
}
