package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.planset.StepText.SettingText;

/** Settings as rows of a list: what is the same for several parts is one row with all marks. */
final class SettingRows {
  private SettingRows() {}

  /** The rows, each where its first setting stood. */
  static List<SettingText> of(List<SettingText> settings) {
    Map<List<Object>, SettingText> rows = new LinkedHashMap<>();
    for (SettingText each : settings) {
      rows.merge(
          List.of(each.name(), each.value(), each.mark().isEmpty()), each, SettingRows::joined);
    }
    return List.copyOf(rows.values());
  }

  private static SettingText joined(SettingText row, SettingText next) {
    return new SettingText(row.name(), row.mark() + ", " + next.mark(), row.value());
  }
}
