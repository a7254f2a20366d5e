package storyrod.planset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.build.Operation;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The edges in which parts that come in lie flush with what they are joined to, where nothing else
 * tells their places.
 *
 * @param enters the way on which they come, along which no edge is told
 */
record FlushEdges(Piece piece, PartPhrases phrases, Optional<Axis> enters) {
  /** A part with the one it is joined to. */
  private record Pair(String moving, String other) {}

  /** The pairs of some marks with the same edges. */
  private record Alike(String mark, String otherMark, List<Face> faces) {}

  /**
   * For each part that an operation puts in place, {@code parts} flush with {@code on} in {@code
   * faces}.
   *
   * @param seated the parts of which something else tells the places
   */
  List<Map<String, Object>> of(List<Operation> operations, List<String> seated) {
    Map<Alike, List<Pair>> alike = new LinkedHashMap<>();
    for (Pair pair : pairs(operations, seated)) {
      Part part = piece.part(pair.moving());
      Part other = piece.part(pair.other());
      List<Face> faces = faces(part, other);
      if (!faces.isEmpty()) {
        alike
            .computeIfAbsent(new Alike(part.mark(), other.mark(), faces), key -> new ArrayList<>())
            .add(pair);
      }
    }
    return alike.entrySet().stream().map(each -> data(each.getKey(), each.getValue())).toList();
  }

  private static List<Pair> pairs(List<Operation> operations, List<String> seated) {
    return operations.stream()
        .filter(each -> each.parts().size() == 1 && !seated.contains(each.parts().getFirst()))
        .flatMap(each -> each.joints().stream().map(joint -> pair(each, joint)))
        .distinct()
        .toList();
  }

  private static Pair pair(Operation operation, Joint joint) {
    return operation.parts().contains(joint.first())
        ? new Pair(joint.first(), joint.second())
        : new Pair(joint.second(), joint.first());
  }

  private Map<String, Object> data(Alike alike, List<Pair> pairs) {
    return Map.of(
        "parts", phrases.parts(pairs.stream().map(Pair::moving).toList()),
        "on", phrases.parts(pairs.stream().map(Pair::other).toList()),
        "faces", alike.faces().stream().map(Face::word).toList());
  }

  /** The faces in which two parts lie in one plane. */
  private List<Face> faces(Part moving, Part other) {
    return Arrays.stream(Face.values())
        .filter(face -> enters.filter(way -> way == face.axis()).isEmpty())
        .filter(
            face -> face.axis() != moving.thickness() || moving.thickness() == other.thickness())
        .filter(face -> isPlain(moving, face) && isPlain(other, face))
        .filter(face -> moving.shoulder().at(face).equals(other.shoulder().at(face)))
        .toList();
  }

  /** Whether a face of a part looks the same way as it stands, and no outline shapes it. */
  private static boolean isPlain(Part part, Face face) {
    return (!part.pose().isTurned() || part.pose().about() == face.axis())
        && part.cuts(Cut.Shaped.class).stream().noneMatch(cut -> shapes(cut, part, face));
  }

  private static boolean shapes(Cut.Shaped cut, Part part, Face face) {
    return !cut.inside()
        && cut.cleared(part.box()).stream()
            .anyMatch(box -> box.at(face).equals(part.box().at(face)));
  }
}
