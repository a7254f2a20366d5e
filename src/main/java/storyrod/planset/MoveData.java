package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FirstMove;
import storyrod.geometry.Face;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
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
        "mirrorImages", areMirrorImages(step, built) ? phrases.assemblies(built) : List.of(),
        "firstFrom", step.firstMove().map(first -> first.enters().opposite().word()).orElse(""),
        "beside", step.firstMove().map(this::beside).orElse(""));
  }

  /** Whether parts come to one sub-assembly from the left that come to another from the right. */
  private boolean areMirrorImages(Step step, List<String> built) {
    Nesting nesting = Nesting.of(piece);
    return built.stream()
            .filter(each -> nesting.isAssembly(each) && !each.equals(Nesting.PIECE))
            .map(nesting::parts)
            .map(parts -> parts.stream().map(Part::name).filter(step.mirrored()::contains).count())
            .distinct()
            .count()
        > 1;
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
    return piece.description().format().formatWithUnit(first.beside());
  }
}
