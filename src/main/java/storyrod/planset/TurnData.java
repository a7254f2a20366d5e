package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.description.ItemKind;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.TrenchRole;

/**
 * Which way round equal parts lie in their places, told by a cut that nothing fills yet: the face
 * of a groove for a fitting, of rows of holes for shelf pins, those that are tapered, or of the
 * countersunk holes of parts on which nothing else shows the way.
 */
record TurnData(Piece piece, PartPhrases phrases) {
  private static final String PIN_ROW = "pin-row";
  private static final String SUNK = "sunk";

  /** The word for a cut and the faces that tell how a part lies. */
  private record Turn(String term, Set<Face> faces) {
    boolean isTold() {
      return !faces.isEmpty();
    }
  }

  /** The parts among some that a step sets, those that lie alike together. */
  List<Map<String, Object>> of(Step step, List<String> moving) {
    List<Map<String, Object>> told = new ArrayList<>();
    piece.marks().stream()
        .filter(mark -> mark.count() > 1)
        .forEach(mark -> told.addAll(of(mark, step, moving)));
    return told;
  }

  private List<Map<String, Object>> of(Mark mark, Step step, List<String> moving) {
    Map<Turn, List<String>> byTurn = new LinkedHashMap<>();
    moving.stream()
        .filter(mark.parts()::contains)
        .forEach(
            part -> byTurn.computeIfAbsent(turn(part, step), t -> new ArrayList<>()).add(part));
    boolean isFacing = isFacing(byTurn);
    return byTurn.entrySet().stream()
        .filter(each -> each.getKey().isTold())
        .map(each -> data(each.getKey(), each.getValue(), mark, isFacing))
        .toList();
  }

  /** Whether two parts turn the same groove towards each other, one of them end for end. */
  private boolean isFacing(Map<Turn, List<String>> byTurn) {
    List<Turn> turns = List.copyOf(byTurn.keySet());
    if (turns.size() != 2
        || turns.getFirst().term().equals(PIN_ROW)
        || byTurn.values().stream().anyMatch(parts -> parts.size() != 1)) {
      return false;
    }
    Face one = turns.getFirst().faces().stream().findFirst().orElse(Face.TOP);
    Part first = piece.part(byTurn.get(turns.getFirst()).getFirst());
    Part second = piece.part(byTurn.get(turns.getLast()).getFirst());
    return turns.getFirst().faces().size() == 1
        && turns.getLast().faces().equals(Set.of(one.opposite()))
        && second.bounds().at(one).minus(first.bounds().at(one)).times(one.sign()).isPositive();
  }

  private Map<String, Object> data(Turn turn, List<String> parts, Mark mark, boolean isFacing) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("parts", phrases.parts(parts));
    data.put("term", turn.term());
    data.put("faces", turn.faces().stream().map(Face::word).toList());
    data.put("facing", isFacing);
    data.put("drawn", hand(mark, parts));
    return data;
  }

  /** Whether parts are as their mark is drawn, or mirrored; empty if all of the mark are alike. */
  static String hand(Mark mark, List<String> parts) {
    List<String> mirrored = mark.parts().subList(mark.same(), mark.parts().size());
    if (mirrored.isEmpty()) {
      return "";
    }
    return mirrored.containsAll(parts)
        ? "mirrored"
        : parts.stream().anyMatch(mirrored::contains) ? "" : "drawn";
  }

  private Turn turn(String name, Step step) {
    Part part = piece.part(name);
    if (isHeldByShape(part)) {
      return new Turn("", Set.of());
    }
    Set<Face> tapered = new LinkedHashSet<>();
    part.cuts(Slanted.Slope.class).stream()
        .filter(slope -> slope.kind() == Slanted.Slope.Kind.TAPER)
        .forEach(slope -> tapered.add(slope.from()));
    if (!tapered.isEmpty()) {
      return new Turn("taper", tapered);
    }
    Set<Face> open = new LinkedHashSet<>();
    open(part, step).forEach(cut -> open.add(cut.from()));
    Set<Face> rows = pinRows(part);
    boolean isHanded = piece.mark(part.mark()).mirrored() > 0;
    if (isHanded) {
      return new Turn(SUNK, sunk(part));
    }
    if (open.isEmpty() && rows.size() == 1) {
      return new Turn(PIN_ROW, rows);
    }
    return open.size() == 1 ? new Turn("groove", open) : new Turn(SUNK, sunk(part));
  }

  /** The faces of countersunk holes that an equal part has opposite; none if a trench shows it. */
  private Set<Face> sunk(Part part) {
    Set<Face> opposite =
        piece.mark(part.mark()).parts().stream()
            .flatMap(other -> sunkIn(piece.part(other)))
            .map(Face::opposite)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return part.cuts(Cut.Trench.class).isEmpty()
        ? sunkIn(part)
            .filter(opposite::contains)
            .collect(Collectors.toCollection(LinkedHashSet::new))
        : Set.of();
  }

  private static Stream<Face> sunkIn(Part part) {
    return part.cuts(Cut.Holes.class).stream()
        .filter(holes -> holes.countersink().isPositive())
        .map(Cut::from);
  }

  /** The faces in which rows of holes for shelf pins are bored. */
  private Set<Face> pinRows(Part part) {
    return part.cuts(Cut.Holes.class).stream()
        .filter(row -> row.count() > 1 && !row.through())
        .filter(row -> row.forWhat().filter(this::isShelfPin).isPresent())
        .map(Cut::from)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private boolean isShelfPin(String item) {
    return piece.item(item).filter(each -> each.kind() == ItemKind.SHELF_PIN).isPresent();
  }

  /** Whether its own mortises or tenons let it go in one way only. */
  private static boolean isHeldByShape(Part part) {
    return part.cuts().stream()
        .anyMatch(cut -> cut instanceof Cut.Tenon || cut.term().equals("mortise"));
  }

  /** Its grooves that take a fitting, or a part that comes later. */
  private Stream<Cut.Trench> open(Part part, Step step) {
    return part.cuts(Cut.Trench.class).stream()
        .filter(TrenchRole.GROOVE::isOf)
        .filter(
            trench ->
                trench.forWhat().stream()
                    .noneMatch(
                        each -> step.standing().contains(each) || step.newParts().contains(each)));
  }
}
