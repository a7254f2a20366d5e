package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Lazy;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * On which face lies what is worked from one side: a flat sub-assembly on the face opposite the one
 * from which its fasteners are driven, a first part whose screws come from above and whose other
 * parts come from below on its edge, and the piece on its back or its top while feet are mounted.
 */
final class OnBench {
  private static final List<ItemKind> FEET = List.of(ItemKind.FOOT, ItemKind.LEVELLING_FOOT);

  private final Piece piece;
  private final Lazy<List<PlacedItem>> hardware;

  OnBench(Piece piece) {
    this.piece = piece;
    this.hardware = new Lazy<>(() -> PlacedHardware.of(piece));
  }

  /** The face; empty where the way in of what comes decides. */
  Optional<Face> down(Step step, Optional<Placing> first) {
    if (step.verb() == Verb.MOUNT) {
      return isForFeet(step) ? Optional.of(onFeetUp()) : Optional.empty();
    }
    return first.flatMap(
        placing ->
            onEdge(step, placing)
                .or(
                    () ->
                        placing.unit().level().equals(Unit.PIECE)
                            ? Optional.empty()
                            : flat(step, placing.unit().level())));
  }

  private boolean isForFeet(Step step) {
    return step.operations().stream().allMatch(each -> FEET.contains(piece.kind(each.target())));
  }

  private Face onFeetUp() {
    return new Surround(piece).hasBack() ? Face.BACK : Face.TOP;
  }

  private Optional<Face> onEdge(Step step, Placing first) {
    boolean isAlone = step.standing().isEmpty() && first.enters().isEmpty();
    return isAlone
            && step.enters().equals(Optional.of(Face.TOP))
            && isWide(first.unit().parts())
            && drivenFrom(step).equals(Optional.of(Face.TOP))
        ? Optional.of(Face.BACK)
        : Optional.empty();
  }

  /** Whether it is one board that lies flat and whose long edges are front and back. */
  private static boolean isWide(List<Part> parts) {
    return parts.size() == 1
        && parts.getFirst().thickness() == Axis.Z
        && parts.getFirst().length() == Axis.X;
  }

  private Optional<Face> flat(Step step, String level) {
    return drivenFrom(step)
        .filter(from -> from != Face.TOP && isFlat(step, level, from.axis()))
        .map(Face::opposite);
  }

  /** Whether one of the sub-assemblies that the step builds lies flat, as far as it is together. */
  private boolean isFlat(Step step, String level, Axis across) {
    Nesting nesting = Nesting.of(piece);
    Box all =
        Stream.concat(step.standing().stream(), step.newParts().stream())
            .filter(part -> nesting.isIn(part, level))
            .map(part -> piece.part(part).bounds())
            .reduce(Box::around)
            .orElse(piece.part(step.newParts().getFirst()).bounds());
    return Stream.of(Axis.values())
        .filter(axis -> axis != across)
        .noneMatch(axis -> all.size(across).isLongerThan(all.size(axis)));
  }

  /** The side from which all fasteners of a step are driven, if it is one. */
  private Optional<Face> drivenFrom(Step step) {
    List<Face> sides =
        hardware.get().stream()
            .filter(each -> each.isFittedIn(step))
            .flatMap(each -> each.drivenFrom().stream())
            .distinct()
            .toList();
    return sides.size() == 1 ? Optional.of(sides.getFirst()) : Optional.empty();
  }
}
