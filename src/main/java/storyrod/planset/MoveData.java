package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FirstMove;
import storyrod.geometry.Face;
import storyrod.piece.Piece;

/** From where the new parts of a step come in: with one straight move, or with two. */
record MoveData(Piece piece, PartPhrases phrases) {
  /**
   * The last move, and the first of two; that is empty where one is enough.
   *
   * @param moving the parts that move
   * @param built the sub-assemblies that the step builds
   */
  Map<String, Object> of(Step step, List<String> moving, List<String> built) {
    return Map.of(
        "from", from(step, List.of()),
        "sides", built.size() > 1 ? List.of() : sides(step, moving, built),
        "firstFrom", step.firstMove().map(first -> first.enters().opposite().word()).orElse(""),
        "beside", step.firstMove().map(this::beside).orElse(""));
  }

  /** From where some parts come. */
  private static String from(Step step, List<String> parts) {
    return step.enters(parts).map(Face::opposite).map(Face::word).orElse("top");
  }

  /** Mirror images with the sides from which they come; empty where all come from one. */
  private List<Map<String, Object>> sides(Step step, List<String> moving, List<String> built) {
    Map<String, List<String>> sides =
        (step.mirrored().isEmpty() ? Stream.<String>of() : moving.stream())
            .collect(
                Collectors.groupingBy(
                    part -> from(step, List.of(part)), LinkedHashMap::new, Collectors.toList()));
    return sides.entrySet().stream()
        .map(
            side ->
                Map.of(
                    "from",
                    side.getKey(),
                    "parts",
                    phrases.units(side.getValue(), built.getFirst())))
        .toList();
  }

  private String beside(FirstMove first) {
    return piece.description().printed().formatWithUnit(first.beside());
  }
}
