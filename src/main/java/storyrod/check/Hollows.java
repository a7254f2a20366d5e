package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.check.Hollow.Form;
import storyrod.check.Hollow.Use;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Span;
import storyrod.geometry.Cylinder;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Drilling;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slots;
import storyrod.piece.TrenchRole;

/** Finds the hollows of a piece's parts, and which of them run into each other. */
record Hollows(Piece piece) {
  /** What no saw or drill of a shop keeps to anyway. */
  static final Length LEAST = Length.inch(1, 64);

  private static final Set<ItemKind> SCREWS = Set.of(ItemKind.WOOD_SCREW, ItemKind.POCKET_SCREW);

  /** Cuts whose filling is glued in, and would be in the way of a drill or a screw. */
  private static final Set<String> HOUSING =
      Set.of("mortise", "open mortise", Cut.Trench.HAUNCH_SOCKET);

  /** Two hollows of one part that run into each other, and how deep. */
  record Pair(Hollow one, Hollow other, Length deep) {
    Span at() {
      return one.cut().at();
    }

    String message(Piece piece) {
      String by = piece.description().format().forBits().formatWithUnit(deep);
      return "%s and %s run %s into each other inside %s"
          .formatted(one.name(), other.name(), by, one.part().name());
    }

    /** A finding with both places beside its own. */
    Diagnostic told(Diagnostic finding) {
      return finding
          .also(other.cut().at(), "the other is asked for here")
          .also(one.part().at(), one.part().name() + " is defined here");
    }
  }

  /** Tells whether two hollows ought to stay clear of each other, the first of some use. */
  interface Rule {
    boolean concerns(Hollow one, Hollow other);
  }

  /** The pairs deeper than some depth that a rule concerns, one for two entries of a part. */
  Stream<Pair> meeting(Rule rule, Length least) {
    return pairs(rule, (one, other) -> one.depthIn(other).isLongerThan(least));
  }

  /** The pairs with less wood than some between them that a rule concerns, as {@link #meeting}. */
  Stream<Pair> near(Rule rule, Length wall) {
    return pairs(rule, (one, other) -> one.isWithin(wall, other));
  }

  private Stream<Pair> pairs(Rule rule, Rule touching) {
    return piece.parts().stream().flatMap(part -> pairs(of(part), rule, touching).stream());
  }

  private static List<Pair> pairs(List<Hollow> hollows, Rule rule, Rule touching) {
    List<Pair> pairs = new ArrayList<>();
    for (Hollow one : hollows) {
      for (Hollow other : hollows) {
        if (one != other
            && rule.concerns(one, other)
            && pairs.stream().noneMatch(p -> same(p, one, other))
            && touching.concerns(one, other)) {
          pairs.add(new Pair(one, other, one.depthIn(other)));
        }
      }
    }
    return pairs;
  }

  private static boolean same(Pair pair, Hollow one, Hollow other) {
    List<Span> told = List.of(pair.one.cut().at(), pair.other.cut().at());
    return told.contains(one.cut().at()) && told.contains(other.cut().at());
  }

  /** All hollows of one part, the ways of pocket screws and brads that end in it among them. */
  List<Hollow> of(Part part) {
    List<Hollow> hollows = new ArrayList<>();
    part.cuts().forEach(cut -> hollows.addAll(of(part, cut)));
    hollows.addAll(new DrivenWays(piece).into(part));
    return hollows;
  }

  private List<Hollow> of(Part part, Cut cut) {
    return switch (cut) {
      case Cut.Holes holes ->
          List.of(hollow(part, cut, use(holes), HollowForms.rods(Drilling.of(holes))));
      case InPlace bores ->
          List.of(hollow(part, cut, Use.THREAD, HollowForms.rods(Drilling.of(bores))));
      case PocketHoles pockets -> steps(part, pockets);
      case Slots slots -> List.of(hollow(part, cut, use(slots), HollowForms.of(slots)));
      case Cut.Tenon tenon when tenon.term().equals("tenon") ->
          List.of(hollow(part, cut, Use.TENON, HollowForms.of(List.of(tenon.tenon()))));
      case Cut.Trench trench ->
          List.of(hollow(part, cut, use(trench), HollowForms.of(trench.boxes())));
      case Comb comb -> List.of(hollow(part, cut, Use.TAKEN, HollowForms.of(comb.boxes())));
      default -> List.of();
    };
  }

  private Hollow hollow(Part part, Cut cut, Use use, List<Form> forms) {
    String what = cut.forWhat().map(name -> " for " + name).orElse("");
    return new Hollow(part, cut, use, "the " + cut.term() + what, mates(piece, part, cut), forms);
  }

  /** The parts that the joint of a cut, if it is one's, holds to a part. */
  static Set<String> mates(Piece piece, Part part, Cut cut) {
    Set<String> mates = new TreeSet<>();
    piece.joints().stream()
        .filter(joint -> joint.at().equals(cut.at()))
        .map(joint -> List.of(joint.first(), joint.second()))
        .filter(both -> both.contains(part.name()))
        .forEach(mates::addAll);
    mates.remove(part.name());
    return mates;
  }

  private Use use(Cut.Holes holes) {
    return switch (holes.term()) {
      case "clearance hole" -> Use.SCREW;
      case "pilot hole" -> Use.THREAD;
      case "dowel hole" -> Use.INSERT;
      case "peg hole" -> Use.PEG;
      default -> holes.forWhat().flatMap(piece::item).map(Hollows::use).orElse(Use.PLAIN);
    };
  }

  private static Use use(ItemEntry item) {
    if (SCREWS.contains(item.kind())) {
      return Use.SCREW;
    }
    return item.kind() == ItemKind.DOWEL ? Use.PEG : Use.LET_IN;
  }

  private static Use use(Slots slots) {
    return switch (slots.term()) {
      case "screw slot" -> Use.SCREW;
      case "peg slot" -> Use.PEG;
      case "biscuit slot", "round-ended mortise" -> Use.INSERT;
      case "fastener slot" -> Use.TAKEN;
      default -> Use.PLAIN;
    };
  }

  private static Use use(Cut.Trench trench) {
    if (trench.forWhat().isEmpty()) {
      return Use.OPEN;
    }
    boolean isHoused = TrenchRole.HOUSING.isOf(trench) || HOUSING.contains(trench.term());
    return isHoused ? Use.HOUSED : Use.TAKEN;
  }

  /** The wide steps, in which the heads sink, and the narrow ones that the screws fill. */
  private List<Hollow> steps(Part part, PocketHoles pockets) {
    double radius = pockets.diameter().toMm() / 2;
    Map<Boolean, List<Cylinder>> wide =
        Drilling.of(pockets, part.box()).stream()
            .collect(Collectors.partitioningBy(bore -> bore.radiusMm() >= radius));
    return List.of(
        hollow(part, pockets, Use.SCREW, HollowForms.rods(wide.get(false))),
        hollow(part, pockets, Use.LET_IN, HollowForms.rods(wide.get(true))));
  }
}
