package storyrod.planset;

import java.util.List;

/**
 * The words of a step.
 *
 * @param title an imperative, without a full stop
 * @param sentences one action each, in order
 * @param cautions what to heed before starting, the gravest first
 * @param working the working time in words
 * @param waiting the waiting time in words; empty if there is none
 */
public record StepText(
    String title,
    List<String> sentences,
    List<String> cautions,
    List<ToolText> toolTexts,
    List<SettingText> settings,
    String working,
    String waiting) {
  /** So many letters take about five lines of the largest size. */
  private static final int LONG_TITLE = 180;

  public StepText {
    sentences = List.copyOf(sentences);
    cautions = List.copyOf(cautions);
    toolTexts = List.copyOf(toolTexts);
    settings = List.copyOf(settings);
  }

  /** Its tools in words. */
  public List<String> tools() {
    return toolTexts.stream().map(ToolText::words).toList();
  }

  /** Whether it uses a tool, by its key: words differ from language to language. */
  boolean uses(String key) {
    return toolTexts.stream().anyMatch(tool -> tool.key().equals(key));
  }

  /** Whether the title, as of many parts with long names, is set smaller. */
  public boolean hasLongTitle() {
    return title.length() > LONG_TITLE;
  }

  /** A tool by its key and in the words of the reader. */
  public record ToolText(String key, String words) {}

  /**
   * A value to set or to check.
   *
   * @param mark the mark of the part it is for; empty if it is for all of the step
   */
  public record SettingText(String name, String mark, String value) {}
}
