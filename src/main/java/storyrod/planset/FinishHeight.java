package storyrod.planset;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import storyrod.planset.TableHeights.Cell;

/** How high the finish stands on its page, its heading included, as the style sheet has it. */
record FinishHeight(Texts texts, Paper paper) {
  /** Above its heading where it goes on below the last step. */
  static final double ABOVE_MM = 6;

  private static final double H2_MM = 3.5 + TableHeights.H2_MM - TableHeights.ABOVE_H2_MM;
  private static final double FRAME_MM = 3.2;
  private static final double FRAME_SIDES_MM = 6.7;
  private static final double SIGN_MM = 10.6;
  private static final double COAT_MM = 7.2;
  private static final double VALUE_SHARE = 0.66;

  double ofMm(FinishData finish) {
    return scheduleMm(finish)
        + 2 * H2_MM
        + masks(finish)
        + TableHeights.ROW_MM
        + finish.allCoats() * COAT_MM;
  }

  /** Down to the end of the schedule; what is kept bare and the coats may begin a page. */
  double scheduleMm(FinishData finish) {
    return TableHeights.H1_MM
        + FRAME_MM
        + TableHeights.text(care(finish.oily()), paper.textWidthMm() - FRAME_SIDES_MM)
        + 2 * H2_MM
        + TableHeights.text(finish.test(), paper.textWidthMm())
        + signMm(finish)
        + TableHeights.rows(finish.rows(), row -> value(row.value()));
  }

  private double signMm(FinishData finish) {
    return finish.settled().isEmpty()
        ? SIGN_MM
        : TableHeights.text(finish.settled(), paper.textWidthMm());
  }

  private List<Cell> value(String text) {
    return List.of(new Cell(text, VALUE_SHARE * paper.textWidthMm()));
  }

  private double masks(FinishData finish) {
    String lead = finish.masks().isEmpty() ? "finish.mask.none" : "finish.mask.lead";
    double head = finish.masks().isEmpty() ? 0 : TableHeights.ROW_MM;
    return TableHeights.text(texts.say(lead), paper.textWidthMm())
        + head
        + TableHeights.rows(finish.masks(), mask -> value(mask.what()));
  }

  private String care(boolean oily) {
    return IntStream.rangeClosed(oily ? 1 : 2, 3)
        .mapToObj(each -> texts.say("finish.care." + each))
        .collect(Collectors.joining(" ", texts.say("caution.label") + " ", ""));
  }
}
