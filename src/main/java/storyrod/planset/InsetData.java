package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slots;

/**
 * How far the rows of slots and holes for biscuits, dowels and loose tenons lie from a face of each
 * part, and whether the parts of their joints are flush in it.
 */
record InsetData(Piece piece, PartPhrases phrases) {
  /** Where the guide rests, how far off the middle of a row lies, and if both parts end there. */
  private record Inset(Face face, Length distance, boolean flush) {}

  /** A row across which the guide keeps its distance. */
  private record Row(Axis across, Point middle) {}

  /** Parts that are set out alike, in the order of the step. */
  List<Map<String, Object>> of(Step step) {
    Map<Inset, List<String>> alike = new LinkedHashMap<>();
    for (Operation operation : step.operations()) {
      for (Cut cut : operation.cuts()) {
        row(cut)
            .map(row -> inset(piece.part(operation.target()), cut, row))
            .ifPresent(
                inset ->
                    alike.computeIfAbsent(inset, key -> new ArrayList<>()).add(operation.target()));
      }
    }
    return alike.entrySet().stream().map(each -> data(each.getKey(), each.getValue())).toList();
  }

  /** The other parts of the joints, as far as a step does not work on them. */
  List<Map<String, Object>> elsewhere(Step step) {
    return phrases.parts(
        step.operations().stream()
            .flatMap(each -> each.cuts().stream().map(Cut::at))
            .flatMap(at -> piece.joints().stream().filter(joint -> joint.at().equals(at)))
            .flatMap(joint -> Stream.of(joint.first(), joint.second()))
            .filter(name -> !step.targets().contains(name))
            .distinct()
            .toList());
  }

  private static Optional<Row> row(Cut cut) {
    if (cut instanceof Slots slots && !slots.through()) {
      return Optional.of(new Row(slots.across(), slots.first()));
    }
    return cut instanceof Cut.Holes holes && holes.term().equals("dowel hole")
        ? Optional.of(new Row(Axis.other(holes.from().axis(), holes.along()), holes.first()))
        : Optional.empty();
  }

  /** From a face in which both parts of the joint end, if there is one, else from the nearer. */
  private Inset inset(Part part, Cut cut, Row row) {
    List<Face> faces = List.of(Face.of(row.across(), -1), Face.of(row.across(), 1));
    Optional<Face> flush = faces.stream().filter(face -> isFlush(part, cut, face)).findFirst();
    boolean isFar = off(part, row, faces.getLast()).isShorterThan(off(part, row, faces.getFirst()));
    Face face = flush.orElse(isFar ? faces.getLast() : faces.getFirst());
    return new Inset(face, off(part, row, face), flush.isPresent());
  }

  private static Length off(Part part, Row row, Face face) {
    return part.box().at(face).minus(row.middle().on(face.axis())).abs();
  }

  private boolean isFlush(Part part, Cut cut, Face face) {
    return piece.joints().stream()
        .filter(joint -> joint.at().equals(cut.at()))
        .map(joint -> other(joint, part))
        .anyMatch(other -> other.box().at(face).equals(part.box().at(face)));
  }

  private Part other(Joint joint, Part part) {
    return piece.part(joint.first().equals(part.name()) ? joint.second() : joint.first());
  }

  private Map<String, Object> data(Inset inset, List<String> parts) {
    Part part = piece.part(parts.getFirst());
    return Map.of(
        "parts", phrases.parts(parts),
        "face", inset.face().word(),
        "side", SeatData.side(part, inset.face().axis()),
        "distance", piece.description().printed().toldWithUnit(inset.distance()),
        "flush", inset.flush());
  }
}
