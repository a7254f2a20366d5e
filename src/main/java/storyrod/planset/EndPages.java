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
  private static final TextMeasure CELL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final double MESSAGE_SHARE = 0.72;

  /** The pages' ends; {@code finishMm} is the height of the finish, zero if there is none. */
  static EndPages of(
      StepPages steps, Notes notes, BeforePages before, double finishMm, Paper paper) {
    double findings = findingsMm(notes.findings(), paper);
    boolean first = findings > 0 && before.findingsHere();
    double last = steps.lastPageMm(paper) + FinishHeight.ABOVE_MM;
    boolean follows = last + finishMm + (first ? 0 : findings) <= paper.roomMm();
    return new EndPages(first, finishMm > 0 && follows);
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
