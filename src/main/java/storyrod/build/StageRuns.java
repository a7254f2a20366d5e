package storyrod.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;

/**
 * Keeps a step or two that fill a wait within the stage around them: a heading for each would tear
 * that stage apart. A stage of the maker's own stays as it is; boards that are glued up between the
 * steps of another stage, where the clamps are free only then, have a heading that says so.
 */
final class StageRuns {
  /** More steps than this are worth a heading of their own. */
  private static final int FEW = 2;

  private static final Stage PANELS = new Stage("panels", Optional.empty());

  private StageRuns() {}

  /** Steps {@code from} to before {@code to}, all of one stage. */
  private record Run(int from, int to, Stage stage) {
    int length() {
      return to - from;
    }

    boolean isOwn() {
      return stage.title().isPresent();
    }
  }

  static List<Step> joined(List<Step> steps) {
    Optional<Run> lone = lone(runs(steps));
    return lone.map(run -> joined(moved(steps, run))).orElse(steps);
  }

  private static List<Step> moved(List<Step> steps, Run run) {
    List<Step> moved = new ArrayList<>(steps);
    List<Step> lone = steps.subList(run.from(), run.to());
    boolean isGlueUp =
        lone.stream().allMatch(step -> step.glueUp().isSpread() && step.verb() == Verb.MILL);
    Stage stage = isGlueUp ? PANELS : steps.get(run.from() - 1).stage();
    for (Step step : lone) {
      moved.set(step.number() - 1, step.in(stage));
    }
    return List.copyOf(moved);
  }

  private static List<Run> runs(List<Step> steps) {
    List<Run> runs = new ArrayList<>();
    for (int from = 0, to; from < steps.size(); from = to) {
      Stage stage = steps.get(from).stage();
      to = from + 1;
      while (to < steps.size() && steps.get(to).stage().equals(stage)) {
        to++;
      }
      runs.add(new Run(from, to, stage));
    }
    return runs;
  }

  /** The shortest run, of a few steps, that tears a stage apart. */
  private static Optional<Run> lone(List<Run> runs) {
    return IntStream.range(1, Math.max(1, runs.size() - 1))
        .filter(i -> isTearing(runs.get(i - 1), runs.get(i), runs.get(i + 1)))
        .mapToObj(runs::get)
        .min(Comparator.comparingInt(Run::length));
  }

  private static boolean isTearing(Run before, Run run, Run after) {
    return run.length() <= FEW
        && !run.isOwn()
        && !run.stage().equals(PANELS)
        && !before.isOwn()
        && before.stage().equals(after.stage());
  }
}
