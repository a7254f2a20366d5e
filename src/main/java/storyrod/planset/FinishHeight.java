package storyrod.planset;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import storyrod.description.FinishEntry;

/**
 * How high the finish stands on its page, its heading included, with the measures of the style
 * sheet.
 *
 * @param oily whether its rags can catch fire, of which a sentence tells then
 */
record FinishHeight(Texts texts, Paper paper, Surface surface, boolean oily) {
  /** Above its heading where it goes on below the last step. */
  static final double ABOVE_MM = 6;

  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final double H2_MM = 3.5 + TableHeights.H2_MM - TableHeights.ABOVE_H2_MM;
  private static final int HEADINGS = 3;
  private static final double FRAME_MM = 4.7;
  private static final double FRAME_SIDES_MM = 6.7;
  private static final double SIGN_MM = 10.6;
  private static final double COAT_MM = 7.2;

  /** The rows that every schedule has. */
  private static final int ROWS = 5;

  double ofMm(FinishEntry finish) {
    return TableHeights.H1_MM
        + FRAME_MM
        + TEXT.heightMm(care(), paper.textWidthMm() - FRAME_SIDES_MM)
        + HEADINGS * H2_MM
        + TEXT.heightMm(test(finish), paper.textWidthMm())
        + SIGN_MM
        + rows(finish) * TableHeights.ROW_MM
        + TableHeights.LINE_MM
        + finish.allCoats() * COAT_MM;
  }

  private static int rows(FinishEntry finish) {
    return ROWS + (finish.how().isPresent() ? 1 : 0) + (finish.last().isPresent() ? 1 : 0);
  }

  private String care() {
    return IntStream.rangeClosed(oily ? 1 : 2, 3)
        .mapToObj(each -> texts.say("finish.care." + each))
        .collect(Collectors.joining(" ", texts.say("caution.label") + " ", ""));
  }

  private String test(FinishEntry finish) {
    String tried =
        finish
            .triedOn()
            .map(wood -> texts.say("finish.tried", wood))
            .orElseGet(() -> texts.say("finish.untried"));
    return texts.say("finish.test.text", surface.woods(), finish.sandTo(), finish.coats())
        + " "
        + tried;
  }
}
