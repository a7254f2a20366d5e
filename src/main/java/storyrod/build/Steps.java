package storyrod.build;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.build.rule.Job;
import storyrod.description.HardwareEntry;
import storyrod.description.StageEntry;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Part;

/** Makes numbered steps of batches of operations. */
final class Steps implements Filling.Maker {
  /** Longer than this, a glue-up takes two (common practice). */
  private static final Length LONG = Length.inches(48);

  private final Job job;
  private final Traits traits;
  private final Settings settings;
  private final Weight weight;
  private final Circumstances circumstances;
  private final Lying lying;
  private final Entrance entrance;
  private final OnBench onBench;
  private final Map<String, Placing> placings;

  /** The steps made so far, before they have their numbers, by whether what stands is heavy. */
  private final Map<List<Task>, Map<Boolean, Step>> made = new IdentityHashMap<>();

  Steps(Job job) {
    this.job = job;
    this.traits = new Traits(job.piece());
    this.settings = new Settings(job);
    this.weight = new Weight(job.piece());
    this.circumstances = new Circumstances(job.piece());
    this.lying = new Lying(job.late());
    this.entrance = new Entrance(job.piece(), lying);
    this.onBench = new OnBench(job.piece());
    this.placings = job.placings().stream().collect(Collectors.toMap(Placing::name, p -> p));
  }

  @Override
  public List<Step> of(List<List<Task>> batches) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < batches.size(); i++) {
      Step step = step(batches.get(i), steps).numbered(steps.size() + 1);
      boolean goesOn = i + 1 < batches.size() && goesOn(batches.get(i), batches.get(i + 1));
      steps.add(laid(goesOn ? step.withoutWait() : step, steps));
    }
    return List.copyOf(steps);
  }

  private Step laid(Step step, List<Step> before) {
    Optional<Placing> first = placings(step.operations()).findFirst();
    return onBench
        .down(step, first)
        .or(() -> first.map(placing -> lying.down(placing, step, before)))
        .map(step::lying)
        .orElse(step);
  }

  /** Whether fasteners hold the work, so that more can be added to it while the glue sets. */
  @Override
  public boolean goesOn(List<Task> batch, List<Task> next) {
    List<Operation> operations = batch.stream().map(Task::operation).toList();
    List<String> words = traits(operations);
    return words.contains("fit-glue-held")
        && !words.contains("fit-glue")
        && levels(operations).equals(levels(next.stream().map(Task::operation).toList()));
  }

  private Set<String> levels(List<Operation> operations) {
    return placings(operations).map(p -> p.unit().level()).collect(Collectors.toSet());
  }

  private Step step(List<Task> batch, List<Step> before) {
    boolean onHeavy =
        batch.getFirst().operation().verb() == Verb.MOUNT && weight.isHeavy(standing(before));
    return made.computeIfAbsent(batch, each -> new TreeMap<>())
        .computeIfAbsent(onHeavy, each -> make(batch, onHeavy));
  }

  /** What is in its place in the piece by then, and is moved with it. */
  private List<String> standing(List<Step> before) {
    return before.stream()
        .flatMap(step -> placings(step.operations()))
        .map(Placing::unit)
        .filter(unit -> unit.level().equals(Unit.PIECE))
        .flatMap(unit -> unit.partNames().stream())
        .toList();
  }

  private Step make(List<Task> batch, boolean onHeavy) {
    List<Operation> operations = batch.stream().map(Task::operation).toList();
    List<String> said = said(batch);
    List<String> words = new ArrayList<>(traits(operations));
    words.addAll(handling(operations, onHeavy));
    operations.forEach(each -> words.addAll(circumstances.of(each, said)));
    if (words.equals(List.of("fit-first"))) {
      words.add("fit-level");
    }
    List<Setting> set = settings.of(operations);
    if (operations.getFirst().verb() == Verb.FIT && set.stream().anyMatch(Squares::isDiagonal)) {
      words.add("fit-square");
    }
    if (set.stream().anyMatch(setting -> setting.key().startsWith("set-"))) {
      words.add("fit-marked");
    }
    List<String> comeNew = newParts(operations);
    Step step =
        new Step(
            0,
            stage(batch.getFirst()),
            operations,
            comeNew,
            standing(operations, comeNew),
            enters(operations),
            mirrored(operations),
            placings(operations).flatMap(placing -> placing.firstMove().stream()).findFirst(),
            Lying.UPRIGHT,
            hardware(operations),
            Figures.STANDARD.tools(words),
            Figures.STANDARD.cautions(words),
            set,
            said,
            Figures.STANDARD.setUp(words) + operations.stream().mapToInt(Operation::minutes).sum(),
            Math.max(
                operations.stream().mapToInt(Operation::waitMinutes).max().orElse(0),
                GlueTimes.of(job.piece().description()).waiting(words)));
    return glued(step);
  }

  /** With its clamps, and the waits of all turns in which they go round. */
  private Step glued(Step step) {
    GlueUp once = new ClampsInUse(job.piece()).of(step);
    int turned = once.clampMinutes() * (GlueTurns.of(job.piece(), step).turns() - 1);
    return step.gluing(
        step.waitMinutes() + turned,
        new GlueUp(once.clamps(), once.clampMinutes() + turned, once.curedMinutes()));
  }

  private static Stage stage(Task task) {
    return task.own()
        .map(own -> new Stage("own", Optional.of(own.title().value())))
        .orElseGet(() -> new Stage(task.stage().word(), Optional.empty()));
  }

  private List<String> traits(List<Operation> operations) {
    Set<String> words = new LinkedHashSet<>();
    operations.forEach(operation -> words.addAll(traits.of(operation)));
    operations.stream()
        .filter(weight::isHeavy)
        .forEach(operation -> words.add(operation.verb().word() + "-heavy"));
    if (words.contains("fit-glue") && needsHelper(operations)) {
      words.add("fit-helper");
    }
    if (isTurned(operations)) {
      words.add("fit-turned-heavy");
    }
    placings(operations).flatMap(entrance::traits).forEach(words::add);
    return List.copyOf(words);
  }

  /** Whether a long part comes in, or what comes in has to meet the ends of two that are long. */
  private boolean needsHelper(List<Operation> operations) {
    List<String> comeIn = operations.stream().flatMap(each -> each.parts().stream()).toList();
    long met =
        operations.stream()
            .flatMap(operation -> operation.joints().stream())
            .flatMap(joint -> Stream.of(joint.first(), joint.second()))
            .distinct()
            .filter(part -> !comeIn.contains(part) && isLong(part))
            .count();
    return met > 1 || comeIn.stream().anyMatch(this::isLong);
  }

  private boolean isLong(String part) {
    return job.piece().part(part).finishedLength().isLongerThan(LONG);
  }

  /** Whether a heavy piece is laid down, or stood up with what came on from below or outside. */
  private boolean isTurned(List<Operation> operations) {
    return placings(operations)
        .filter(lying::isLaidDown)
        .map(placing -> Stream.of(placing.standing(), placing.unit().partNames()))
        .anyMatch(lifted -> weight.isHeavy(lifted.flatMap(List::stream).distinct().toList()));
  }

  /** What a heavy piece asks for that is turned over for its feet, or brought to its wall. */
  private List<String> handling(List<Operation> operations, boolean onHeavy) {
    if (!onHeavy) {
      return List.of();
    }
    String mounts = traits.of(operations.getFirst()).getFirst();
    return mounts.endsWith("foot")
        ? List.of("mount-heavy")
        : mounts.equals("mount-anti-tip-strap") ? List.of("mount-moved-heavy") : List.of();
  }

  private List<String> newParts(List<Operation> operations) {
    return operations.stream()
        .filter(operation -> operation.verb() == Verb.FIT)
        .flatMap(operation -> operation.parts().stream())
        .toList();
  }

  private List<String> standing(List<Operation> operations, List<String> comeNew) {
    return placings(operations)
        .flatMap(placing -> placing.standing().stream())
        .filter(part -> !comeNew.contains(part))
        .distinct()
        .toList();
  }

  private Optional<Face> enters(List<Operation> operations) {
    return placings(operations).flatMap(placing -> placing.enters().stream()).findFirst();
  }

  /** The parts that come against the way of the first ones. */
  private List<String> mirrored(List<Operation> operations) {
    Optional<Face> against = enters(operations).map(Face::opposite);
    return placings(operations)
        .filter(placing -> against.isPresent() && placing.enters().equals(against))
        .flatMap(placing -> placing.unit().partNames().stream())
        .toList();
  }

  private Stream<Placing> placings(List<Operation> operations) {
    return operations.stream()
        .filter(operation -> operation.verb() == Verb.FIT)
        .map(operation -> placings.get(operation.name()));
  }

  private static List<ItemCount> hardware(List<Operation> operations) {
    return Operations.sum(
        operations.stream().flatMap(operation -> operation.hardware().stream()).toList());
  }

  private List<String> said(List<Task> batch) {
    Stream<String> own = batch.stream().flatMap(this::saidInStages);
    return Stream.concat(batch.stream().map(Task::operation).flatMap(this::saidOfWhatItIs), own)
        .distinct()
        .toList();
  }

  /** Under a part's name a stage speaks of what is in its order, and without one of all. */
  private Stream<String> saidInStages(Task task) {
    return job.piece().description().build().stream()
        .flatMap(
            stage ->
                stage.say().entrySet().stream()
                    .filter(say -> OwnWords.meant(say.getKey(), task.operation()))
                    .filter(say -> say.getKey().equals(task.name()) || isIn(stage, task))
                    .map(Map.Entry::getValue));
  }

  private static boolean isIn(StageEntry stage, Task task) {
    return stage.order().isEmpty()
        || stage.names(task.name())
        || task.own().filter(stage::equals).isPresent();
  }

  private Part part(Operation operation) {
    return job.piece().part(operation.target());
  }

  /** What the maker says of a part and of those that are cut out of it. */
  private Stream<String> said(Operation operation) {
    Stream<Part> kept =
        job.piece().keptBoard(operation.target()).stream()
            .flatMap(board -> board.kept().stream())
            .map(job.piece()::part);
    return Stream.concat(Stream.of(part(operation)), kept).flatMap(each -> each.say().stream());
  }

  private Stream<String> saidOfWhatItIs(Operation operation) {
    return switch (operation.verb()) {
      case MILL -> said(operation);
      case BLANK -> Traits.isSheet(part(operation)) ? said(operation) : Stream.empty();
      case SIZE -> traits.of(operation).contains("size-sheet") ? said(operation) : Stream.empty();
      case TRIAL_FIT, MOUNT ->
          traits.mounted(operation).stream().map(HardwareEntry::say).flatMap(Optional::stream);
      case CHOOSE, MARK -> Stream.empty();
      case KEEP, REJOIN, CUT, DRILL, SAND, DRY_FIT, PRE_FINISH, FIT -> Stream.empty();
      case TRIM, TEST, FINISH -> Stream.empty();
    };
  }
}
