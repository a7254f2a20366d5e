package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Catches;
import storyrod.build.DryFits;
import storyrod.build.Levels;
import storyrod.build.Lining;
import storyrod.build.Operation;
import storyrod.build.Surround;
import storyrod.build.Trials;
import storyrod.build.TriedLids;
import storyrod.build.Verb;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Joint;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The values of what is put together, or hung, on trial. */
final class TrialData {
  /** The kinds of what lies hidden in both parts of a joint. */
  private static final List<String> INSERTS = List.of("dowel", "biscuit", "loose-tenon");

  private final Piece piece;
  private final PartPhrases phrases;
  private final List<Step> steps;
  private final Map<String, String> levels;
  private final Trials trials;

  TrialData(Piece piece, PartPhrases phrases, List<Step> steps) {
    this.piece = piece;
    this.phrases = phrases;
    this.steps = steps;
    this.levels = Levels.byUnit(piece);
    this.trials = new Trials(piece);
  }

  /** What a step puts together dry: sub-assemblies, or the piece. */
  Map<String, Object> dry(Step step) {
    Map<String, List<String>> byLevel = new LinkedHashMap<>();
    for (Operation operation : step.operations()) {
      Optional.ofNullable(levels.get(operation.target()))
          .ifPresent(
              level ->
                  byLevel
                      .computeIfAbsent(level, key -> new ArrayList<>())
                      .addAll(operation.parts()));
    }
    List<Map<String, Object>> together = new ArrayList<>();
    byLevel.forEach((level, parts) -> together.addAll(phrases.units(parts, level)));
    boolean leaning =
        step.operations().stream()
            .flatMap(each -> each.parts().stream())
            .anyMatch(part -> piece.part(part).pose().isTurned());
    return Map.of(
        "together", together,
        "whole", whole(step),
        "leaning", leaning,
        "letInDry", inserts(step),
        "buttedDry", phrases.marks(butted(step)),
        "onlyButted", closedLater(step).allMatch(this::isLoose),
        "lids", phrases.parts(new TriedLids(piece, steps).in(step)));
  }

  /**
   * What lies in both parts of joints that are closed now and glued later, by kind. What joins one
   * sub-assembly to another has its turn when these are put together.
   */
  private List<Map<String, Object>> inserts(Step step) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    closedLater(step)
        .flatMap(joint -> joint.fasteners().stream())
        .filter(this::isInsert)
        .forEach(
            each ->
                counts.merge(
                    Words.hyphenated(piece.kind(each.item())), each.count(), Integer::sum));
    return counts.entrySet().stream()
        .<Map<String, Object>>map(each -> Map.of("kind", each.getKey(), "count", each.getValue()))
        .toList();
  }

  /** What meets another part with a plain face, on which nothing holds it before glue or screws. */
  private List<String> butted(Step step) {
    return closedLater(step)
        .filter(this::isLoose)
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .distinct()
        .toList();
  }

  private boolean isLoose(Joint joint) {
    return joint.holding()
        && new ButtedJoints(piece).have(joint)
        && joint.fasteners().stream().noneMatch(this::isInsert);
  }

  private boolean isInsert(Joint.ItemCount fastener) {
    return INSERTS.contains(Words.hyphenated(piece.kind(fastener.item())));
  }

  private Stream<Joint> closedLater(Step step) {
    return step.operations().stream().flatMap(trial -> closedLater(step, trial)).distinct();
  }

  private Stream<Joint> closedLater(Step step, Operation trial) {
    return steps.stream()
        .filter(later -> later.number() > step.number())
        .flatMap(later -> later.operations().stream())
        .flatMap(operation -> operation.joints().stream())
        .filter(joint -> trial.parts().contains(joint.first()))
        .filter(joint -> trial.parts().contains(joint.second()));
  }

  /** The sub-assemblies that were put together before, and do not come apart again. */
  private List<Map<String, Object>> whole(Step step) {
    return step.operations().stream()
        .flatMap(each -> phrases.units(each.parts(), inside(each.target())).stream())
        .filter(unit -> unit.get("mark").equals(""))
        .toList();
  }

  private String inside(String target) {
    return piece.description().assemblies().containsKey(target) ? target : Nesting.PIECE;
  }

  /** The low parts that a step's hardware is screwed to unseen, and how high they are. */
  List<Map<String, Object>> hiddenEdges(Step step) {
    return new HiddenEdges(piece, phrases).behindCovers(hosts(entries(step)));
  }

  private List<HardwareEntry> entries(Step step) {
    String item = step.operations().getFirst().target();
    return piece.description().hardware().stream()
        .filter(entry -> entry.item().value().equals(item))
        .toList();
  }

  /** What hardware hangs, and how much of it there is. */
  Map<String, Object> hanging(Step step) {
    String item = step.operations().getFirst().target();
    List<HardwareEntry> entries = entries(step);
    List<String> hung = step.verb() == Verb.TRIAL_FIT ? trials.partsHung(item) : hung(item);
    Grip grip = new Grip(piece);
    return Map.of(
        "grips", grip.wood(item).stream().map(wood -> grip(grip, wood)).toList(),
        "covered", covered(entries),
        "backed", new Surround(piece).hasBack(),
        "caught", caught(entries),
        "keptFronts", phrases.parts(keptFronts(item)),
        "hung", phrases.units(hung, Nesting.PIECE),
        "shares", entries.stream().map(this::share).toList(),
        "linings",
            entries.stream()
                .flatMap(entry -> Lining.of(piece, entry).stream())
                .map(this::lining)
                .toList(),
        "slidIn", phrases.parts(trials.runsIn(hung)),
        "tried",
            Map.of(
                "kind", Words.hyphenated(piece.kind(item)),
                "title", piece.item(item).map(ItemEntry::title).orElse(item),
                "count", entries.stream().mapToInt(HardwareEntry::count).sum(),
                "back", back(step, item),
                "screws",
                    entries.stream().mapToInt(each -> each.count() * each.screwsEach()).sum()));
  }

  /** What takes strikes, what carries catches, and how high. */
  private Map<String, Object> caught(List<HardwareEntry> entries) {
    Catches catches = new Catches(piece);
    return Map.of(
        "doors", phrases.parts(catches.doors(entries)),
        "posts", phrases.parts(catches.posts(entries)),
        "ends", catchEnds(entries));
  }

  /** How far from which ends of the doors catches sit, each distance once. */
  private List<Map<String, Object>> catchEnds(List<HardwareEntry> entries) {
    Catches catches = new Catches(piece);
    return entries.stream()
        .flatMap(entry -> catches.ends(entry).stream())
        .map(
            end ->
                Map.<String, Object>of(
                    "face", end.face().word(),
                    "distance", piece.description().printed().formatWithUnit(end.distance())))
        .distinct()
        .toList();
  }

  /** The later steps that mount what is fitted on trial now, for good. */
  private List<Integer> back(Step step, String item) {
    return steps.stream()
        .filter(later -> later.number() > step.number())
        .filter(
            later ->
                later.operations().stream()
                    .anyMatch(op -> op.verb() == Verb.MOUNT && op.target().equals(item)))
        .map(Step::number)
        .toList();
  }

  private Map<String, Object> grip(Grip grip, Length wood) {
    LengthFormat format = piece.description().printed();
    return Map.of(
        "wood", format.formatWithUnit(wood),
        "held", format.formatWithUnit(grip.held()),
        "all", format.formatWithUnit(wood.plus(grip.held())));
  }

  /** What lies over the rear side of parts that hardware is screwed to from behind. */
  private List<Map<String, Object>> covered(List<HardwareEntry> entries) {
    return phrases.parts(
        new HiddenEdges(piece, phrases).covers(hosts(entries)).map(Part::name).toList());
  }

  private List<Part> hosts(List<HardwareEntry> entries) {
    return entries.stream()
        .flatMap(entry -> entry.parts().stream())
        .map(name -> piece.part(name.value()))
        .toList();
  }

  private Map<String, Object> lining(Lining lining) {
    LengthFormat format = piece.description().printed();
    Length one = lining.across().length();
    Length other = lining.along().length();
    return Map.of(
        "on", phrases.parts(List.of(lining.host().name())),
        "length", format.formatWithUnit(one.max(other)),
        "width", format.formatWithUnit(one.min(other)),
        "free", format.formatWithUnit(Lining.FREE));
  }

  /** How many go to which parts. */
  private Map<String, Object> share(HardwareEntry entry) {
    return Map.of(
        "count",
        entry.count(),
        "parts",
        phrases.parts(entry.parts().stream().map(each -> each.value()).toList()));
  }

  private List<String> hung(String item) {
    return Trials.asksFor(piece, item) ? trials.partsHung(item) : List.of();
  }

  /** The fronts of what an item hangs that are cut out of other parts. */
  private List<String> keptFronts(String item) {
    List<String> units =
        hung(item).stream().flatMap(part -> piece.part(part).assembly().stream()).toList();
    return piece.parts().stream()
        .filter(part -> part.assembly().filter(units::contains).isPresent())
        .filter(part -> piece.keptAs(part.name()).isPresent())
        .map(Part::name)
        .toList();
  }

  /** Whether all that a step fits was together before without glue. */
  boolean isTriedDry(Step step) {
    List<String> tried =
        steps.stream()
            .filter(each -> each.verb() == Verb.DRY_FIT && each.number() < step.number())
            .flatMap(each -> each.operations().stream())
            .map(Operation::target)
            .toList();
    return step.operations().stream()
        .map(fit -> levels.getOrDefault(fit.target(), Nesting.PIECE))
        .map(DryFits::target)
        .allMatch(tried::contains);
  }

  /** Whether what hangs parts was fitted on trial. */
  boolean isTried(List<String> parts) {
    return piece.description().hardware().stream()
        .filter(entry -> entry.parts().stream().anyMatch(part -> parts.contains(part.value())))
        .anyMatch(entry -> Trials.asksFor(piece, entry.item().value()));
  }
}
