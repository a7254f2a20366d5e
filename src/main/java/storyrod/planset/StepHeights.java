package storyrod.planset;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The height that a step takes on its page beside its picture. The measures are those of the style
 * sheet, {@code templates/style/style.ftl}.
 */
final class StepHeights {
  /** Above and below a picture. */
  static final double AROUND_PICTURE_MM = 5;

  /** Above and below the strip of a step that cuts. */
  static final double AROUND_STRIP_MM = 2.5;

  static final double SMALL_BELOW_MM = 4.5;

  static final double STAGE_MM = 10.5;

  private static final TextMeasure TITLE = new TextMeasure(PdfFonts.LIGHT, 25, 1.15);
  private static final TextMeasure SMALL_TITLE = new TextMeasure(PdfFonts.LIGHT, 17, 1.2);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final TextMeasure SMALL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);
  private static final double NUMBER_MM = 16.5;
  private static final double SMALL_NUMBER_MM = 9.8;
  private static final double HEAD_PADDING_MM = 2.5;

  /** Below a step with a picture; at the end of a page it may be cut short. */
  static final double BELOW_MM = 6.5;

  private static final double GUTTER_MM = 8;
  static final double BLOCK_MM = 6.6;
  private static final double ROW_MM = 1.6;
  private static final double SMALL_ROW_MM = 1;

  /** The line to tick and sign, where the edition has one. */
  private static final double BOXES_MM = 11;

  /** Room to write what was measured, below each of several checks. */
  private static final double MEASURED_MM = 6;

  private final double widthMm;
  private final double heightMm;
  private final double roomMm;
  private final double signMm;

  StepHeights(Print print) {
    this.widthMm = print.paper().textWidthMm();
    this.heightMm = print.paper().textHeightMm();
    this.roomMm = roomMm(print.paper());
    this.signMm = print.edition().is("boxes") ? BOXES_MM : 0;
  }

  /** A step without its picture and without its stage's heading. */
  double of(StepEntry step, boolean pictured) {
    double side = pictured ? side(step) : smallSide(step);
    return head(step, pictured)
        + 1
        + Math.max(left(step, pictured), side)
        + signMm
        + below(pictured);
  }

  /**
   * A step of which the sentences stand in two columns below the picture and the lists beside it,
   * without these two and without its stage's heading.
   */
  double inColumns(StepEntry step) {
    double cautions = cautions(step, widthMm);
    return head(step, true)
        + cautions
        + 1
        + columns(step, firstColumn(step))
        + signMm
        + below(true);
  }

  /** The same with the lists, as low as it can be: no picture is higher than they are. */
  double listsInColumns(StepEntry step) {
    return AROUND_PICTURE_MM + inColumns(step) + lists(step) - BELOW_MM;
  }

  /**
   * Names of parts give way where only without them the lists have room beside a picture, or on the
   * first page of a step that needs more.
   */
  StepEntry fitting(StepEntry named) {
    StepEntry row = named.inRow();
    return isTooHigh(named) && (!isTooHigh(row) || beginning(named) > roomMm) ? row : named;
  }

  private boolean isTooHigh(StepEntry step) {
    return listsInColumns(step) > heightMm;
  }

  /** A title and the lists below, where all else stands beside these. */
  private double beginning(StepEntry step) {
    return besideLists(step) + lists(step);
  }

  /** What stands above and below the lists of a step of which all else stands beside them. */
  double besideLists(StepEntry step) {
    return head(step, true) + 1 + below(true);
  }

  /** How many of the sentences make the first of two columns, so that both are as low as can be. */
  int firstColumn(StepEntry step) {
    return IntStream.rangeClosed(1, Math.max(1, step.text().sentences().size()))
        .boxed()
        .min(Comparator.comparingDouble(first -> columns(step, first)))
        .orElseThrow();
  }

  /** The height of the lists that stand beside a picture. */
  double lists(StepEntry step) {
    return side(step);
  }

  /** The width of a picture with lists beside it. */
  double besideListsMm() {
    return widthMm - StepEntry.SIDE_MM - GUTTER_MM;
  }

  private double columns(StepEntry step, int most) {
    List<String> sentences = step.text().sentences();
    int first = Math.min(most, sentences.size());
    double width = (widthMm - GUTTER_MM) / 2;
    return Math.max(
        sentences(sentences.subList(0, first), width, true),
        sentences(sentences.subList(first, sentences.size()), width, true));
  }

  /** The height of a page for steps: the last has no space below it. */
  static double roomMm(Paper paper) {
    return paper.roomMm() + SMALL_BELOW_MM;
  }

  double roomMm() {
    return roomMm;
  }

  /** Whether a page holds a step of some height: the space below it may be cut short. */
  boolean isOnePage(double stepMm, boolean pictured) {
    return stepMm - below(pictured) <= heightMm;
  }

  /** The height of the line to tick and sign. */
  double signMm() {
    return signMm;
  }

  /** The space below a step. */
  double below(boolean pictured) {
    return pictured ? BELOW_MM : SMALL_BELOW_MM;
  }

  /** The height of number and title. */
  double head(StepEntry step, boolean pictured) {
    TextMeasure measure = pictured && !step.text().hasLongTitle() ? TITLE : SMALL_TITLE;
    double title = measure.heightMm(step.text().title(), widthMm - 24) - measure.lineMm();
    return (pictured ? NUMBER_MM : SMALL_NUMBER_MM) + title + HEAD_PADDING_MM;
  }

  private double left(StepEntry step, boolean pictured) {
    double width = besideListsMm();
    return cautions(step, width) + sentences(step.text().sentences(), width, pictured);
  }

  /** The height of the cautions and the first sentence beside the lists. */
  double firstWords(StepEntry step) {
    List<String> first = step.text().sentences().stream().limit(1).toList();
    return cautions(step) + sentences(first, besideListsMm(), true);
  }

  /** The same with a strip of some height below its lists. */
  double withAside(StepEntry step, double stripMm) {
    double side = smallSide(step) + stripMm + AROUND_PICTURE_MM;
    return head(step, false) + 1 + Math.max(left(step, false), side) + signMm + below(false);
  }

  /** What its sentences leave to a strip below its lists. */
  double asideMm(StepEntry step, double mostMm) {
    double left = left(step, false) - smallSide(step) - AROUND_PICTURE_MM;
    return Math.clamp(left, 0, mostMm);
  }

  /** The height of a strip that stands below the lists. */
  private static double asideMm(StepEntry step) {
    return step.asides().stream().mapToDouble(each -> each.heightMm() + AROUND_PICTURE_MM).sum();
  }

  /** The height of what stands beside sentences where there are no lists. */
  static double besideMm(StepEntry step) {
    return step.beside().stream().mapToDouble(each -> each.heightMm() + AROUND_PICTURE_MM).sum();
  }

  /** How much higher a step on one page gets if that stands below its lists; 0 if it has room. */
  double moreBesideMm(StepEntry step) {
    boolean pictured = !step.pictures().isEmpty();
    double lists = pictured ? side(step) : smallSide(step);
    double room =
        step.firstColumn() == 0
            ? left(step, pictured)
            : step.pictures().getFirst().heightMm() + AROUND_PICTURE_MM;
    return Math.max(0, lists + besideMm(step) - Math.max(lists, room));
  }

  /** The height of the cautions beside the lists. */
  double cautions(StepEntry step) {
    return cautions(step, besideListsMm());
  }

  private static double cautions(StepEntry step, double width) {
    double cautions =
        step.text().cautions().stream()
            .mapToDouble(each -> TEXT.heightMm("CAUTION " + each, width - 8) + 0.8)
            .sum();
    return cautions > 0 ? cautions + 5.5 : 0;
  }

  private static double sentences(List<String> sentences, double width, boolean pictured) {
    return sentences.stream().mapToDouble(each -> sentence(each, width, pictured)).sum();
  }

  static double sentence(String sentence, double width, boolean pictured) {
    return TEXT.heightMm(sentence, width - 8) + (pictured ? 1.5 : 0.7);
  }

  private double side(StepEntry step) {
    return parts(step)
        + hardware(step)
        + block(SMALL.heightMm(tools(step), StepEntry.SIDE_MM))
        + settings(step)
        + block(SMALL.heightMm(time(step), StepEntry.SIDE_MM));
  }

  private double smallSide(StepEntry step) {
    double parts =
        step.sizes().isEmpty()
            ? line("Parts " + marks(step))
            : block(
                step.sizes().stream().mapToDouble(row -> size(row.size()) + SMALL_ROW_MM).sum());
    return parts + lines(step);
  }

  /** The height of the lists beside small sentences where the sizes stand below. */
  double sideWithoutSizes(StepEntry step) {
    return (step.sizes().isEmpty() ? line("Parts " + marks(step)) : 0) + lines(step);
  }

  /** The height of a row of sizes. */
  double sizes(List<StepEntry.SizeRow> row) {
    return row.stream().mapToDouble(each -> size(each.size())).max().orElse(0) + SMALL_ROW_MM;
  }

  private double lines(StepEntry step) {
    return asideMm(step)
        + hardware(step)
        + settings(step, signMm > 0 && step.hasFields() ? MEASURED_MM : 0)
        + (step.text().tools().isEmpty() ? 0 : line("Tools " + tools(step)))
        + line("Time " + time(step));
  }

  private static double hardware(StepEntry step) {
    return block(step.hardware().stream().mapToDouble(row -> row(row.item(), 31)).sum());
  }

  private static double settings(StepEntry step) {
    return settings(step, 0);
  }

  /** The settings, each with some room below it. */
  private static double settings(StepEntry step, double belowMm) {
    List<StepText.SettingText> settings = step.text().settings();
    return block(settings.stream().mapToDouble(each -> setting(each) + belowMm).sum());
  }

  private static String tools(StepEntry step) {
    return String.join("; ", step.text().tools());
  }

  private static String time(StepEntry step) {
    return step.working() + " of work, then wait " + step.waiting() + ".";
  }

  private static double line(String text) {
    return SMALL.heightMm(text, StepEntry.SIDE_MM) + 1.6;
  }

  private static double setting(StepText.SettingText setting) {
    String name = setting.mark() + "  " + setting.name();
    return Math.max(row(name, StepEntry.SIDE_MM - 20.5), size(setting.value()) + ROW_MM);
  }

  /** In both units what stands in brackets takes a line of its own. */
  private static double size(String printed) {
    return SMALL.lineMm() * (printed.contains(" [") ? 2 : 1);
  }

  private static double parts(StepEntry step) {
    return step.partsInRow()
        ? block(SMALL.heightMm(marks(step), StepEntry.SIDE_MM))
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
    return content == 0 ? 0 : content + BLOCK_MM;
  }
}
