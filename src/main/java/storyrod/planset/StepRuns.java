package storyrod.planset;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Numbers of steps as a list tells them, each end of a row of them leading to its step. */
public record StepRuns(List<Run> runs) {
  public StepRuns {
    runs = List.copyOf(runs);
  }

  /** Steps in a row; {@code to} is {@code from} for one alone. */
  public record Run(int from, int to) {}

  static StepRuns of(Collection<Integer> steps) {
    List<Run> runs = new ArrayList<>();
    for (int step : steps.stream().distinct().sorted().toList()) {
      if (!runs.isEmpty() && runs.getLast().to() == step - 1) {
        runs.add(new Run(runs.removeLast().from(), step));
      } else {
        runs.add(new Run(step, step));
      }
    }
    return new StepRuns(runs);
  }

  /** Whether it is a single step. */
  public boolean isOne() {
    return runs.size() == 1 && runs.getFirst().from() == runs.getFirst().to();
  }

  /** With what stands before the numbers of steps, or, under {@code KEY.many}, of several. */
  String told(String key, Texts texts) {
    return texts.say(isOne() ? key : key + ".many") + " " + text();
  }

  /** The same as a text, for measuring. */
  String text() {
    return runs.stream()
        .map(run -> run.from() == run.to() ? "" + run.from() : run.from() + "–" + run.to())
        .collect(Collectors.joining(", "));
  }
}
