package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping;
import storyrod.build.Clamping.Clamps;
import storyrod.build.OneUnit;
import storyrod.drawing.OneOfMany;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The values of a step that glues up three or more sub-assemblies of the same parts: its picture
 * shows the first of them, and its sentences speak of one. Marks that differ from one to the other
 * stand in the list of them, and in no sentence.
 */
record ForOne(Piece piece, PartPhrases phrases, FitData fit) {
  /** What counts for all of them together. */
  private static final List<String> OF_ALL = List.of("whole", "turns", "atOnce", "shopClamps");

  /**
   * The values that change where a step is told for one.
   *
   * @param all the values of all its sub-assemblies together
   */
  Map<String, Object> of(Step step, Map<String, Object> all) {
    List<String> built = fit.builtIn(step);
    if (!isTold(step, built, all)) {
      return Map.of("each", List.of());
    }
    Step one = new OneUnit(piece).of(step, built.getFirst());
    Map<String, Object> data = new LinkedHashMap<>(fit.of(one));
    data.put("hardware", new HardwareData(piece, phrases).of(one));
    data.keySet().removeAll(OF_ALL);
    Set<String> differing = differing(built);
    data.replaceAll((key, value) -> unmarked(value, differing));
    if (!areClampedAlike(step, built)) {
      data.put("clamps", all.get("clamps"));
      data.put("clampsOfAll", true);
    }
    data.put("each", built.stream().map(unit -> unit(unit, step.newParts())).toList());
    return data;
  }

  private boolean isTold(Step step, List<String> built, Map<String, Object> all) {
    return OneOfMany.isIn(piece, step)
        && all.get("whole") instanceof List<?> whole
        && !whole.isEmpty()
        && all.get("tiers") instanceof List<?> tiers
        && tiers.size() > 1
        && built.stream().map(this::titles).distinct().count() == 1;
  }

  /** Higher sub-assemblies may take more clamps. */
  private boolean areClampedAlike(Step step, List<String> built) {
    return built.stream()
            .map(unit -> Clamping.of(piece, new OneUnit(piece).of(step, unit)).clamps())
            .map(clamps -> clamps.stream().map(ForOne::setting).sorted().toList())
            .distinct()
            .count()
        == 1;
  }

  private static String setting(Clamps clamps) {
    return clamps.count() + " " + clamps.axis() + " " + clamps.opening();
  }

  private List<String> titles(String unit) {
    return parts(unit).stream().map(Part::title).sorted().toList();
  }

  private List<Part> parts(String unit) {
    return Nesting.of(piece).parts(unit);
  }

  /** The marks that some of the sub-assemblies do not have. */
  private Set<String> differing(List<String> built) {
    List<Set<String>> marks =
        built.stream()
            .map(unit -> parts(unit).stream().map(Part::mark).collect(Collectors.toSet()))
            .toList();
    Set<String> differing = new TreeSet<>();
    marks.forEach(differing::addAll);
    differing.removeIf(mark -> marks.stream().allMatch(each -> each.contains(mark)));
    return differing;
  }

  private Map<String, Object> unit(String unit, List<String> comeNew) {
    return Map.of(
        "name", phrases.assemblies(List.of(unit)),
        "marks",
            phrases.marks(parts(unit).stream().map(Part::name).filter(comeNew::contains).toList()));
  }

  /** The same value, in which no phrase has one of some marks. */
  private static Object unmarked(Object value, Set<String> marks) {
    return switch (value) {
      case List<?> list -> list.stream().map(each -> unmarked(each, marks)).toList();
      case Map<?, ?> map -> {
        Map<Object, Object> copy = new LinkedHashMap<>(map);
        copy.replaceAll((key, each) -> isMark(key, each, marks) ? "" : unmarked(each, marks));
        yield copy;
      }
      default -> value;
    };
  }

  private static boolean isMark(Object key, Object value, Set<String> marks) {
    return key.equals("mark") && value instanceof String mark && marks.contains(mark);
  }
}
