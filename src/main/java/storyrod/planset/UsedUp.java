package storyrod.planset;

import java.util.List;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;

/**
 * Small things that steps use up, beside wood, hardware, glue and finish: they have no amount and
 * no cost, but who is without one at the bench has to go for it.
 *
 * @param sentence all of them as told; empty if there are none
 */
public record UsedUp(List<Thing> things, String sentence) {
  static final UsedUp NOTHING = new UsedUp(List.of(), "");

  /** The keys of the tools that wear out or stay on the piece, in the order of the list. */
  private static final List<String> KEYS =
      List.of(
          "glue-brush",
          "double-sided-tape",
          "masking-tape",
          "wood-filler",
          "finish-brush",
          "lint-free-cloth",
          "fine-pad",
          "paraffin-wax",
          "mineral-spirits");

  public UsedUp {
    things = List.copyOf(things);
  }

  /**
   * A thing as it is asked for.
   *
   * @param where the steps that use it, in words: {@code step 39}, {@code steps 2, 28–31}
   */
  public record Thing(String item, String where) {}

  /** What all steps of a plan use up, whichever of them are printed. */
  static UsedUp of(PlanSet set, Wording wording, Texts texts) {
    List<Thing> things =
        KEYS.stream()
            .map(key -> new Thing(texts.say("used-up." + key), where(set, wording, texts, key)))
            .filter(thing -> !thing.where.isEmpty())
            .toList();
    String items =
        things.stream()
            .map(thing -> texts.say("used-up.item", thing.item, thing.where))
            .collect(Collectors.joining(", "));
    return things.isEmpty() ? NOTHING : new UsedUp(things, texts.say("used-up.all", items));
  }

  private static String where(PlanSet set, Wording wording, Texts texts, String key) {
    List<Integer> steps =
        set.build().steps().stream()
            .filter(step -> wording.of(step).uses(key))
            .map(Step::number)
            .toList();
    return switch (steps.size()) {
      case 0 -> "";
      case 1 -> texts.say("used-up.step", steps.getFirst());
      default -> texts.say("used-up.steps", StepRuns.of(steps).text());
    };
  }
}
