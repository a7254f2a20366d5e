package storyrod.planset;

import java.util.List;

/**
 * A step in words for the reader; lengths stand in them as printed.
 *
 * @param title an imperative without a full stop
 * @param sentences what to do, in order
 * @param cautions what could hurt or spoil, most important first
 */
public record StepText(
    String title,
    List<String> sentences,
    List<String> cautions,
    List<String> tools,
    List<String> settings) {
  public StepText {
    sentences = List.copyOf(sentences);
    cautions = List.copyOf(cautions);
    tools = List.copyOf(tools);
    settings = List.copyOf(settings);
  }
}
