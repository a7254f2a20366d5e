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
    List<String> tools,
    List<SettingText> settings,
    String working,
    String waiting) {
  /** So many letters take about five lines of the largest size. */
  private static final int LONG_TITLE = 180;

  public StepText {
    sentences = List.copyOf(sentences);
    cautions = List.copyOf(cautions);
    tools = List.copyOf(tools);
    settings = List.copyOf(settings);
  }

  /** Whether the title, as of many parts with long names, is set smaller. */
  public boolean hasLongTitle() {
    return title.length() > LONG_TITLE;
  }

  /**
   * A value to set or to check.
   *
   * @param mark the mark of the part it is for; empty if it is for all of the step
   */
  public record SettingText(String name, String mark, String value) {}
}
