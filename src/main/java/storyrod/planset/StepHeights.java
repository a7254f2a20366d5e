package storyrod.planset;

import java.util.stream.Collectors;
import storyrod.planset.StepPages.Entry;

/**
 * The height that a step takes on its page beside its picture. The measures are those of the style
 * sheet, {@code templates/style/style.ftl}.
 */
final class StepHeights {
  /** Above and below a picture. */
  static final double AROUND_PICTURE_MM = 5;

  static final double STAGE_MM = 10.5;

  /** From this many parts on they stand in a row of marks, without names. */
  static final int MANY_PARTS = 9;

  private static final TextMeasure TITLE = new TextMeasure(PdfFonts.LIGHT, 25, 1.15);
  private static final TextMeasure SMALL_TITLE = new TextMeasure(PdfFonts.LIGHT, 17, 1.2);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final TextMeasure SMALL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);
  private static final double NUMBER_MM = 16.5;
  private static final double SMALL_NUMBER_MM = 11.5;
  private static final double HEAD_PADDING_MM = 3;
  private static final double BELOW_MM = 6.5;
  private static final double SIDE_MM = 54;
  private static final double BLOCK_MM = 6.6;
  private static final double ROW_MM = 1.6;

  private final double widthMm;

  StepHeights(Paper paper) {
    this.widthMm = paper.textWidthMm();
  }

  /** A step without its picture and without its stage's heading. */
  double of(Entry step, boolean pictured) {
    return head(step, pictured) + 1 + Math.max(left(step), side(step)) + BELOW_MM;
  }

  private double head(Entry step, boolean pictured) {
    TextMeasure measure = pictured ? TITLE : SMALL_TITLE;
    double title = measure.heightMm(step.text().title(), widthMm - 24) - measure.lineMm();
    return (pictured ? NUMBER_MM : SMALL_NUMBER_MM) + title + HEAD_PADDING_MM;
  }

  private double left(Entry step) {
    double width = widthMm - SIDE_MM - 8;
    double cautions =
        step.text().cautions().stream()
            .mapToDouble(each -> TEXT.heightMm("CAUTION " + each, width - 8) + 1)
            .sum();
    double sentences =
        step.text().sentences().stream()
            .mapToDouble(each -> TEXT.heightMm(each, width - 8) + 1.5)
            .sum();
    return (cautions > 0 ? cautions + 7 : 0) + sentences;
  }

  private double side(Entry step) {
    return parts(step)
        + block(step.hardware().stream().mapToDouble(row -> row(row.item(), 44)).sum())
        + block(SMALL.heightMm(String.join("; ", step.text().tools()), SIDE_MM))
        + block(step.text().settings().stream().mapToDouble(StepHeights::setting).sum())
        + block(SMALL.heightMm(step.working() + step.waiting() + " of work, then wait .", SIDE_MM));
  }

  private static double setting(StepText.SettingText setting) {
    String name = setting.mark() + "  " + setting.name();
    return row(name, SIDE_MM - 3 - SMALL.heightMm(setting.value(), 1e9) - 16);
  }

  private double parts(Entry step) {
    if (!step.sizes().isEmpty()) {
      return block(step.sizes().size() * row("", 1));
    }
    if (step.parts().size() >= MANY_PARTS) {
      String marks =
          step.parts().stream()
              .map(part -> part.mark() + " × " + part.count() + ", ")
              .collect(Collectors.joining());
      return block(SMALL.heightMm(marks, SIDE_MM));
    }
    return block(step.parts().stream().mapToDouble(part -> row(part.title(), 33)).sum());
  }

  private static double row(String text, double widthMm) {
    return Math.max(SMALL.lineMm(), SMALL.heightMm(text, widthMm)) + ROW_MM;
  }

  private static double block(double content) {
    return content == 0 ? 0 : content + BLOCK_MM;
  }
}
