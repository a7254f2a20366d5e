package storyrod.planset;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The height that a step takes on its page beside its picture. */
final class StepHeights {
  private static final TextMeasure TITLE = new TextMeasure(PdfFonts.LIGHT, 25, 1.15);
  private static final TextMeasure SMALL_TITLE = new TextMeasure(PdfFonts.LIGHT, 17, 1.2);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final double NUMBER_MM = 16.5;
  private static final double SMALL_NUMBER_MM = 9.8;
  private static final double HEAD_PADDING_MM = 2.5;
  private static final double GUTTER_MM = 8;

  /** The line to tick and sign, where the edition has one. */
  private static final double BOXES_MM = 11;

  private final double widthMm;
  private final double heightMm;
  private final double roomMm;
  private final double signMm;
  private final StepSideHeights side;
  private final String caution;

  StepHeights(Print print) {
    this.widthMm = print.paper().textWidthMm();
    this.heightMm = print.paper().textHeightMm();
    this.roomMm = roomMm(print.paper());
    boolean isSigned = print.edition().is("boxes");
    this.signMm = isSigned ? BOXES_MM : 0;
    this.caution = print.texts().say("caution.label") + " ";
    this.side = new StepSideHeights(print.texts(), isSigned);
  }

  /** A step without its picture and without its stage's heading. */
  double of(StepEntry step, boolean pictured) {
    return head(step, pictured)
        + 1
        + Math.max(left(step, pictured), side.of(step, pictured))
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
    return StepMeasures.AROUND_PICTURE_MM
        + inColumns(step)
        + side.besidePicture(step)
        - StepMeasures.BELOW_MM;
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
    return besideLists(step) + side.besidePicture(step);
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

  /** The heights of what stands in the column beside picture or sentences. */
  StepSideHeights side() {
    return side;
  }

  /** The width of a picture with lists beside it. */
  double besideListsMm() {
    return widthMm - StepMeasures.SIDE_MM - GUTTER_MM;
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
    return paper.roomMm() + StepMeasures.SMALL_BELOW_MM;
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
    return pictured ? StepMeasures.BELOW_MM : StepMeasures.SMALL_BELOW_MM;
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

  /** A step without a picture, with a strip of some height below its lists. */
  double withAside(StepEntry step, double stripMm) {
    double lists = side.besideSentences(step) + stripMm + StepMeasures.AROUND_PICTURE_MM;
    return head(step, false) + 1 + Math.max(left(step, false), lists) + signMm + below(false);
  }

  /** What its sentences leave to a strip below its lists. */
  double asideMm(StepEntry step, double mostMm) {
    double left = left(step, false) - side.besideSentences(step) - StepMeasures.AROUND_PICTURE_MM;
    return Math.clamp(left, 0, mostMm);
  }

  /**
   * How much higher a step on one page gets by what stands beside its sentences, below its lists; 0
   * if it has room there.
   */
  double moreBesideMm(StepEntry step) {
    boolean pictured = !step.pictures().isEmpty();
    double lists = side.of(step, pictured);
    double room =
        step.firstColumn() == 0
            ? left(step, pictured)
            : step.pictures().getFirst().heightMm() + StepMeasures.AROUND_PICTURE_MM;
    return Math.max(0, lists + StepSideHeights.besideMm(step) - Math.max(lists, room));
  }

  /** The height of the cautions beside the lists. */
  double cautions(StepEntry step) {
    return cautions(step, besideListsMm());
  }

  private double cautions(StepEntry step, double width) {
    double cautions =
        step.text().cautions().stream()
            .mapToDouble(each -> TEXT.heightMm(caution + each, width - 8) + 0.8)
            .sum();
    return cautions > 0 ? cautions + 5.5 : 0;
  }

  private static double sentences(List<String> sentences, double width, boolean pictured) {
    return sentences.stream().mapToDouble(each -> sentence(each, width, pictured)).sum();
  }

  static double sentence(String sentence, double width, boolean pictured) {
    return TEXT.heightMm(sentence, width - 8) + (pictured ? 1.5 : 0.7);
  }
}
