package storyrod.build;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import storyrod.build.BuildPlan.Setting;

/** On which tool a setting is dialled in, by {@code setting-tools.csv}. */
public final class SettingTools {
  public static final SettingTools STANDARD = new SettingTools();

  /** By the beginning of a setting's key, the longest first: the tools that take it. */
  private final Map<String, List<String>> tools = new LinkedHashMap<>();

  private SettingTools() {
    Map<String, List<List<String>>> rows = Figures.read("setting-tools.csv");
    rows.keySet().stream()
        .sorted(Comparator.comparing(String::length).reversed().thenComparing(key -> key))
        .forEach(key -> tools.put(key, tools(rows.get(key).getFirst())));
  }

  private static List<String> tools(List<String> row) {
    return row.get(1).isBlank() ? List.of() : List.of(row.get(1).strip().split(" "));
  }

  /**
   * The key of the tool on which a setting is dialled in; none if it is measured at the wood.
   *
   * @param has whether its step names a tool
   */
  public Optional<String> of(Setting setting, Predicate<String> has) {
    return candidates(setting.key()).stream().filter(has).findFirst();
  }

  /** All tools that take any setting. */
  List<String> all() {
    return tools.values().stream().flatMap(List::stream).distinct().toList();
  }

  /** The tools that take a setting; none for one that is measured at the wood. */
  List<String> candidates(String setting) {
    return tools.entrySet().stream()
        .filter(each -> setting.startsWith(each.getKey()))
        .findFirst()
        .map(Map.Entry::getValue)
        .orElseThrow(() -> new IllegalStateException("bug: no row of tools for " + setting));
  }
}
