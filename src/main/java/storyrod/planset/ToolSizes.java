package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping;
import storyrod.build.Clamping.Clamps;
import storyrod.build.PanelClamps;
import storyrod.build.SettingTools;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.stock.GluedBlank;

/**
 * In which sizes the tools of some steps are wanted: bits by their diameters, cutters by the cuts
 * that they make, clamps by how many are on at once and how far the longest has to open.
 */
record ToolSizes(PlanSet set, List<StepEntry> entries, Texts texts) {
  private static final String CLAMPS = "bar-clamps";

  /** Tools with a cutter that may be narrower than its cut, which is then made in passes. */
  private static final Set<String> CUTTERS =
      new LinkedHashSet<>(List.of("straight-bit", "mortising"));

  /** The sizes by the key of their tool; a tool without any is left out. */
  Map<String, String> byTool() {
    Map<String, String> sizes = new LinkedHashMap<>();
    bits().forEach((tool, bits) -> sizes.put(tool, String.join(", ", bits)));
    int most = mostClamps();
    if (most > 0) {
      sizes.put(CLAMPS, clamps(most));
    }
    return sizes;
  }

  private Map<String, List<String>> bits() {
    Map<String, Map<String, TreeSet<Length>>> all = new TreeMap<>();
    for (StepEntry entry : entries) {
      for (Setting setting : step(entry).settings()) {
        add(setting, entry, all);
      }
    }
    Map<String, List<String>> told = new LinkedHashMap<>();
    all.forEach((tool, values) -> told.put(tool, told(values)));
    return told;
  }

  private void add(
      Setting setting, StepEntry entry, Map<String, Map<String, TreeSet<Length>>> all) {
    SettingTools.STANDARD
        .of(setting, entry.text()::uses)
        .ifPresent(
            tool ->
                pattern(setting, tool)
                    .ifPresent(
                        pattern ->
                            all.computeIfAbsent(tool, any -> new TreeMap<>())
                                .computeIfAbsent(pattern, any -> new TreeSet<>())
                                .add(setting.value())));
  }

  /** How a setting tells the size of its tool; none if it is only set on it. */
  private static Optional<String> pattern(Setting setting, String tool) {
    if (setting.key().equals("cut-width")) {
      return Optional.of("tools.cuts").filter(any -> CUTTERS.contains(tool));
    }
    if (setting.key().equals("cut-radius")) {
      return Optional.of("tools.radius");
    }
    return Optional.of("tools.bit").filter(any -> setting.key().endsWith("-diameter"));
  }

  private List<String> told(Map<String, TreeSet<Length>> values) {
    LengthFormat bits = texts.format().forBits();
    List<String> told = new ArrayList<>();
    values.forEach(
        (pattern, sizes) ->
            told.add(
                texts.say(
                    pattern,
                    sizes.stream().map(bits::formatWithUnit).collect(Collectors.joining(", ")))));
    return told;
  }

  private String clamps(int most) {
    return entries.stream()
        .filter(entry -> entry.text().uses(CLAMPS))
        .flatMap(entry -> openings(step(entry)))
        .max(Length::compareTo)
        .map(widest -> texts.say("tools.clamps.open", most, texts.lengthWithUnit(widest)))
        .orElseGet(() -> texts.say("tools.clamps", most));
  }

  /** How far the clamps of a step open: over its joints, or over a panel that it glues up. */
  private Stream<Length> openings(Step step) {
    Stream<Length> joints =
        Stream.concat(
                Clamping.of(set.piece(), step).clamps().stream(),
                Clamping.drawing(set.piece(), step).stream())
            .map(Clamps::opening);
    return Stream.concat(joints, panels(step));
  }

  private Stream<Length> panels(Step step) {
    return set.stock().gluedUp().stream()
        .filter(blank -> glues(step, blank))
        .map(blank -> blank.isLaminated() ? blank.thickness() : blank.width());
  }

  private boolean glues(Step step, GluedBlank blank) {
    return PanelClamps.glued(set.piece(), step).anyMatch(part -> part.mark().equals(blank.mark()));
  }

  /** How many are on at once at most; those of a step stay on until the schedule takes them off. */
  private int mostClamps() {
    ClampsOff off = new ClampsOff(set.schedule().off());
    Map<Integer, Integer> on = new LinkedHashMap<>();
    int most = 0;
    for (StepEntry entry : entries) {
      Step step = step(entry);
      off.of(step).forEach(on::remove);
      on.put(step.number(), Math.max(step.glueUp().clamps(), drawing(step)));
      most = Math.max(most, on.values().stream().mapToInt(each -> each).sum());
      if (!off.isLater(step)) {
        on.remove(step.number());
      }
    }
    return most;
  }

  /** The clamps that draw a joint home until its pegs are in: no glue holds them on. */
  private int drawing(Step step) {
    return Clamping.drawing(set.piece(), step).stream().mapToInt(Clamps::count).sum();
  }

  private Step step(StepEntry entry) {
    return set.build().steps().get(entry.number() - 1);
  }
}
