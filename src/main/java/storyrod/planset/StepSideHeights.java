package storyrod.planset;

import java.util.List;
import java.util.stream.Collectors;
import storyrod.planset.StepEntry.SizeRow;
import storyrod.planset.StepText.SettingText;

/**
 * The heights of what stands in the column beside a step's picture or its sentences: its lists, and
 * the drawings below these.
 *
 * @param texts the words that stand before what a line lists
 * @param isSigned whether steps are ticked and signed, with room for what was measured
 */
record StepSideHeights(Texts texts, boolean isSigned) {
  private static final TextMeasure SMALL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);
  private static final double ROW_MM = 1.6;
  private static final double SMALL_ROW_MM = 1;

  /** Room to write what was measured, below each of several checks. */
  private static final double MEASURED_MM = 6;

  /** The height of the lists beside a picture or, where there is none, beside sentences. */
  double of(StepEntry step, boolean pictured) {
    return pictured ? besidePicture(step) : besideSentences(step);
  }

  /** The height of the lists beside a picture. */
  double besidePicture(StepEntry step) {
    return parts(step)
        + hardware(step)
        + block(SMALL.heightMm(tools(step), StepMeasures.SIDE_MM))
        + settings(step)
        + block(SMALL.heightMm(time(step), StepMeasures.SIDE_MM));
  }

  /** The height of the lists beside small sentences, and of a strip below them. */
  double besideSentences(StepEntry step) {
    double parts =
        step.sizes().isEmpty()
            ? line("step.parts", marks(step))
            : block(
                step.sizes().stream().mapToDouble(row -> size(row.size()) + SMALL_ROW_MM).sum());
    return parts + lines(step);
  }

  /** The same where the sizes stand below the sentences. */
  double withoutSizes(StepEntry step) {
    return (step.sizes().isEmpty() ? line("step.parts", marks(step)) : 0) + lines(step);
  }

  /** The height of a row of sizes. */
  double sizes(List<SizeRow> row) {
    return row.stream().mapToDouble(each -> size(each.size())).max().orElse(0) + SMALL_ROW_MM;
  }

  /** The height of what stands beside sentences where there are no lists. */
  static double besideMm(StepEntry step) {
    return step.beside().stream()
        .mapToDouble(each -> each.heightMm() + StepMeasures.AROUND_PICTURE_MM)
        .sum();
  }

  /** The height of a strip that stands below the lists. */
  private static double asideMm(StepEntry step) {
    return step.asides().stream()
        .mapToDouble(each -> each.heightMm() + StepMeasures.AROUND_PICTURE_MM)
        .sum();
  }

  private double lines(StepEntry step) {
    return asideMm(step)
        + hardware(step)
        + settings(step, isSigned && step.hasFields() ? MEASURED_MM : 0)
        + (step.text().tools().isEmpty() ? 0 : line("step.tools", tools(step)))
        + line("step.time", time(step));
  }

  private static double hardware(StepEntry step) {
    return block(step.hardware().stream().mapToDouble(row -> row(row.item(), 31)).sum());
  }

  private static double settings(StepEntry step) {
    return settings(step, 0);
  }

  /** The settings, each with some room below it. */
  private static double settings(StepEntry step, double belowMm) {
    List<SettingText> settings = step.text().settings();
    return block(settings.stream().mapToDouble(each -> setting(each) + belowMm).sum());
  }

  private static String tools(StepEntry step) {
    return String.join("; ", step.text().tools());
  }

  private String time(StepEntry step) {
    return step.waiting().isEmpty()
        ? texts.say("step.work", step.working())
        : texts.say("step.work-and-wait", step.working(), step.waiting());
  }

  private double line(String title, String text) {
    return SMALL.heightMm(texts.say(title) + " " + text, StepMeasures.SIDE_MM) + 1.6;
  }

  private static double setting(SettingText setting) {
    String name = setting.mark() + "  " + setting.name();
    return Math.max(row(name, StepMeasures.SIDE_MM - 20.5), size(setting.value()) + ROW_MM);
  }

  /** In both units what stands in brackets takes a line of its own. */
  private static double size(String printed) {
    return SMALL.lineMm() * (printed.contains(" [") ? 2 : 1);
  }

  private static double parts(StepEntry step) {
    return step.partsInRow()
        ? block(SMALL.heightMm(marks(step), StepMeasures.SIDE_MM))
        : block(step.parts().stream().mapToDouble(part -> row(part.title(), 31)).sum());
  }

  private static String marks(StepEntry step) {
    return step.parts().stream()
        .map(part -> part.mark() + " × " + part.count() + ", ")
        .collect(Collectors.joining());
  }

  private static double row(String text, double widthMm) {
    return Math.max(SMALL.lineMm(), SMALL.heightMm(text, widthMm)) + ROW_MM;
  }

  private static double block(double content) {
    return content == 0 ? 0 : content + StepMeasures.BLOCK_MM;
  }
}
