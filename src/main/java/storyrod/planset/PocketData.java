package storyrod.planset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
 * the marked face up or down; where the mark may be on either face, by where it will look.
 */
record PocketData(Piece piece, PartPhrases phrases) {
  private static final String UP = "up";
  private static final String DOWN = "down";
  private static final String EITHER = "either";

  /** The marks of a step by how the marked face lies; only ways in which a part lies. */
  List<Map<String, Object>> of(Step step) {
    ShowFaces faces = new ShowFaces(piece);
    Stream<Map<String, Object>> marked =
        Stream.of(UP, DOWN).map(way -> data(way, "", lying(step, way, faces)));
    Stream<Map<String, Object>> either =
        lying(step, EITHER, faces).stream()
            .collect(
                Collectors.groupingBy(each -> from(step, each), TreeMap::new, Collectors.toList()))
            .entrySet()
            .stream()
            .map(each -> data(EITHER, each.getKey(), each.getValue()));
    return Stream.concat(marked, either)
        .filter(each -> !((List<?>) each.get("parts")).isEmpty())
        .toList();
  }

  private Map<String, Object> data(String way, String face, List<String> parts) {
    return Map.of("way", way, "face", face, "parts", phrases.marks(parts));
  }

  /** The face of the piece in which the holes of a part begin. */
  private static String from(Step step, String part) {
    return step.operations().stream()
        .filter(each -> each.target().equals(part))
        .flatMap(PocketData::begins)
        .map(Face::word)
        .findFirst()
        .orElseThrow();
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
