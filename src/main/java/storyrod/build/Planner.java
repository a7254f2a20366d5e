package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Need;
import storyrod.build.BuildPlan.Step;
import storyrod.build.rule.BackLast;
import storyrod.build.rule.FirmBeforeLoading;
import storyrod.build.rule.Job;
import storyrod.build.rule.Rules;
import storyrod.build.rule.StiffBeforeTurning;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;

/**
 * Finds an order of work for a piece.
 *
 * <ol>
 *   <li>For each sub-assembly and for the piece, the order in which units go together, by geometry;
 *       what can only go in as a group becomes a sub-assembly.
 *   <li>All operations, and what the rules put before what.
 *   <li>The maker's own order held against that.
 *   <li>A list of steps that keeps all of it and batches what is alike.
 * </ol>
 */
public final class Planner {
  /** Rules that choose between ways in, where these leave a choice. */
  private static final List<String> CHOICES =
      List.of(StiffBeforeTurning.KEY, FirmBeforeLoading.KEY, BackLast.KEY);

  private final Piece piece;
  private final Diagnostics diagnostics;
  private final Reach reach;
  private final Late late;
  private final Assembler assembler;
  private final GlueUps glueUps;
  private final Surroundings round;
  private Map<String, List<Unit>> levels;

  private Planner(Piece piece, Diagnostics diagnostics) {
    this.piece = piece;
    this.diagnostics = diagnostics;
    this.reach = new Reach(piece.parts());
    this.levels = Levels.of(piece);
    this.late = Late.of(piece);
    this.assembler = new Assembler(reach, piece.joints(), late);
    this.round =
        new Surroundings(
            new Insides(piece),
            late,
            new MountLines(piece, reach.driving(), late),
            new Coats(piece));
    this.glueUps = new GlueUps(piece.description());
  }

  /** The plan; none if the piece cannot be put together or the maker's order breaks a rule. */
  public static Optional<BuildPlan> plan(Piece piece, Diagnostics diagnostics) {
    return new Planner(piece, diagnostics).plan();
  }

  private Optional<BuildPlan> plan() {
    Map<String, Assembler.Order> free = inGroups(orders(Map.of()));
    free.values().stream().filter(order -> !order.isComplete()).forEach(this::reportStuck);
    if (!free.values().stream().allMatch(Assembler.Order::isComplete)) {
      return Optional.empty();
    }
    OwnOrder own = new OwnOrder(piece, job(free), diagnostics);
    if (own.isEmpty()) {
      return finished(stiffened(free, own), own);
    }
    return own.isKnown() ? owned(own, free) : Optional.empty();
  }

  /** Where units are stuck, those that go together first become a unit of a level of their own. */
  private Map<String, Assembler.Order> inGroups(Map<String, Assembler.Order> orders) {
    Groups groups = new Groups(reach, piece.joints());
    for (Map.Entry<String, Assembler.Order> each : orders.entrySet()) {
      if (!each.getValue().isComplete()) {
        Optional<Unit> group = groups.among(each.getValue().stuck());
        if (group.isPresent()) {
          levels = with(group.get(), each.getKey());
          return inGroups(orders(Map.of()));
        }
      }
    }
    return orders;
  }

  private Map<String, List<Unit>> with(Unit group, String level) {
    Map<String, List<Unit>> grouped = new LinkedHashMap<>();
    levels.forEach(
        (name, units) -> {
          if (name.equals(level)) {
            grouped.put(group.name(), Groups.inside(units, group));
          }
          grouped.put(name, name.equals(level) ? Groups.grouped(units, group) : units);
        });
    return grouped;
  }

  private Optional<BuildPlan> owned(OwnOrder own, Map<String, Assembler.Order> free) {
    Map<String, Assembler.Order> wanted = orders(own.fits(levels));
    wanted.forEach((level, order) -> own.checkFits(order, assembler));
    Map<String, Assembler.Order> possible = new LinkedHashMap<>(free);
    wanted.forEach(
        (level, order) ->
            possible.computeIfPresent(level, (l, o) -> order.isComplete() ? order : o));
    own.checkRules(
        Rules.needs(job(possible)).stream().filter(need -> !isGuess(need, wanted)).toList());
    if (own.hasFaults()) {
      return Optional.empty();
    }
    return finished(orders(settledFits(wanted, own)), own);
  }

  /** Whether a need comes from a way in that the maker's order has already been found to close. */
  private static boolean isGuess(Need need, Map<String, Assembler.Order> wanted) {
    return List.of("way-in", "panel-before-frame-closes").contains(need.rule())
        && wanted.values().stream()
            .filter(order -> !order.isComplete())
            .anyMatch(order -> order.names().contains(need.after()));
  }

  /** The order of fitting that the maker's order leads to when the rest is placed round it. */
  private Map<String, List<List<String>>> settledFits(
      Map<String, Assembler.Order> orders, OwnOrder own) {
    Job job = job(orders);
    Map<String, String> levelOf =
        job.placings().stream()
            .collect(Collectors.toMap(Placing::name, placing -> placing.unit().level()));
    Map<String, List<List<String>>> fits = new LinkedHashMap<>();
    List<Task> tasks = own.marked(Tasks.of(job, fitGroups(job)));
    for (List<Task> batch : Scheduling.of(tasks, Rules.needs(job), own).batches()) {
      batch.stream()
          .map(Task::operation)
          .filter(operation -> operation.verb() == Verb.FIT)
          .forEach(
              operation ->
                  fits.computeIfAbsent(
                          levelOf.get(operation.name()), l -> List.of(new ArrayList<>()))
                      .getFirst()
                      .add(operation.target()));
    }
    return fits;
  }

  /** An order in which nothing weak is turned over, if there is one; else the one given. */
  private Map<String, Assembler.Order> stiffened(
      Map<String, Assembler.Order> orders, OwnOrder own) {
    if (isKept(job(orders))) {
      return orders;
    }
    Map<String, Assembler.Order> stiffened = orders(settledFits(orders, own));
    boolean isComplete = stiffened.values().stream().allMatch(Assembler.Order::isComplete);
    return isComplete ? stiffened : orders;
  }

  private static boolean isKept(Job job) {
    return Rules.needs(job).stream().allMatch(need -> isKept(need, job));
  }

  /** Whether an order of fitting turns nothing that is still weak; other rules made it. */
  private static boolean isKept(Need need, Job job) {
    if (!CHOICES.contains(need.rule())) {
      return true;
    }
    List<String> fits = job.placings().stream().map(Placing::name).toList();
    return !fits.contains(need.after()) || fits.indexOf(need.before()) < fits.indexOf(need.after());
  }

  private Optional<BuildPlan> finished(Map<String, Assembler.Order> orders, OwnOrder own) {
    Job job = job(arranged(orders, own));
    FitGroups groups = fitGroups(job);
    List<Task> tasks = own.marked(Tasks.of(job, groups));
    List<Need> needs = Rules.needs(job).stream().filter(need -> isKept(need, job)).toList();
    Scheduler scheduler = Scheduling.of(tasks, needs, own);
    groups.chain(
        tasks, (earlier, later) -> Scheduling.link(scheduler, earlier, later, Link.GEOMETRY));
    List<List<Task>> batches = scheduler.batches();
    if (batches.stream().mapToInt(List::size).sum() < tasks.size()) {
      diagnostics.add(new NoOrder(piece, tasks, own).diagnostic(scheduler.circle()));
      return Optional.empty();
    }
    Steps maker = new Steps(job);
    List<List<Task>> filled =
        new Filling(maker, scheduler.links(), piece.description().shop()).of(batches);
    List<Step> steps = StageRuns.joined(maker.of(filled));
    diagnostics.addAll(new StepFindings(job, round).of(steps));
    List<Diagnostic> strays = new RecordSteps(steps).faults(piece.description().record());
    if (!strays.isEmpty()) {
      diagnostics.addAll(strays);
      return Optional.empty();
    }
    return Optional.of(new BuildPlan(steps, needs, Precedence.between(filled, scheduler.links())));
  }

  private FitGroups fitGroups(Job job) {
    return new FitGroups(job.placings(), late, glueUps);
  }

  /** Orders that begin as best can be and turn the piece over as seldom as can be. */
  private Map<String, Assembler.Order> arranged(Map<String, Assembler.Order> orders, OwnOrder own) {
    Map<String, Assembler.Order> begun = new LinkedHashMap<>(orders);
    Beginning beginning = new Beginning(reach, glueUps, own::mayChange);
    begun.replaceAll((level, order) -> order.with(beginning.of(order.placings())));
    Job job = job(begun);
    List<List<Placing>> groups = fitGroups(job).byLevel().getOrDefault(Unit.PIECE, List.of());
    Map<String, Assembler.Order> turned = new LinkedHashMap<>(begun);
    turned.computeIfPresent(
        Unit.PIECE,
        (level, order) -> order.with(new StepOrder(job, groups, own::isGiven).fewestTurns()));
    return twinned(turned.equals(begun) || isKept(job(turned)) ? turned : begun, own);
  }

  /** Orders with equal units and mirror images together, if no rule speaks against it. */
  private Map<String, Assembler.Order> twinned(Map<String, Assembler.Order> orders, OwnOrder own) {
    Job job = job(orders);
    Map<String, Assembler.Order> twinned =
        Twins.together(orders, fitGroups(job), groups -> new StepOrder(job, groups, own::isGiven));
    return twinned.equals(orders) || isKept(job(twinned)) ? twinned : orders;
  }

  private Map<String, Assembler.Order> orders(Map<String, List<List<String>>> own) {
    Map<String, Assembler.Order> orders = new LinkedHashMap<>();
    levels.forEach(
        (level, units) ->
            orders.put(level, assembler.order(units, own.getOrDefault(level, List.of()))));
    return orders;
  }

  private Job job(Map<String, Assembler.Order> orders) {
    List<Placing> placings =
        orders.values().stream().flatMap(order -> order.placings().stream()).toList();
    List<Operation> operations = Operations.of(piece, placings, round);
    return new Job(piece, operations, placings, reach, late);
  }

  private void reportStuck(Assembler.Order order) {
    List<Unit> stuck = order.stuck();
    Unit first = stuck.getFirst();
    List<Unit> trapping = assembler.trappedBy(first, Assembler.without(stuck, first));
    String all = OwnOrder.quoted(stuck.stream().map(Unit::name).toList());
    Diagnostic fault =
        Diagnostic.error(
            "no-way-in",
            first.parts().getFirst().at(),
            "no order lets " + all + " go together: each stands in the way of another");
    for (Unit unit : trapping) {
      fault =
          fault.also(
              unit.parts().getFirst().at(), "this keeps `" + first.name() + "` in its place");
    }
    diagnostics.add(
        fault.hint(
            "let one of their grooves or dados run out at an edge, divide one of them, or leave one"
                + " out"));
  }
}
