package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.AllProjects;
import storyrod.measure.Length;
import storyrod.words.Words;

/** Which tool a setting is dialled in on. */
class SettingToolsTest {
  private static Optional<String> tool(String key, String... tools) {
    Setting setting = new Setting(key, Optional.empty(), Length.mm(3));
    return SettingTools.STANDARD.of(setting, List.of(tools)::contains);
  }

  @Test
  void theToolIsOneThatTheStepNames() {
    assertEquals(Optional.of("dado-set"), tool("cut-depth", "table-saw", "dado-set"));
    assertEquals(Optional.of("straight-bit"), tool("cut-depth", "router", "straight-bit"));
    assertEquals(Optional.of("pocket-hole-jig"), tool("drill-stock", "drill", "pocket-hole-jig"));
    assertEquals(Optional.of("depth-stop"), tool("drill-depth", "drill", "depth-stop"));
  }

  @Test
  void whatIsMeasuredAtTheWoodIsNoSetting() {
    assertEquals(Optional.empty(), tool("diagonal", "tape"));
    assertEquals(Optional.empty(), tool("set-from-left", "tape", "drill"));
  }

  @Test
  void everyToolOfTheTableHasWords() {
    new TreeSet<>(SettingTools.STANDARD.all())
        .forEach(tool -> assertTrue(Words.ENGLISH.has("tool." + tool), tool));
  }

  /** A setting that could be dialled in somewhere finds its tool in every step of every project. */
  @Test
  void noSettingOfAnyProjectIsWithoutItsTool() {
    for (AllProjects.Sample project : AllProjects.all()) {
      for (Step step : project.set().build().steps()) {
        for (Setting setting : step.settings()) {
          List<String> tools = SettingTools.STANDARD.candidates(setting.key());
          assertTrue(
              tools.isEmpty()
                  || SettingTools.STANDARD.of(setting, step.tools()::contains).isPresent(),
              project.name() + " step " + step.number() + " " + setting + " " + step.tools());
        }
      }
    }
  }
}
