package storyrod.planset;

import java.util.List;
import storyrod.planset.Notes.Finding;

/**
 * Where the findings and the finish stand, so that neither the steps nor they end on a page that is
 * nearly empty.
 *
 * @param findingsFirst whether the findings stand on the page of the contents
 * @param finishFollows whether the finish goes on below the last step
 */
public record EndPages(boolean findingsFirst, boolean finishFollows) {
  /** Before anything is known of them. */
  static final EndPages NONE = new EndPages(false, false);

  private static final TextMeasure CELL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final double MESSAGE_SHARE = 0.72;

  /**
   * What stands at the end.
   *
   * @param finishMm the height of the finish, zero if there is none
   */
  record Ends(StepPages steps, Notes notes, double finishMm) {}

  static EndPages of(Ends ends, BeforePages before, Print print) {
    Paper paper = print.paper();
    double findings = findingsMm(ends.notes().findings(), paper);
    boolean first = findings > 0 && before.findingsHere();
    double last = ends.steps().lastPageMm(print) + FinishHeight.ABOVE_MM;
    boolean follows =
        print.edition().follows("steps", "finish")
            && last + ends.finishMm() + (first ? 0 : findings) <= paper.roomMm();
    return new EndPages(first, ends.finishMm() > 0 && follows);
  }

  /** The findings below the contents, with their heading; zero where there are none. */
  static double findingsMm(List<Finding> findings, Paper paper) {
    double width = MESSAGE_SHARE * paper.textWidthMm();
    double rows = findings.stream().mapToDouble(each -> rowMm(each, width)).sum();
    return findings.isEmpty() ? 0 : TableHeights.H2_MM + TEXT.lineMm() + 1.5 + rows;
  }

  private static double rowMm(Finding finding, double width) {
    String text = finding.message() + ". " + String.join(". ", finding.hints()) + ".";
    return Math.max(CELL.heightMm(text, width), 2 * CELL.lineMm())
        + TableHeights.ROW_MM
        - CELL.lineMm();
  }
}
