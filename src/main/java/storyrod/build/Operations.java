package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import storyrod.description.FinishEntry;
import storyrod.description.HardwareEntry;
import storyrod.piece.Cut;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.KeptBoard;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** All operations that a piece asks for, with what each takes. */
final class Operations {
  /** The target of trying and putting on the finish. */
  static final String FINISH = "finish";

  static final String WHOLE = "piece";

  /** Minutes to crosscut one more piece off a strip against a stop (common practice, memory). */
  private static final int OFF_A_STRIP = 2;

  private final Piece piece;
  private final Traits traits;
  private final AcrossJoints across;
  private final FrontHoles fronts;
  private final SecondLeaves leaves;
  private final Surroundings round;
  private final GlueTimes glue;
  private final List<Operation> all = new ArrayList<>();

  private Operations(Piece piece, Surroundings round) {
    this.piece = piece;
    this.round = round;
    this.traits = new Traits(piece);
    this.across = new AcrossJoints(piece);
    this.fronts = new FrontHoles(piece);
    this.leaves = new SecondLeaves(piece);
    this.glue = GlueTimes.of(piece.description());
  }

  static List<Operation> of(Piece piece, List<Placing> placings, Surroundings round) {
    return new Operations(piece, round).list(placings);
  }

  private List<Operation> list(List<Placing> placings) {
    Insides insides = round.insides();
    piece.wood().stream()
        .filter(part -> piece.keptAs(part.name()).isEmpty())
        .forEach(part -> add(Verb.CHOOSE, part, List.of()));
    piece.wood().stream()
        .filter(part -> !Traits.isSheet(part) && piece.keptAs(part.name()).isEmpty())
        .forEach(part -> add(Verb.MILL, part, List.of()));
    piece.parts().stream()
        .flatMap(each -> piece.keptBoard(each.name()).stream())
        .forEach(this::addKept);
    piece.wood().stream().filter(this::isSized).forEach(part -> add(Verb.SIZE, part, List.of()));
    piece.parts().stream()
        .filter(part -> piece.keptAs(part.name()).isEmpty())
        .forEach(part -> add(Verb.MARK, part, List.of()));
    piece.parts().forEach(this::addCuts);
    PreFinished early = new PreFinished(piece, insides);
    FramePanels panels = new FramePanels(piece);
    piece.parts().stream()
        .filter(part -> insides.has(part) || early.has(part) || panels.has(part))
        .forEach(part -> add(Verb.SAND, part, List.of()));
    new DryFits(placings, round.late()).forEach(this::addDryFit);
    piece.parts().stream().filter(early::has).forEach(this::addPreFinish);
    placings.forEach(this::addFit);
    placings.stream()
        .filter(each -> round.late().isSliding(each.unit()))
        .forEach(this::addSlidingTrial);
    piece.description().finish().ifPresent(this::addFinish);
    addMounts();
    return List.copyOf(all);
  }

  private void addCuts(Part part) {
    Map<CutKind, List<Cut>> kinds = new TreeMap<>();
    Map<CutKind, List<Cut>> later = new TreeMap<>();
    part.cuts().stream()
        .filter(cut -> !isDrilledInPlace(part, cut) && !isOpening(part, cut))
        .forEach(
            cut ->
                (across.isShapedLater(part, cut) ? later : kinds)
                    .computeIfAbsent(CutKind.of(part, cut), k -> new ArrayList<>())
                    .add(cut));
    round
        .mounts()
        .early(part)
        .forEach(
            cut -> kinds.computeIfAbsent(CutKind.of(part, cut), k -> new ArrayList<>()).add(cut));
    kinds.forEach((kind, cuts) -> add(kind.verb(), part, cuts));
    later.forEach((kind, cuts) -> add(Verb.TRIM, part, cuts));
  }

  private boolean isDrilledInPlace(Part part, Cut cut) {
    return Pilots.isPilot(piece, part, cut) || fronts.guide(part, cut).isPresent();
  }

  private void addDryFit(String level, List<Unit> units) {
    List<String> parts = units.stream().flatMap(unit -> unit.partNames().stream()).toList();
    Operation one = timed(bare(Verb.DRY_FIT, DryFits.target(level), parts, List.of()));
    all.add(one.lasting(one.minutes() * units.size(), one.waitMinutes()));
  }

  /** A router or a laser leaves a kept piece in its size. */
  private boolean isSized(Part part) {
    return piece.keptAs(part.name()).filter(each -> !each.isSawn()).isEmpty();
  }

  private boolean isOpening(Part part, Cut cut) {
    return piece.keptBoard(part.name()).stream()
        .flatMap(board -> board.cutouts().stream())
        .anyMatch(each -> each.isOpening(cut));
  }

  private void addKept(KeptBoard board) {
    Part part = board.board();
    if (board.isSawn()) {
      add(Verb.BLANK, part, List.of());
    }
    List<String> touched = new ArrayList<>(List.of(part.name()));
    touched.addAll(board.kept());
    List<Cut> openings = part.cuts().stream().filter(cut -> isOpening(part, cut)).toList();
    all.add(timed(bare(Verb.KEEP, part.name(), touched, openings)));
    if (board.isSawn()) {
      add(Verb.REJOIN, part, List.of());
    }
  }

  private void add(Verb verb, Part part, List<Cut> cuts) {
    Operation one = timed(bare(verb, part.name(), List.of(part.name()), cuts));
    all.add(isOffOneStrip(part) ? one.lasting(Math.min(OFF_A_STRIP, one.minutes()), 0) : one);
  }

  /** Of what is made for the joints only the first takes the time of a part, to make its strip. */
  private boolean isOffOneStrip(Part part) {
    return piece.made().stream().anyMatch(made -> made.names().indexOf(part.name()) > 0);
  }

  private void addFit(Placing placing) {
    Unit unit = placing.unit();
    List<ItemCount> fasteners =
        Stream.concat(
                placing.closes().stream().flatMap(joint -> joint.fasteners().stream()),
                leaves.screws(unit).stream())
            .toList();
    all.add(
        timed(
            new Operation(
                Verb.FIT,
                unit.name(),
                unit.partNames(),
                drilledInPlace(placing),
                placing.closes(),
                sum(fasteners),
                0,
                0)));
  }

  /** What is drilled when a unit lies in its place, through holes that are there already. */
  private List<Cut> drilledInPlace(Placing placing) {
    return Stream.concat(
            placing.closes().stream().flatMap(joint -> Pilots.of(piece, joint).stream()),
            fronts.throughHolesOf(placing.unit()).stream())
        .toList();
  }

  /** A lid that runs in grooves is tried in them while it is bare. */
  private void addSlidingTrial(Placing lid) {
    if (piece.description().finish().isPresent()) {
      LinkedHashSet<String> parts = new LinkedHashSet<>(lid.unit().partNames());
      parts.addAll(new Trials(piece).runsIn(lid.unit().partNames()));
      all.add(timed(bare(Verb.TRIAL_FIT, lid.unit().name(), List.copyOf(parts), List.of())));
    }
  }

  private void addFinish(FinishEntry finish) {
    List<String> parts = piece.parts().stream().map(Part::name).toList();
    Operation trial = timed(bare(Verb.TEST, FINISH, List.of(), List.of()));
    all.add(trial.in(round.coats().onOffcut(finish, trial.minutes())));
    Operation coats = timed(bare(Verb.FINISH, WHOLE, parts, List.of()));
    all.add(coats.in(round.coats().onPiece(finish, coats.minutes())));
  }

  private void addPreFinish(Part part) {
    FinishEntry finish = piece.description().finish().orElseThrow();
    Operation coats = timed(bare(Verb.PRE_FINISH, part.name(), List.of(part.name()), List.of()));
    all.add(coats.in(round.coats().before(finish, part, coats.minutes())));
  }

  private void addMounts() {
    Map<String, List<HardwareEntry>> entries = new LinkedHashMap<>();
    for (HardwareEntry entry : piece.description().hardware()) {
      entries.computeIfAbsent(entry.item().value(), item -> new ArrayList<>()).add(entry);
    }
    entries.forEach(this::addMount);
  }

  private void addMount(String item, List<HardwareEntry> entries) {
    LinkedHashSet<String> parts = new LinkedHashSet<>();
    entries.forEach(entry -> entry.parts().forEach(part -> parts.add(part.value())));
    List<ItemCount> used = used(entries.stream().map(leaves::mounted).toList());
    Operation one =
        timed(
            new Operation(Verb.MOUNT, item, List.copyOf(parts), List.of(), List.of(), used, 0, 0));
    all.add(one.lasting(one.minutes() * times(item, used), one.waitMinutes()));
    if (Trials.asksFor(piece, item)) {
      parts.addAll(new Trials(piece).partsHung(item));
      Operation trial = timed(bare(Verb.TRIAL_FIT, item, List.copyOf(parts), List.of()));
      all.add(trial.lasting(trial.minutes() * times(item, used), trial.waitMinutes()));
    }
  }

  /** What entries of the hardware list use up: their items and the screws of these. */
  static List<ItemCount> used(List<HardwareEntry> entries) {
    List<ItemCount> used = new ArrayList<>();
    for (HardwareEntry entry : entries) {
      used.add(new ItemCount(entry.item().value(), entry.count()));
      entry
          .screw()
          .filter(screw -> entry.screwsEach() > 0)
          .ifPresent(screw -> used.add(new ItemCount(screw, entry.count() * entry.screwsEach())));
    }
    return sum(used);
  }

  /**
   * How often the work of mounting is done: for each slide, handle or strap, each pair of hinges.
   */
  private int times(String item, List<ItemCount> used) {
    int count =
        used.stream().filter(each -> each.item().equals(item)).mapToInt(ItemCount::count).sum();
    return switch (piece.kind(item)) {
      case SLIDE, UNDER_SLIDE, PULL, KNOB, CATCH, ANTI_TIP_STRAP -> count;
      case CONCEALED_HINGE, BUTT_HINGE -> Math.ceilDiv(count, 2);
      case WOOD_SCREW, POCKET_SCREW, BRAD, TOP_FASTENER, ROTATING_FASTENER -> 1;
      case DOWEL, BISCUIT, LOOSE_TENON, PLUG, WASHER, BUTTON -> 1;
      case SHELF_PIN, FOOT, LEVELLING_FOOT, OTHER -> 1;
    };
  }

  /** Adds up the counts of each item, in the order in which the items come first. */
  static List<ItemCount> sum(List<ItemCount> counts) {
    Map<String, Integer> byItem = new LinkedHashMap<>();
    counts.forEach(each -> byItem.merge(each.item(), each.count(), Integer::sum));
    return byItem.entrySet().stream()
        .map(each -> new ItemCount(each.getKey(), each.getValue()))
        .toList();
  }

  private static Operation bare(Verb verb, String target, List<String> parts, List<Cut> cuts) {
    return new Operation(verb, target, parts, cuts, List.of(), List.of(), 0, 0);
  }

  private Operation timed(Operation op) {
    List<String> words = traits.of(op);
    return op.lasting(Figures.STANDARD.work(words), glue.waiting(words));
  }
}
