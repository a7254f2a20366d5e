package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/**
 * Which steps of a plan set are printed, as asked for; each list that is not empty narrows the
 * choice.
 *
 * @param stages names of stages as printed, or their numbers; case and signs do not matter
 * @param steps numbers of steps
 * @param parts marks of parts that the steps work on
 */
public record Choice(List<String> stages, List<Integer> steps, List<String> parts) {
  /** All steps. */
  public static final Choice ALL = new Choice(List.of(), List.of(), List.of());

  public Choice {
    stages = List.copyOf(stages);
    steps = List.copyOf(steps);
    parts = List.copyOf(parts);
  }

  /** The steps that are chosen, with the marks of the parts that they work on. */
  Chosen in(Piece piece, BuildPlan build, Texts texts) {
    if (equals(ALL)) {
      return Chosen.all(piece, build);
    }
    Map<Step, Integer> stageOf = stageNumbers(build);
    List<Step> chosen =
        build.steps().stream()
            .filter(step -> stages.isEmpty() || isIn(step, stageOf.get(step), texts))
            .filter(step -> steps.isEmpty() || steps.contains(step.number()))
            .filter(
                step -> parts.isEmpty() || marks(piece, step).stream().anyMatch(parts::contains))
            .toList();
    return Chosen.of(piece, chosen, false);
  }

  /**
   * What of the choice there is not, as a sentence with what there is; empty if the choice holds.
   *
   * @param build the steps in their order
   */
  public Optional<String> fault(Piece piece, BuildPlan build, Printing printing) {
    Texts texts = new Texts(piece.description().printed(), printing.words());
    return Stream.of(unknownStage(build, texts), unknownStep(build), unknownPart(piece))
        .flatMap(Optional::stream)
        .findFirst()
        .or(
            () ->
                in(piece, build, texts).steps().isEmpty()
                    ? Optional.of(
                        "no step is in all that is chosen; name fewer stages, steps or parts")
                    : Optional.empty());
  }

  private Optional<String> unknownStage(BuildPlan build, Texts texts) {
    Map<Step, Integer> stageOf = stageNumbers(build);
    return stages.stream()
        .filter(
            stage -> {
              Choice one = new Choice(List.of(stage), List.of(), List.of());
              return build.steps().stream()
                  .noneMatch(step -> one.isIn(step, stageOf.get(step), texts));
            })
        .findFirst()
        .map(
            stage -> "there is no stage '%s'; there are %s".formatted(stage, titles(build, texts)));
  }

  private Optional<String> unknownStep(BuildPlan build) {
    int last = build.steps().size();
    return steps.stream()
        .filter(step -> step < 1 || step > last)
        .findFirst()
        .map(step -> "there is no step %d; they go from 1 to %d".formatted(step, last));
  }

  private Optional<String> unknownPart(Piece piece) {
    List<String> marks = piece.marks().stream().map(Mark::mark).toList();
    return parts.stream()
        .filter(part -> !marks.contains(part))
        .findFirst()
        .map(
            part ->
                "no part has the mark '%s'; there are %s"
                    .formatted(part, String.join(", ", marks)));
  }

  private static String titles(BuildPlan build, Texts texts) {
    Set<String> titles = new LinkedHashSet<>();
    build.steps().forEach(step -> titles.add(plain(StepPages.stageTitle(step.stage(), texts))));
    return String.join(", ", titles);
  }

  private boolean isIn(Step step, int number, Texts texts) {
    String title = plain(StepPages.stageTitle(step.stage(), texts));
    return stages.stream()
        .anyMatch(each -> plain(each).equals(title) || each.equals(Integer.toString(number)));
  }

  private static String plain(String title) {
    return title
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", "-")
        .replaceAll("^-|-$", "");
  }

  /** The number of the stage that each step stands in; a stage that comes again counts again. */
  private static Map<Step, Integer> stageNumbers(BuildPlan build) {
    Map<Step, Integer> numbers = new LinkedHashMap<>();
    int number = 0;
    Optional<Step> before = Optional.empty();
    for (Step step : build.steps()) {
      boolean same = before.filter(last -> last.stage().equals(step.stage())).isPresent();
      number += same ? 0 : 1;
      numbers.put(step, number);
      before = Optional.of(step);
    }
    return numbers;
  }

  static Set<String> marks(Piece piece, Step step) {
    return StepEntries.partNames(step).stream()
        .map(name -> piece.part(name).mark())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
