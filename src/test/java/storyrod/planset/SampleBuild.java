package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Need;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** The build order of the sample. */
final class SampleBuild {
  private SampleBuild() {}

  static BuildPlan of(Piece piece) {
    List<Step> steps = new ArrayList<>();
    Stage milling = new Stage("own", Optional.of("Milling"));
    Stage joinery = new Stage("own", Optional.of("Case & joinery"));
    for (Mark mark : piece.marks()) {
      steps.add(step(steps.size() + 1, milling, Verb.CUT, mark.parts(), List.of()));
    }
    steps.add(
        step(
            steps.size() + 1,
            joinery,
            Verb.FIT,
            List.of("bottom", "left-side"),
            List.of("left-side")));
    steps.add(
        step(
            steps.size() + 1,
            joinery,
            Verb.FIT,
            List.of("bottom", "right-side"),
            List.of("right-side")));
    return new BuildPlan(
        steps, List.of(new Need("cut bottom", "fit left-side", "machine-before-glue")));
  }

  private static Step step(
      int number, Stage stage, Verb verb, List<String> parts, List<String> arriving) {
    Operation operation =
        new Operation(verb, parts.getFirst(), parts, List.of(), List.of(), List.of(), 12, 0);
    boolean fit = verb == Verb.FIT;
    return new Step(
        number,
        stage,
        List.of(operation),
        arriving,
        List.of(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        storyrod.geometry.Face.BOTTOM,
        fit ? List.of(new ItemCount("screw", 6)) : List.of(),
        List.of(),
        List.of(),
        List.of(),
        fit ? List.of("Keep the better face outwards.") : List.of(),
        12 + number,
        fit ? 60 : 0);
  }
}
