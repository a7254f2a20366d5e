package storyrod.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Description;
import storyrod.description.GlueEntry;

/**
 * How long the glue of a piece holds up the work, in minutes: the one place from which rules,
 * schedule and words have it.
 *
 * @param clamped its time in clamps, where the description gives it or the sort of glue
 * @param cured until tools may run across a joint
 */
public record GlueTimes(Optional<Integer> clamped, int cured) {
  /** As long as a glue of which nothing is known cures: a day, as PVA (common practice). */
  public static final GlueTimes USUAL = new GlueTimes(Optional.empty(), 24 * 60);

  /** Traits of work that waits until glue has cured; the table gives their times for a day. */
  private static final List<String> CURED =
      List.of("mill-panel", "mill-layers", "mill-staved-layers", "rejoin");

  private static final Map<String, List<List<String>>> KINDS = Figures.read("glues.csv");

  /** What a description says of its glue, and else what is usual for that sort of glue. */
  public static GlueTimes of(Description description) {
    Optional<GlueEntry> glue = description.glue();
    int hours =
        glue.flatMap(GlueEntry::cureHours)
            .or(() -> glue.flatMap(GlueEntry::kind).map(GlueTimes::usualHours))
            .orElse(USUAL.cured / 60);
    Optional<Integer> clamped =
        glue.flatMap(GlueEntry::clampMinutes)
            .or(() -> glue.flatMap(GlueEntry::kind).map(GlueTimes::usualClampMinutes));
    return new GlueTimes(clamped, 60 * hours);
  }

  /** The minutes for which clamps stay on a sort of glue. */
  static int usualClampMinutes(String kind) {
    return Integer.parseInt(KINDS.get(kind).getFirst().get(1));
  }

  /** The hours in which a sort of glue cures. */
  static int usualHours(String kind) {
    return Integer.parseInt(KINDS.get(kind).getFirst().get(2));
  }

  /** How long clamps stay on. */
  public int clampMinutes() {
    return waiting(List.of("fit-glue"));
  }

  /** How long work with some traits waits: by the table, but for what is known of the glue. */
  int waiting(List<String> traits) {
    int usual = Figures.STANDARD.waiting(traits);
    if (traits.stream().anyMatch(CURED::contains)) {
      return usual * cured / USUAL.cured;
    }
    return traits.contains("fit-glue") || traits.contains("fit-peg-glued")
        ? clamped.orElse(usual)
        : usual;
  }
}
