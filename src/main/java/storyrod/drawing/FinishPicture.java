package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What lies in the shop to be finished: the piece as far as it stands, and beside it whatever is
 * finished by itself, so that none is forgotten. Each thing bears the mark of the part of it that
 * is seen best, and sub-assemblies their names.
 */
final class FinishPicture {
  private FinishPicture() {}

  /** Empty if the step finishes nothing. */
  static Optional<PicturedStep> of(Supplier<Piece> then, BuildPlan plan, Step step) {
    return step.verb() == Verb.FINISH
        ? Optional.of(
            of(then.get(), step, new Standing(then.get(), plan, step).apart(step.targets())))
        : Optional.empty();
  }

  private static PicturedStep of(Piece piece, Step step, List<List<Part>> things) {
    View view = View.AROUND.getFirst().laidOn(step.down());
    List<Part> parts = things.stream().flatMap(List::stream).toList();
    Scene scene = Scene.of(parts, SideBySide.placed(view, things));
    Picture picture = Picture.of(scene, parts, parts.size(), view).ready();
    List<String> marked = things.stream().map(thing -> bestSeen(picture, thing)).toList();
    Picture.Notes notes =
        new Picture.Notes(List.of(), List.of(), marked).naming(UnitName.of(piece, things));
    return new NotedPicture(step.number(), picture, notes);
  }

  private static String bestSeen(Picture picture, List<Part> thing) {
    return thing.stream()
        .map(Part::name)
        .max(Comparator.comparingDouble(part -> picture.seenArea(List.of(part))))
        .orElseThrow();
  }
}
