package storyrod.planset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.ShowFaces;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/**
 * How parts lie while their pocket holes are drilled: the face in which the holes begin lies up, so
 * the marked face up or down, or neither where the mark may be on either face.
 */
record PocketData(Piece piece, PartPhrases phrases) {
  private static final String UP = "up";
  private static final String DOWN = "down";
  private static final String EITHER = "either";

  /** The marks of a step by how the marked face lies; only ways in which a part lies. */
  List<Map<String, Object>> of(Step step) {
    ShowFaces faces = new ShowFaces(piece);
    return Stream.of(UP, DOWN, EITHER)
        .map(way -> Map.of("way", way, "parts", phrases.marks(lying(step, way, faces))))
        .filter(each -> !((List<?>) each.get("parts")).isEmpty())
        .toList();
  }

  private List<String> lying(Step step, String way, ShowFaces faces) {
    return step.operations().stream()
        .filter(each -> begins(each).anyMatch(from -> way(each, from, faces).equals(way)))
        .map(Operation::target)
        .toList();
  }

  private static Stream<Face> begins(Operation operation) {
    return Cut.only(PocketHoles.class, operation.cuts()).stream().map(PocketHoles::from);
  }

  private String way(Operation operation, Face from, ShowFaces faces) {
    Optional<Face> marked =
        faces.of(piece.part(operation.target())).filter(face -> face.axis() == from.axis());
    return marked.map(face -> face == from ? UP : DOWN).orElse(EITHER);
  }
}
