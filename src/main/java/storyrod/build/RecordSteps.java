package storyrod.build;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.description.RecordEntry;
import storyrod.description.RecordEntry.Made;
import storyrod.description.RecordEntry.Photo;
import storyrod.description.RecordEntry.Spent;

/** The steps and stages of a plan that a record speaks of. */
public final class RecordSteps {
  private final List<Step> steps;

  RecordSteps(List<Step> steps) {
    this.steps = List.copyOf(steps);
  }

  /** What a record speaks of that the plan does not have. */
  List<Diagnostic> faults(RecordEntry record) {
    Stream<Diagnostic> numbers =
        Stream.concat(
                record.made().stream().map(Made::step), record.photos().stream().map(Photo::step))
            .flatMap(Optional::stream)
            .filter(number -> number.value() > steps.size())
            .map(this::noStep);
    Stream<Diagnostic> stages =
        record.hours().stream()
            .map(Spent::stage)
            .filter(written -> steps.stream().noneMatch(step -> is(step.stage(), written.value())))
            .map(this::noStage);
    return Stream.concat(numbers, stages).toList();
  }

  /** Whether a stage is meant by its key or by the maker's own title; case does not matter. */
  public static boolean is(Stage stage, String written) {
    return plain(name(stage)).equals(plain(written));
  }

  private static String name(Stage stage) {
    return stage.title().orElse(stage.key());
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  private Diagnostic noStep(Located<Integer> number) {
    return Diagnostic.error(
            "record-step",
            number.at(),
            "there is no step %d; they go from 1 to %d".formatted(number.value(), steps.size()))
        .hint("take the number from the plan set, which may have changed since");
  }

  private Diagnostic noStage(Located<String> stage) {
    List<String> names = steps.stream().map(step -> name(step.stage())).distinct().toList();
    return Diagnostic.error("record-stage", stage.at(), "there is no stage '" + stage.value() + "'")
        .hint("write one of " + String.join(", ", names));
  }
}
