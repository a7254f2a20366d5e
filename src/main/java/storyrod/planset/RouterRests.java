package storyrod.planset;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slots;

/** Where a part is too small to carry a router that plunges into it: what else carries the base. */
record RouterRests(Piece piece, PartPhrases phrases) {
  /** Half as wide as the usual base: on less it tips (common practice, from memory). */
  private static final Length LEAST_REST = Length.inches(3);

  /** The parts that are plunged into at an end, and in a narrow face or edge. */
  Map<String, Object> of(Step step) {
    return Map.of(
        "onEnd", phrases.parts(parts(step, true)), "onNarrow", phrases.parts(parts(step, false)));
  }

  private List<String> parts(Step step, boolean onEnd) {
    return step.operations().stream()
        .filter(operation -> slots(operation).anyMatch(slots -> isNarrow(operation, slots, onEnd)))
        .map(Operation::target)
        .distinct()
        .toList();
  }

  private static Stream<Slots> slots(Operation operation) {
    return Cut.only(Slots.class, operation.cuts()).stream().filter(slots -> !slots.through());
  }

  private boolean isNarrow(Operation operation, Slots slots, boolean onEnd) {
    Part part = piece.part(operation.target());
    Axis into = slots.from().axis();
    return (into == part.length()) == onEnd
        && Stream.of(Axis.values())
            .filter(axis -> axis != into)
            .anyMatch(axis -> part.box().size(axis).isShorterThan(LEAST_REST));
  }
}
