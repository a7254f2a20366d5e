package storyrod.planset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The edges in which parts that come in lie flush with what they are joined to, where nothing else
 * tells their places. Where parts come in tiers, their joints do.
 */
record FlushEdges(Piece piece, PartPhrases phrases, Step step) {
  /** A part with the one it is joined to. */
  private record Pair(String moving, String other) {}

  /** The pairs of some marks with the same edges. */
  private record Alike(String mark, String otherMark, List<Face> faces) {}

  /**
   * For each part that the step puts in place, {@code parts} flush with {@code on} in {@code
   * faces}.
   *
   * @param seated the parts of which something else tells the places
   */
  List<Map<String, Object>> besides(List<String> seated) {
    Map<Alike, List<Pair>> alike = new LinkedHashMap<>();
    for (Pair pair : pairs(seated)) {
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

  private List<Pair> pairs(List<String> seated) {
    return (step.tiers().size() > 1 ? Stream.<Operation>of() : step.operations().stream())
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
        .filter(face -> step.enters().filter(way -> way.axis() == face.axis()).isEmpty())
        .filter(
            face -> face.axis() != moving.thickness() || moving.thickness() == other.thickness())
        .filter(face -> isPlain(moving, face) && isPlain(other, face))
        .filter(face -> moving.shoulder().at(face).equals(other.shoulder().at(face)))
        .filter(face -> !isCovered(moving, other, face))
        .toList();
  }

  /**
   * Whether a third part covers a whole face of what others come to, so that no finger reaches it.
   */
  private boolean isCovered(Part moving, Part other, Face face) {
    List<Axis> across = Arrays.stream(Axis.values()).filter(axis -> axis != face.axis()).toList();
    return Stream.concat(step.standing().stream(), step.newParts().stream())
        .map(piece::part)
        .filter(part -> !part.equals(moving) && !part.equals(other))
        .map(Part::bounds)
        .filter(box -> across.stream().allMatch(a -> box.on(a).contains(other.bounds().on(a))))
        .map(box -> box.on(face.axis()))
        .anyMatch(
            range ->
                !other.box().at(face).isShorterThan(range.from())
                    && !other.box().at(face).isLongerThan(range.to()));
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
