package storyrod.build;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.rule.Job;
import storyrod.build.rule.PanelBeforeFrameCloses;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.OrderEntry;
import storyrod.description.Severity;
import storyrod.description.Span;
import storyrod.description.StageEntry;
import storyrod.piece.Piece;

/** The maker's own orders, held to the rules of the trade. */
final class OwnOrder {
  static final String CODE = "order-breaks-rule";
  private final Piece piece;
  private final Diagnostics diagnostics;
  private final OwnEntries entries;
  private final Set<String> told = new TreeSet<>();
  private boolean faulty;

  OwnOrder(Piece piece, Job job, Diagnostics diagnostics) {
    this.piece = piece;
    this.diagnostics = diagnostics;
    this.entries = new OwnEntries(piece.description().build(), job);
    entries.faults().forEach(this::report);
  }

  boolean isEmpty() {
    return entries.sequences().isEmpty() && !faulty;
  }

  /** Whether every entry names an operation of this piece, once. */
  boolean isKnown() {
    return !faulty;
  }

  boolean hasFaults() {
    return faulty;
  }

  /** Where an operation stands in an order, if it does. */
  List<Span> placesOf(String operation) {
    return Optional.ofNullable(entries.entry(operation)).map(OrderEntry::at).stream().toList();
  }

  /** Whether two units may change places: no order names them, or one names both in one stage. */
  boolean mayChange(Unit one, Unit other) {
    return entries.sequences().stream()
        .allMatch(
            order -> {
              int at = order.indexOf(one.fitName());
              int next = order.indexOf(other.fitName());
              return at < 0 && next < 0
                  || at >= 0 && next == at + 1 && isOneStage(order.get(at), order.get(next));
            });
  }

  private boolean isOneStage(String one, String other) {
    return entries.stage(one).equals(entries.stage(other));
  }

  /** Whether an order names both units. */
  boolean isGiven(Unit one, Unit other) {
    return entries.sequences().stream()
        .anyMatch(order -> order.contains(one.fitName()) && order.contains(other.fitName()));
  }

  /** The units that each order fits, by level, in its order. */
  Map<String, List<List<String>>> fits(Map<String, List<Unit>> levels) {
    Map<String, List<List<String>>> fits = new LinkedHashMap<>();
    levels.forEach(
        (level, units) -> {
          List<String> names = units.stream().map(Unit::name).toList();
          fits.put(
              level,
              entries.sequences().stream()
                  .map(order -> fitted(order).filter(names::contains).toList())
                  .filter(order -> !order.isEmpty())
                  .toList());
        });
    return fits;
  }

  private Stream<String> fitted(List<String> order) {
    return order.stream()
        .map(entries::entry)
        .filter(entry -> entry.verb().equals(Verb.FIT.word()))
        .map(OrderEntry::target);
  }

  /** Reports a unit that the maker's order locks out, with what is in its way. */
  void checkFits(Assembler.Order wanted, Assembler assembler) {
    if (wanted.isComplete()) {
      return;
    }
    List<Unit> listed =
        entries.sequences().stream()
            .map(order -> listed(wanted.stuck(), order))
            .max(Comparator.comparingInt(List::size))
            .orElseThrow();
    Unit last = listed.getLast();
    String rule =
        PanelBeforeFrameCloses.isCaptured(piece.joints(), last)
            ? "panel-before-frame-closes"
            : "way-in";
    List<Unit> others = Assembler.without(wanted.stuck(), last);
    report(
        closing(last, listed, assembler)
            .map(closing -> lockedOut(last, closing, rule))
            .orElseGet(() -> lockedOut(last, assembler.trappedBy(last, others), rule)));
  }

  private static List<Unit> listed(List<Unit> units, List<String> order) {
    return units.stream()
        .filter(unit -> order.contains(unit.fitName()))
        .sorted(Comparator.comparingInt(unit -> order.indexOf(unit.fitName())))
        .toList();
  }

  /** The entry with which the last way in closes, if the listed units alone close it. */
  private static Optional<Unit> closing(Unit last, List<Unit> listed, Assembler assembler) {
    for (int i = 1; i < listed.size(); i++) {
      if (assembler.reach().ways(last, listed.subList(0, i)).isEmpty()) {
        return Optional.of(listed.get(i - 1));
      }
    }
    return Optional.empty();
  }

  private Diagnostic lockedOut(Unit last, Unit closing, String rule) {
    OrderEntry late = entries.entry(last.fitName());
    OrderEntry early = entries.entry(closing.fitName());
    return Diagnostic.error(
            CODE,
            early.at(),
            "`" + early + "` comes before `" + late + "`, but " + Breaches.why(rule))
        .also(late.at(), "`" + late + "` finds no way in here")
        .hint("move `" + late + "` up, before `" + early + "`");
  }

  /** With parts that are not in the order, which have to stand by then and leave no way in. */
  private Diagnostic lockedOut(Unit last, List<Unit> trapping, String rule) {
    OrderEntry late = entries.entry(last.fitName());
    String names = quoted(trapping.stream().map(Unit::fitName).toList());
    return Diagnostic.error(
            CODE,
            late.at(),
            "`" + late + "` cannot come after " + names + ": " + Breaches.why(rule))
        .hint("move `" + late + "` up, or name " + names + " after it in the order");
  }

  /** Reports every entry that comes before one that it has to wait for. */
  void checkRules(List<Need> needs) {
    new Breaches(entries, needs).found().forEach(this::report);
  }

  /** A fault in an order that comes along several times is told once. */
  private void report(Diagnostic diagnostic) {
    faulty |= diagnostic.severity() == Severity.ERROR;
    if (told.add(
        diagnostic.at().source().file()
            + diagnostic.at().start()
            + diagnostic.message().replaceAll("[0-9]+", "0"))) {
      diagnostics.add(diagnostic);
    }
  }

  /**
   * The tasks with those that an order names set into its stages. Of a description in use these are
   * the ones that put its unit together; its wood is worked along with the rest of the piece.
   */
  List<Task> marked(List<Task> tasks) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    Map<String, Task> marked = new LinkedHashMap<>();
    for (List<String> order : entries.sequences()) {
      Map<String, Integer> runs = runs(order, tasks);
      tasks.stream()
          .filter(task -> runs.containsKey(task.name()))
          .filter(task -> isSetApart(task))
          .forEach(
              task -> {
                StageEntry stage = entries.stage(task.name());
                String run = place(stage) + " " + runs.get(task.name());
                int number = numbers.computeIfAbsent(run, each -> numbers.size());
                marked.put(task.name() + task.index(), task.in(stage, number));
              });
    }
    return tasks.stream()
        .map(task -> marked.getOrDefault(task.name() + task.index(), task))
        .toList();
  }

  private boolean isSetApart(Task task) {
    return !entries.stage(task.name()).isBrought() || task.operation().verb() == Verb.FIT;
  }

  /** The same for the stages of all units from one text, which are built side by side. */
  private static String place(StageEntry stage) {
    Span at = stage.title().at();
    return at.source().file() + " " + at.start();
  }

  /** Puts each run of like entries of an order before the next. */
  void chain(List<Task> tasks, BiConsumer<List<Task>, List<Task>> link) {
    for (List<String> order : entries.sequences()) {
      Map<String, Integer> runs = runs(order, tasks);
      Map<Integer, List<Task>> byRun =
          tasks.stream()
              .filter(task -> runs.containsKey(task.name()))
              .collect(Collectors.groupingBy(task -> runs.get(task.name())));
      for (int run = 1; run < byRun.size(); run++) {
        link.accept(byRun.get(run - 1), byRun.get(run));
      }
    }
  }

  /** Numbers the entries so that neighbours that can be done in one step share a number. */
  private Map<String, Integer> runs(List<String> order, List<Task> tasks) {
    Map<String, Integer> runs = new LinkedHashMap<>();
    String last = "";
    int run = -1;
    for (String name : order) {
      String likeness = place(entries.stage(name)) + likeness(name, tasks);
      run += likeness.equals(last) ? 0 : 1;
      last = likeness;
      runs.put(name, run);
    }
    return runs;
  }

  private static String likeness(String name, List<Task> tasks) {
    Task task = tasks.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    return task.operation().verb() == Verb.FIT
        ? task.batch().replaceAll("@.*", "")
        : task.operation().verb().word();
  }

  static String quoted(List<String> names) {
    List<String> marked = names.stream().map(name -> "`" + name + "`").toList();
    return marked.size() < 2
        ? String.join("", marked)
        : String.join(", ", marked.subList(0, marked.size() - 1)) + " and " + marked.getLast();
  }
}
