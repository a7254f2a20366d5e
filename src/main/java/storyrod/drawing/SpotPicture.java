package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * A step that puts hardware of no known size or place on parts, such as felt that is cut to fit:
 * the parts that take it strong and toned in what stands, from the side from which most of the
 * least seen one shows.
 */
final class SpotPicture {
  private SpotPicture() {}

  /** Empty if the step mounts nothing on any part. */
  static Optional<PicturedStep> of(
      Supplier<Piece> then, BuildPlan plan, Step step, StepHardware hardware) {
    return step.verb() == Verb.MOUNT && !step.targets().isEmpty()
        ? Optional.of(of(then.get(), step, new Standing(then.get(), plan, step), hardware.on()))
        : Optional.empty();
  }

  private static PicturedStep of(Piece piece, Step step, Standing standing, List<Hardware> on) {
    List<String> marked = step.targets().stream().distinct().toList();
    List<List<Part>> things = standing.takenOut(marked);
    Picture best =
        View.AROUND.stream()
            .map(view -> picture(things, marked, on, view.laidOn(step.down())))
            .max(Comparator.comparingDouble(picture -> leastSeen(picture, marked)))
            .orElseThrow()
            .ready();
    Picture.Notes notes =
        new Picture.Notes(List.of(), List.of(), marked).naming(UnitName.of(piece, things));
    return new NotedPicture(step.number(), best, notes);
  }

  private static Picture picture(
      List<List<Part>> things, List<String> marked, List<Hardware> on, View view) {
    List<Part> all = things.stream().flatMap(List::stream).toList();
    List<Part> parts =
        Stream.concat(all.stream().filter(part -> marked.contains(part.name())), all.stream())
            .distinct()
            .toList();
    Scene scene = Scene.of(parts, SideBySide.placed(view, things)).wearing(on);
    return Picture.of(scene, parts, marked.size(), view, marked);
  }

  private static double leastSeen(Picture picture, List<String> marked) {
    return marked.stream().mapToDouble(part -> picture.seenArea(List.of(part))).min().orElseThrow();
  }
}
