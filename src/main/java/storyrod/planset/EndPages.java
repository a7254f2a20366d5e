package storyrod.planset;

import java.util.List;
import java.util.Optional;
import storyrod.description.FinishEntry;
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
  private static final double FINISH_MM = 145.5;
  private static final int USUAL_COATS = 3;
  private static final double COAT_MM = 7.2;

  static EndPages of(
      StepPages steps, Notes notes, BeforePages before, Optional<FinishEntry> finish, Paper paper) {
    double findings = findingsMm(notes.findings(), paper);
    boolean first = findings > 0 && before.findingsHere();
    double end = finishMm(finish.map(FinishEntry::allCoats).orElse(0));
    double last = steps.lastPageMm(paper) + TableHeights.ABOVE_H1_MM;
    boolean follows = last + end + (first ? 0 : findings) <= paper.roomMm();
    return new EndPages(first, finish.isPresent() && follows);
  }

  private static double finishMm(int coats) {
    return FINISH_MM + (coats - USUAL_COATS) * COAT_MM;
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
