package storyrod.planset;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

/**
 * What a cut meets of other cuts: slots that a bit or its bearing would fall into, joints' ends.
 */
record CrossedData(Piece piece, PartPhrases phrases) {
  Map<String, Object> of(Step step) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("bored", parts(step.operations().stream().filter(this::boresAcross).toList()));
    data.put("gaps", parts(step.operations().stream().filter(this::shapesAcross).toList()));
    data.put("sunk", sunk(step));
    data.put(
        "slides",
        piece.joints().stream()
            .anyMatch(joint -> joint.slides() && step.targets().contains(joint.first())));
    data.put("thinned", step.operations().stream().map(this::thinned).toList());
    data.put("stopsShort", step.verb() == Verb.TRIM ? List.of() : stopsShort(step));
    return data;
  }

  private List<Map<String, Object>> parts(List<Operation> operations) {
    return phrases.parts(operations.stream().map(Operation::target).distinct().toList());
  }

  /** Slots in a part, whichever way their walls stand. */
  private static List<Cut> slots(Part part) {
    return part.cuts().stream()
        .filter(cut -> cut instanceof Cut.Trench || cut instanceof Slanted.Housing)
        .toList();
  }

  private static Box removed(Cut slot) {
    return slot instanceof Slanted.Housing housing ? housing.removed() : slot.boxes().getFirst();
  }

  /** Whether a hole runs through the wall of a slot, which breaks out inside. */
  private boolean boresAcross(Operation operation) {
    Part part = piece.part(operation.target());
    return Cut.only(Cut.Holes.class, operation.cuts()).stream()
        .anyMatch(
            holes ->
                slots(part).stream()
                    .filter(slot -> slot.from().axis() != holes.from().axis())
                    .anyMatch(slot -> bores(part, holes).anyMatch(removed(slot)::overlaps)));
  }

  private static Stream<Box> bores(Part part, Cut.Holes holes) {
    return holes.centres().stream().map(centre -> bore(part, holes, centre));
  }

  private static Box bore(Part part, Cut.Holes holes, Point centre) {
    Length radius = holes.diameter().dividedBy(2, RoundingMode.HALF_UP);
    Axis way = holes.from().axis();
    Box bore = part.box();
    for (Axis axis : Axis.values()) {
      Length at = centre.on(axis);
      bore = bore.with(axis, new Range(at.minus(radius), at.plus(radius)));
    }
    Length face = part.box().at(holes.from());
    Length bottom = face.minus(holes.depth().times(holes.from().sign()));
    return bore.with(
        way, holes.through() ? part.box().on(way) : new Range(face.min(bottom), face.max(bottom)));
  }

  /** The edges that an operation rounds or chamfers. */
  private static List<Edge> edges(Operation operation) {
    Stream<Edge> rounded =
        Cut.only(Cut.Roundover.class, operation.cuts()).stream().flatMap(c -> c.edges().stream());
    Stream<Edge> sloped =
        Cut.only(Slanted.Slope.class, operation.cuts()).stream()
            .filter(slope -> slope.kind() == Slanted.Slope.Kind.CHAMFER)
            .map(slope -> new Edge(slope.from(), slope.towards()));
    return Stream.concat(rounded, sloped).toList();
  }

  /** Whether a slot opens into an edge that is shaped: the bearing runs into its mouth. */
  private boolean shapesAcross(Operation operation) {
    Part part = piece.part(operation.target());
    return edges(operation).stream()
        .anyMatch(edge -> slots(part).stream().anyMatch(slot -> opens(part.box(), slot, edge)));
  }

  private static boolean opens(Box part, Cut slot, Edge edge) {
    Axis along = along(edge);
    Box removed = removed(slot);
    return removed.at(edge.one()).equals(part.at(edge.one()))
        && removed.at(edge.other()).equals(part.at(edge.other()))
        && !removed.on(along).equals(part.on(along));
  }

  private static Axis along(Edge edge) {
    return Axis.other(edge.one().axis(), edge.other().axis());
  }

  /** On which faces the heads of screws are sunk, and how wide. */
  private List<Map<String, Object>> sunk(Step step) {
    Map<Face, List<String>> byFace = new LinkedHashMap<>();
    for (Operation operation : step.operations()) {
      Cut.only(Cut.Holes.class, operation.cuts()).stream()
          .filter(holes -> holes.countersink().isPositive())
          .map(Cut.Holes::from)
          .distinct()
          .forEach(
              face ->
                  byFace.computeIfAbsent(face, key -> new ArrayList<>()).add(operation.target()));
    }
    return byFace.entrySet().stream()
        .<Map<String, Object>>map(
            each -> Map.of("face", each.getKey().word(), "parts", phrases.parts(each.getValue())))
        .toList();
  }

  /** Along which edges a part loses thickness, and from which faces. */
  private Map<String, Object> thinned(Operation operation) {
    List<Cut.Tenon> edges = Cut.only(Cut.Tenon.class, operation.cuts());
    return Map.of(
        "part", phrases.parts(List.of(operation.target())).getFirst(),
        "edges", edges.stream().map(cut -> cut.from().word()).distinct().toList(),
        "faces", edges.stream().flatMap(CrossedData::thinnedFrom).distinct().toList());
  }

  private static Stream<String> thinnedFrom(Cut.Tenon cut) {
    return Stream.of(Face.values())
        .filter(face -> face.axis() != cut.from().axis() && cut.shoulder(face).isPositive())
        .map(Face::word);
  }

  /** Parts whose shaped edges run into a slot in which their end stands, by the slot's depth. */
  private List<Map<String, Object>> stopsShort(Step step) {
    Map<Length, List<String>> byDepth = new LinkedHashMap<>();
    for (Operation operation : step.operations()) {
      housed(operation)
          .ifPresent(
              depth ->
                  byDepth.computeIfAbsent(depth, key -> new ArrayList<>()).add(operation.target()));
    }
    return byDepth.entrySet().stream()
        .<Map<String, Object>>map(
            each -> Map.of("depth", format(each.getKey()), "parts", phrases.parts(each.getValue())))
        .toList();
  }

  /**
   * How deep the ends at which shaped edges arrive stand in slots, as wide as the part is thick.
   */
  private Optional<Length> housed(Operation operation) {
    Part part = piece.part(operation.target());
    List<Axis> ways = edges(operation).stream().map(CrossedData::along).distinct().toList();
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()))
        .filter(joint -> ways.contains(joint.firstFace().axis()))
        .filter(joint -> part.cuts().stream().noneMatch(cut -> isTenon(cut, joint)))
        .flatMap(joint -> slots(piece.part(joint.second())).stream().filter(isAt(joint)))
        .map(slot -> removed(slot).size(slot.from().axis()))
        .max(Length::compareTo);
  }

  private static Predicate<Cut> isAt(Joint joint) {
    return cut -> cut.at().equals(joint.at());
  }

  private static boolean isTenon(Cut cut, Joint joint) {
    return cut instanceof Cut.Tenon && isAt(joint).test(cut);
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }
}
