package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.rule.Job;
import storyrod.description.HardwareEntry;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Joint;
import storyrod.piece.KeptBoard;
import storyrod.piece.KeptCutout;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** Values worth setting on a machine, or worth checking, for the operations of one step. */
final class Settings {
  private final Job job;
  private final Squares squares;
  private final Seats.Finder seats;
  private final Reveals reveals;
  private final Guides guides;

  Settings(Job job) {
    this.seats = Seats.in(job.piece());
    this.job = job;
    this.reveals = new Reveals(job.piece());
    this.guides = new Guides(job.piece());
    this.squares = new Squares(job);
  }

  List<Setting> of(List<Operation> operations) {
    Set<Setting> settings = new LinkedHashSet<>();
    operations.forEach(operation -> settings.addAll(of(operation)));
    return List.copyOf(settings);
  }

  private List<Setting> of(Operation operation) {
    return switch (operation.verb()) {
      case MILL -> thickness(part(operation));
      case BLANK -> blank(part(operation));
      case KEEP -> kept(operation);
      case REJOIN -> openings(operation);
      case SIZE -> size(part(operation));
      case CUT, DRILL, TRIM -> machine(part(operation), operation.cuts());
      case FIT -> fit(operation);
      case TRIAL_FIT -> joined(mount(operation), reveals.of(operation));
      case MOUNT -> Trials.asksFor(job.piece(), operation.target()) ? List.of() : mount(operation);
      case CHOOSE, MARK, SAND, DRY_FIT, PRE_FINISH, TEST, FINISH -> List.of();
    };
  }

  private Part part(Operation operation) {
    return job.piece().part(operation.target());
  }

  private List<Setting> thickness(Part part) {
    return List.of(
        new Setting(
            Traits.isPanel(job.piece(), part) ? "finished-thickness" : "thickness",
            Optional.empty(),
            part.finishedThickness()));
  }

  private List<Setting> size(Part part) {
    Optional<String> shown = shown(part);
    Length length = part.finishedLength();
    Length width = part.finishedWidth();
    Setting along = new Setting("length", shown, length);
    Setting across = new Setting("width", shown, width);
    return job.piece().isStaved(part) && !job.piece().isLaminated(part)
        ? List.of(along, across, new Setting("diagonal", shown, Squares.diagonal(length, width)))
        : List.of(along, across);
  }

  private List<Setting> blank(Part part) {
    Optional<String> shown = shown(part);
    return List.of(
        new Setting("length", shown, part.finishedLength()),
        new Setting("width", shown, job.piece().blankWidth(part)));
  }

  /** What the tool takes, and what the kept pieces measure as they come off it. */
  private List<Setting> kept(Operation operation) {
    KeptBoard board = job.piece().keptBoard(operation.target()).orElseThrow();
    List<Setting> settings = new ArrayList<>();
    settings.add(new Setting("kept-by-" + board.method().word(), Optional.empty(), board.kerf()));
    for (KeptCutout each : board.cutouts()) {
      Optional<String> shown = shown(job.piece().part(each.kept()));
      settings.add(new Setting("kept-length", shown, each.keptLength()));
      settings.add(new Setting("kept-width", shown, each.widthOffTheTool()));
    }
    return settings;
  }

  private List<Setting> openings(Operation operation) {
    KeptBoard board = job.piece().keptBoard(operation.target()).orElseThrow();
    Optional<String> shown = shown(board.board());
    return board.cutouts().stream()
        .map(each -> new Setting("opening-length", shown, each.along().length()))
        .toList();
  }

  private List<Setting> machine(Part part, List<Cut> cuts) {
    if (cuts.getFirst() instanceof Slanted.Slope slope) {
      return SlopeSettings.slanted(slope);
    }
    if (cuts.getFirst() instanceof Dovetails dovetails) {
      return SlopeSettings.dovetailed(dovetails);
    }
    if (cuts.getFirst() instanceof Cut.Tenon) {
      return TenonSettings.of(job.piece(), part, cuts);
    }
    List<Setting> settings = new ArrayList<>();
    CutKind kind = CutKind.of(part, cuts.getFirst());
    String key = kind.verb().word() + "-" + sizeKey(cuts.getFirst());
    if (kind.size().isPositive()) {
      settings.add(new Setting(key, Optional.empty(), kind.size()));
    }
    if (kind.depth().isPositive()) {
      settings.add(new Setting(kind.verb().word() + "-depth", Optional.empty(), kind.depth()));
    }
    Cut.only(Cut.Trench.class, cuts).stream()
        .filter(trench -> CutKind.isCutOut(part, trench))
        .map(trench -> new Setting("cut-length", shown(part), CutKind.run(part, trench)))
        .forEach(settings::add);
    countersink(cuts).ifPresent(settings::add);
    if (cuts.getFirst() instanceof Slots slots) {
      settings.add(new Setting("slot-length", Optional.empty(), slots.length()));
    }
    if (cuts.getFirst() instanceof Slanted.Housing housing) {
      settings.add(Setting.of("lean-angle", housing.lean()));
    }
    settings.addAll(guides.of(part, cuts));
    return settings;
  }

  private static Optional<Setting> countersink(List<Cut> cuts) {
    return Cut.only(Cut.Holes.class, cuts).stream()
        .map(Cut.Holes::countersink)
        .filter(Length::isPositive)
        .max(Length::compareTo)
        .map(head -> new Setting("countersink-diameter", Optional.empty(), head));
  }

  private List<Setting> fit(Operation operation) {
    List<Setting> settings = new ArrayList<>(squares.diagonal(operation).stream().toList());
    for (Joint joint : operation.joints()) {
      Pilots.of(job.piece(), joint).forEach(cut -> settings.addAll(pilot(joint, cut)));
      settings.addAll(new MountHoles(job.piece()).of(joint));
    }
    settings.addAll(throughFront(operation));
    placing(operation)
        .ifPresent(
            placing -> {
              settings.addAll(seats(operation, placing));
              settings.addAll(overhangs(placing));
            });
    return joined(settings, reveals.of(operation));
  }

  /** The bit with which the box of a drawer is drilled through its front's holes. */
  private List<Setting> throughFront(Operation operation) {
    return Cut.only(Cut.Holes.class, operation.cuts()).stream()
        .filter(cut -> FrontHoles.isForHandle(job.piece(), cut))
        .map(cut -> new Setting("through-front-diameter", Optional.empty(), cut.diameter()))
        .toList();
  }

  private static List<Setting> joined(List<Setting> some, List<Setting> others) {
    return Stream.concat(some.stream(), others.stream()).toList();
  }

  private Optional<Placing> placing(Operation operation) {
    return job.placings().stream().filter(p -> p.name().equals(operation.name())).findFirst();
  }

  private List<Setting> seats(Operation operation, Placing placing) {
    return seats.of(operation, placing.standing()).stream()
        .filter(seat -> seat.distance().isPositive())
        .map(this::setting)
        .toList();
  }

  private Setting setting(Seat seat) {
    String how =
        switch (seat.how()) {
          case PAST -> "set-past-";
          case MIDDLE -> "set-middle-";
          default -> seat.isOffInnerFace(job.piece()) ? "set-inner-" : "set-from-";
        };
    return new Setting(
        how + seat.face().word(), shown(job.piece().part(seat.on())), seat.distance());
  }

  /** How far a top, with all its parts, stands out past all that stands; where it is flush, 0. */
  private List<Setting> overhangs(Placing placing) {
    if (!job.late().isTop(placing.unit()) || placing.standing().isEmpty()) {
      return List.of();
    }
    List<Part> top = placing.unit().parts();
    List<Part> standing = placing.standing().stream().map(job.piece()::part).toList();
    List<Setting> all =
        Stream.of(Face.values())
            .filter(face -> face.axis() != top.getFirst().thickness())
            .map(face -> overhang(top, standing, face))
            .filter(setting -> !setting.value().isNegative())
            .toList();
    return all.stream().anyMatch(each -> each.value().isPositive()) ? all : List.of();
  }

  private static Setting overhang(List<Part> top, List<Part> standing, Face face) {
    return new Setting(
        "overhang-" + face.word(), Optional.empty(), reach(top, face).minus(reach(standing, face)));
  }

  /** How far out the outermost of some parts goes. */
  private static Length reach(List<Part> parts, Face face) {
    return parts.stream()
        .map(part -> part.bounds().at(face))
        .map(at -> face.sign() < 0 ? at.negated() : at)
        .max(Length::compareTo)
        .orElseThrow();
  }

  private List<Setting> mount(Operation operation) {
    List<Setting> settings = new ArrayList<>();
    for (HardwareEntry entry : new Traits(job.piece()).mounted(operation)) {
      Set<String> drilled = MountHoles.drilledEarly(job.operations().stream(), entry);
      settings.addAll(new MountHoles(job.piece()).of(entry, drilled));
      new Catches(job.piece()).ends(entry).forEach(end -> settings.add(setting(end)));
    }
    return settings;
  }

  private Setting setting(Catches.End end) {
    return new Setting("catch-from-" + end.face().word(), shown(end.door()), end.distance());
  }

  private List<Setting> pilot(Joint joint, Cut cut) {
    boolean isInFirst = joint.driven().filter(d -> d.part().equals(joint.second())).isPresent();
    Part part = job.piece().part(isInFirst ? joint.first() : joint.second());
    CutKind kind = CutKind.of(part, cut);
    Optional<String> shown = shown(part);
    Setting bit = new Setting("pilot-diameter", shown, kind.size());
    return kind.depth().isPositive()
        ? List.of(bit, new Setting("pilot-depth", shown, kind.depth()))
        : List.of(bit);
  }

  private static String sizeKey(Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> "width";
      case Cut.Shaped shaped -> "width";
      case Cut.Roundover roundover -> "radius";
      case Cut.Tenon tenon -> "thickness";
      case Comb comb -> "width";
      case Cut.Holes holes -> "diameter";
      case PocketHoles pocket -> "stock";
      case Slanted.Slope slope -> throw new IllegalStateException("bug: a slope has no width");
      case Slanted.Housing housing -> "width-along-face";
      case Slots slots -> "width";
      case Dovetails dovetails -> throw new IllegalStateException("bug: dovetails have no width");
      case SplineSlot slot -> "width";
      case InPlace inPlace -> "diameter";
    };
  }

  private Optional<String> shown(Part part) {
    return Optional.of(job.piece().mark(part.mark()).shown().name());
  }
}
