package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.ClampsInUse;
import storyrod.build.Fronts;
import storyrod.build.Groups;
import storyrod.build.Levels;
import storyrod.build.Operation;
import storyrod.build.Surround;
import storyrod.build.Traits;
import storyrod.build.Verb;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.SplineSlot;
import storyrod.piece.TrenchRole;

/** The values of a step that fits parts: what comes in, to what, and how it lies there. */
final class FitData {
  /** How many parts make a framework on which something is laid rather than let in. */
  private static final int FRAMEWORK = 3;

  /** A shorter part stands square by the joint itself. */
  private static final Length LEAST_SQUARED = Length.mm(100);

  private final Piece piece;
  private final PartPhrases phrases;
  private final Lying lying;
  private final HardwareData hardware;
  private final Nesting nesting;
  private final ButtedJoints butts;
  private final Map<String, String> levels;
  private final Map<String, String> drawers;

  FitData(Piece piece, PartPhrases phrases, Lying lying) {
    this.piece = piece;
    this.lying = lying;
    this.phrases = phrases;
    this.hardware = new HardwareData(piece, phrases);
    this.nesting = Nesting.of(piece);
    this.butts = new ButtedJoints(piece);
    this.levels = Levels.byUnit(piece);
    this.drawers = Fronts.drawers(piece);
  }

  /** What a step moves: the parts that come in, and the joints by which they are held. */
  private record Moving(Step step, List<String> parts, List<Joint> joints) {
    static Moving of(Step step) {
      List<Operation> joining =
          step.operations().stream().filter(each -> !each.joints().isEmpty()).toList();
      List<Operation> moving = joining.isEmpty() ? step.operations() : joining;
      return new Moving(
          step,
          moving.stream().flatMap(each -> each.parts().stream()).toList(),
          moving.stream().flatMap(each -> each.joints().stream()).toList());
    }

    List<String> laidReady() {
      return step.newParts().stream().filter(part -> !parts.contains(part)).toList();
    }

    /** The parts that the moving ones are joined to, in the order of the joints. */
    List<String> meeting() {
      return meeting(joints);
    }

    List<Joint> glued() {
      return joints.stream().filter(Joint::glued).toList();
    }

    /** The parts that they are glued to. */
    List<String> gluedTo() {
      return meeting(glued());
    }

    /** The way that what moves takes into a joint, whichever of its parts goes in. */
    Face way(Joint joint) {
      return parts.contains(joint.first()) ? joint.entry() : joint.entry().opposite();
    }

    private List<String> meeting(List<Joint> some) {
      return some.stream()
          .flatMap(joint -> Stream.of(joint.first(), joint.second()))
          .filter(part -> !parts.contains(part))
          .distinct()
          .toList();
    }
  }

  Map<String, Object> of(Step step) {
    Moving moving = Moving.of(step);
    Map<String, Object> data = new LinkedHashMap<>(way(moving));
    data.putAll(new MoveData(piece, phrases).of(step, moving.parts(), builtIn(step)));
    data.putAll(lying(step));
    data.putAll(place(moving));
    data.putAll(
        new TierData(phrases, levels)
            .of(step, level(step.operations().getFirst().target()), builtIn(step)));
    data.putAll(held(moving));
    data.putAll(
        new ClampData(piece, phrases).of(step, level(step.operations().getFirst().target())));
    data.put("closedBelow", new Surround(piece).isClosedBelow(moving.parts()));
    data.put("frontLater", hasFrontLater(moving.parts()));
    data.put("corner", moving.glued().stream().anyMatch(joint -> isCorner(piece, joint)));
    data.put("movingSolid", moving.parts().stream().map(piece::part).noneMatch(Traits::isSheet));
    return data;
  }

  /** What moves, to what, and from where. */
  private Map<String, Object> way(Moving moving) {
    Step step = moving.step();
    String level = level(step.operations().getFirst().target());
    boolean inPiece = level.equals(Nesting.PIECE);
    return Map.of(
        "moving", phrases.units(moving.parts(), level),
        "base", phrases.units(moving.laidReady(), level),
        "onto", phrases.units(moving.meeting(), level),
        "gluedTo", phrases.units(moving.gluedTo(), level),
        "inPiece", inPiece);
  }

  /** Whether what stands is laid down for it, and stays so. */
  private Map<String, Object> lying(Step step) {
    return Map.of(
        "lies", lying.on(step),
        "onEdge", lying.isOnEdge(step),
        "upSide", lying.up(step),
        "liesAlready", lying.isAlready(step),
        "turnedOver", lying.isTurnedOver(step),
        "battened", lying.since(step).stream().anyMatch(this::hasJawsUnder),
        "staysLying", lying.stays(step),
        "turnedNext", lying.isTurnedNext(step));
  }

  private boolean hasJawsUnder(Step step) {
    return step.glueUp().clamps() > 0 && new ClampData(piece, phrases).hasJawsUnder(step);
  }

  /** Where it comes to lie. */
  private Map<String, Object> place(Moving moving) {
    List<Map<String, Object>> seats = new SeatData(piece, phrases).of(moving.step());
    List<Map<String, Object>> flush = flush(moving);
    boolean overhung = moving.step().isSet("overhang-");
    boolean laidOn = isLaidOn(moving);
    List<Map<String, Object>> turned =
        new TurnData(piece, phrases).of(moving.step(), moving.parts());
    return Map.of(
        "seats", seats, "flush", flush, "overhung", overhung, "laidOn", laidOn, "turned", turned);
  }

  /** What holds it, now and later. */
  private Map<String, Object> held(Moving moving) {
    Step step = moving.step();
    return Map.of(
        "glueTerms", glueTerms(moving.glued()),
        "haunchInGroove", moving.glued().stream().anyMatch(this::isHaunchedInGroove),
        "acrossGrain", moving.joints().stream().anyMatch(new AcrossGrain(piece)::isDry),
        "jointCount", moving.glued().size(),
        "butted", butted(moving),
        "buttedCount", plain(moving).count(),
        "crate",
            moving.glued().stream().allMatch(joint -> ClampsInUse.isLappedOnEdge(piece, joint)),
        "mitred", moving.joints().stream().anyMatch(joint -> isCut(joint, Slanted.Slope.class)),
        "splined", splined(moving.joints()),
        "hangers", hangers(moving.parts()));
  }

  /** Whether what lay in the clamps of other steps is stood up again when they come off. */
  boolean standsUp(Step step, List<Integer> off) {
    return !lying.isLying(step) && off.stream().anyMatch(lying::isStoodUpAfter);
  }

  /** Whether a part comes to stand at a right angle that the joint alone does not give. */
  private static boolean isCorner(Piece piece, Joint joint) {
    Part first = piece.part(joint.first());
    return joint.firstFace().axis() != first.thickness()
        && !first.pose().isTurned()
        && !piece.part(joint.second()).pose().isTurned()
        && first.box().size(joint.firstFace().axis()).isLongerThan(LEAST_SQUARED);
  }

  /** What is built on: the piece, or a sub-assembly; a front is fixed to its drawer. */
  private String level(String target) {
    return Optional.ofNullable(drawers.get(target))
        .orElseGet(() -> levels.getOrDefault(Groups.first(target), Nesting.PIECE));
  }

  /** The sub-assemblies that a fitting step builds, or whose fronts it fixes. */
  List<String> builtIn(Step step) {
    return step.operations().stream()
        .filter(each -> each.verb() == Verb.FIT)
        .map(each -> level(each.target()))
        .distinct()
        .toList();
  }

  /** Whether sub-assemblies are of equal parts, and not of parts that differ in size. */
  boolean areEqual(List<String> assemblies) {
    return assemblies.stream()
            .filter(each -> nesting.isAssembly(each) && !each.equals(Nesting.PIECE))
            .map(each -> nesting.parts(each).stream().map(Part::mark).sorted().toList())
            .distinct()
            .count()
        < 2;
  }

  /** What lies flush of the parts of which no seat tells the place. */
  private List<Map<String, Object>> flush(Moving fitted) {
    return new FlushEdges(piece, phrases, fitted.step())
        .besides(new SeatData(piece, phrases).seated(fitted.step()));
  }

  /** Whether splines of these joints lie in a frame or in a case, where they cannot go in first. */
  private String splined(List<Joint> joints) {
    return joints.stream()
        .filter(joint -> isCut(joint, SplineSlot.class))
        .map(joint -> piece.part(joint.first()))
        .map(part -> part.cuts().stream().anyMatch(cut -> isInFrame(cut, part)) ? "frame" : "case")
        .findFirst()
        .orElse("");
  }

  private static boolean isInFrame(Cut cut, Part part) {
    return cut instanceof SplineSlot slot && slot.isInFrame(part);
  }

  /** Whether a joint itself made a cut of some kind in its first part. */
  private boolean isCut(Joint joint, Class<? extends Cut> kind) {
    return piece.part(joint.first()).cuts().stream()
        .anyMatch(cut -> kind.isInstance(cut) && cut.at().equals(joint.at()));
  }

  private List<Map<String, Object>> glueTerms(List<Joint> glued) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    glued.forEach(joint -> takenIn(joint).ifPresent(term -> counts.merge(term, 1, Integer::sum)));
    List<Map<String, Object>> terms = new ArrayList<>();
    counts.forEach((term, count) -> terms.add(Map.of("term", term, "count", count)));
    return terms;
  }

  /** The word for the cut that takes in a joint's first part, if there is one. */
  private Optional<String> takenIn(Joint joint) {
    return butts.takingIn(joint).map(Cut::term).findFirst();
  }

  /** Glued joints in which neither part is let into the other. */
  private Stream<Joint> plain(Moving moving) {
    return moving.glued().stream().filter(butts::have);
  }

  /** The parts that meet in such joints; alike ones once. */
  private List<Map<String, Object>> butted(Moving moving) {
    return plain(moving)
        .map(
            joint ->
                Map.<String, Object>of("one", one(joint.first()), "other", one(joint.second())))
        .distinct()
        .toList();
  }

  private List<Map<String, Object>> one(String part) {
    return phrases.parts(List.of(part));
  }

  /** Whether a groove, in which a panel may have to move, takes in the haunch of a tenon. */
  private boolean isHaunchedInGroove(Joint joint) {
    return takenIn(joint).filter("mortise"::equals).isPresent()
        && butts.takingIn(joint).anyMatch(TrenchRole.GROOVE::isOf);
  }

  /** Whether all that comes in meets several parts with one and the same face. */
  private boolean isLaidOn(Moving moving) {
    List<Joint> joints = moving.joints();
    return moving.meeting().size() >= FRAMEWORK
        && joints.stream().filter(Joint::glued).map(moving::way).distinct().count() == 1
        && joints.stream().noneMatch(joint -> takenIn(joint).isPresent())
        && joints.stream().noneMatch(joint -> joint.glued() && !joint.fasteners().isEmpty());
  }

  /** Whether a front of one of these assemblies is fixed later. */
  private boolean hasFrontLater(List<String> parts) {
    return drawers.values().stream()
        .anyMatch(drawer -> parts.stream().anyMatch(part -> nesting.isIn(part, drawer)));
  }

  private List<String> hangers(List<String> parts) {
    return piece.description().hardware().stream()
        .filter(entry -> entry.parts().stream().anyMatch(part -> parts.contains(part.value())))
        .map(entry -> hardware.kind(entry.item().value()))
        .distinct()
        .toList();
  }
}
