package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import storyrod.build.rule.Job;
import storyrod.piece.KeptCutout;
import storyrod.piece.Part;

/** Gives operations their stages and batches, so that one setting of a machine serves all parts. */
final class Tasks {
  /** The piece is turned for feet and glides, so they come before what makes it heavy. */
  private static final int FEET_FIRST = -1;

  private static final List<String> KEPT = List.of("size-kept", "size-rejoined");

  /** A kept piece is trimmed while the glue of its board cures. */
  private static final List<String> PHASES =
      List.of("blank", "keep", "rejoin", "size-kept", "size-rejoined");

  /** More than a level has units. */
  private static final int OF_ONE_LEVEL = 1000;

  private static final int BEFORE_ALL = -1;
  private static final int LAST_OF_LEVEL = OF_ONE_LEVEL - 1;

  private static final int STRAP_LAST = Integer.MAX_VALUE;

  private final Job job;
  private final Traits traits;
  private final FitGroups groups;
  private final List<CutKind> kinds;
  private final List<String> stocks;

  private Tasks(Job job, FitGroups groups) {
    this.job = job;
    this.groups = groups;
    this.traits = new Traits(job.piece());
    this.kinds =
        List.copyOf(
            new TreeSet<>(
                job.operations().stream()
                    .filter(each -> each.verb() == Verb.CUT || each.verb() == Verb.DRILL)
                    .map(this::kind)
                    .toList()));
    this.stocks = List.copyOf(job.piece().description().stock().keySet());
  }

  static List<Task> of(Job job, FitGroups groups) {
    Tasks tasks = new Tasks(job, groups);
    List<Task> list = new ArrayList<>();
    job.operations().forEach(operation -> list.add(tasks.task(list.size(), operation)));
    return List.copyOf(list);
  }

  private Task task(int index, Operation operation) {
    return switch (operation.verb()) {
      case CHOOSE -> task(index, operation, StageKey.MILLING, BEFORE_ALL);
      case MILL -> milling(index, operation);
      case BLANK, KEEP, REJOIN -> keeping(index, operation);
      case SIZE -> sizing(index, operation);
      case MARK -> marking(index, operation);
      case CUT, DRILL -> cutting(index, operation);
      case SAND -> task(index, operation, StageKey.JOINTS, kinds.size());
      case DRY_FIT -> dryFitting(index, operation);
      case PRE_FINISH -> preFinishing(index, operation);
      case FIT -> fitting(index, operation);
      case TRIM -> trimming(index, operation);
      case TRIAL_FIT -> task(index, operation, StageKey.ASSEMBLY, LAST_OF_LEVEL, operation.name());
      case TEST -> task(index, operation, StageKey.TRIAL, 0);
      case FINISH -> task(index, operation, StageKey.FINISHING, 0);
      case MOUNT -> mounting(index, operation);
    };
  }

  private Task milling(int index, Operation operation) {
    String trait = traits.of(operation).getFirst();
    int kind = List.of("mill-layers", "mill-panel", "mill-solid").indexOf(trait);
    return byStock(index, operation, StageKey.MILLING, kind * stocks.size());
  }

  /** A panel that has been glued up rests while the joints of all other parts are cut. */
  private Task sizing(int index, Operation operation) {
    if (!KEPT.contains(traits.of(operation).getFirst())) {
      return plainSizing(index, operation);
    }
    return keeping(index, operation);
  }

  private Task plainSizing(int index, Operation operation) {
    return traits.isPanel(job.piece().part(operation.target()))
        ? byStock(index, operation, StageKey.JOINTS, kinds.size() + 2)
        : byStock(index, operation, StageKey.SIZING, 0);
  }

  /** What is done to boards of which pieces are kept, in this order, after the other boards. */
  private Task keeping(int index, Operation operation) {
    Part part = board(operation);
    boolean isPanel = traits.isPanel(part);
    int phase = 1 + PHASES.indexOf(phase(operation));
    int rank = phase * stocks.size() + stocks.indexOf(part.stock().name());
    return new Task(
        index,
        operation,
        isPanel ? StageKey.JOINTS : StageKey.SIZING,
        isPanel ? kinds.size() + 2 + rank : rank,
        "keep " + isPanel + " " + rank,
        Optional.empty());
  }

  private String phase(Operation operation) {
    return operation.verb() == Verb.SIZE
        ? traits.of(operation).getFirst()
        : operation.verb().word();
  }

  /** The board that is cut, or of which the part is cut out. */
  private Part board(Operation operation) {
    String target = operation.target();
    return job.piece().part(job.piece().keptAs(target).map(KeptCutout::board).orElse(target));
  }

  /** All at once when the last of them has its size; a panel that rests is marked when it has. */
  private Task marking(int index, Operation operation) {
    boolean isPanel = traits.isPanel(job.piece().part(operation.target()));
    int sized = (1 + PHASES.size()) * stocks.size();
    return isPanel
        ? task(index, operation, StageKey.JOINTS, kinds.size() + 2 + sized)
        : task(index, operation, StageKey.SIZING, sized);
  }

  private Task byStock(int index, Operation operation, StageKey stage, int rank) {
    Part part = job.piece().part(operation.target());
    return task(index, operation, stage, rank + stocks.indexOf(part.stock().name()));
  }

  private Task cutting(int index, Operation operation) {
    return task(index, operation, StageKey.JOINTS, kinds.indexOf(kind(operation)));
  }

  private CutKind kind(Operation operation) {
    return CutKind.of(job.piece().part(operation.target()), operation.cuts().getFirst());
  }

  private Task mounting(int index, Operation operation) {
    return new Task(
        index,
        operation,
        StageKey.HARDWARE,
        mountingRank(traits.of(operation).getFirst()),
        operation.name(),
        Optional.empty());
  }

  private static int mountingRank(String trait) {
    return switch (trait) {
      case "mount-foot", "mount-levelling-foot" -> FEET_FIRST;
      case "mount-anti-tip-strap" -> STRAP_LAST;
      default -> 1;
    };
  }

  private Task fitting(int index, Operation operation) {
    Placing placing =
        job.placings().stream()
            .filter(each -> each.name().equals(operation.name()))
            .findFirst()
            .orElseThrow();
    int place = groups.number(placing);
    StageKey stage = stage(placing.unit());
    int rank = stage == StageKey.HARDWARE && job.late().isTop(placing.unit()) ? 0 : 2 + place;
    int level = levels().indexOf(placing.unit().level());
    return new Task(
        index,
        operation,
        stage,
        stage == StageKey.SUB_ASSEMBLIES ? OF_ONE_LEVEL * level + place : rank,
        groups.batch(placing),
        Optional.empty());
  }

  /** Sub-assemblies of which none is part of another are put together dry in one step. */
  private Task dryFitting(int index, Operation operation) {
    String level = operation.target();
    if (level.equals(Operations.WHOLE)) {
      return task(index, operation, StageKey.ASSEMBLY, BEFORE_ALL, operation.name());
    }
    int depth = depth(level);
    int rank = depth == 0 ? BEFORE_ALL : OF_ONE_LEVEL * levels().indexOf(level) + BEFORE_ALL;
    return task(index, operation, StageKey.SUB_ASSEMBLIES, rank, "dry-fit " + depth);
  }

  /** Parts are finished early together where their dry fits are one step too. */
  private Task preFinishing(int index, Operation operation) {
    String level =
        job.placings().stream()
            .map(Placing::unit)
            .filter(unit -> unit.name().equals(operation.target()))
            .map(Unit::level)
            .findFirst()
            .orElseThrow();
    boolean isInPiece = level.equals(Unit.PIECE);
    String batch = "pre-finish " + (isInPiece ? Operations.WHOLE : depth(level));
    StageKey stage = isInPiece ? StageKey.ASSEMBLY : StageKey.SUB_ASSEMBLIES;
    int rank = isInPiece || depth(level) == 0 ? 0 : OF_ONE_LEVEL * levels().indexOf(level);
    return task(index, operation, stage, rank + BEFORE_ALL, batch);
  }

  /** How many sub-assemblies stand one in the other in a sub-assembly. */
  private int depth(String level) {
    return job.placings().stream()
        .map(Placing::unit)
        .filter(unit -> unit.level().equals(level) && levels().contains(unit.name()))
        .mapToInt(unit -> 1 + depth(unit.name()))
        .max()
        .orElse(0);
  }

  private Task trimming(int index, Operation operation) {
    String level = new AcrossJoints(job.piece()).level(operation.target()).orElseThrow();
    boolean isInPiece = level.equals(Unit.PIECE);
    return task(
        index,
        operation,
        isInPiece ? StageKey.ASSEMBLY : StageKey.SUB_ASSEMBLIES,
        (isInPiece ? 0 : OF_ONE_LEVEL * levels().indexOf(level)) + LAST_OF_LEVEL - 1,
        "trim " + level + kind(operation));
  }

  private List<String> levels() {
    return List.copyOf(groups.byLevel().keySet());
  }

  private StageKey stage(Unit unit) {
    if (job.isLate(unit)) {
      return StageKey.HARDWARE;
    }
    return unit.level().equals(Unit.PIECE) ? StageKey.ASSEMBLY : StageKey.SUB_ASSEMBLIES;
  }

  private static Task task(int index, Operation operation, StageKey stage, int rank) {
    return task(index, operation, stage, rank, operation.verb().word() + " " + rank);
  }

  private static Task task(int index, Operation operation, StageKey stage, int rank, String batch) {
    return new Task(index, operation, stage, rank, batch, Optional.empty());
  }
}
