package storyrod.planset;

import java.util.List;
import storyrod.planset.Notes.Finding;

/**
 * Where the findings and the finish stand, so that neither the steps nor they end on a page that is
 * nearly empty.
 *
 * @param findingsFirst whether the findings stand on the page of the contents
 * @param finishFollows whether the finish goes on below the last step
 * @param restBreaks whether what follows the schedule of the finish begins a page
 * @param findingsBreak whether the findings begin a page behind the finish
 * @param endMm how far down the last page is filled behind them; all of it where nothing may follow
 */
public record EndPages(
    boolean findingsFirst,
    boolean finishFollows,
    boolean restBreaks,
    boolean findingsBreak,
    double endMm) {
  /** Before anything is known of them. */
  static final EndPages NONE = new EndPages(false, false, false, false, 0);

  private static final double TOP_MM = 1;

  /** A last page of steps that is less full takes a part of the finish. */
  private static final double SPARSE = 0.45;

  private static final TextMeasure CELL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);

  /** What their heading as that of a page takes more than that below the contents. */
  private static final double FINDINGS_HEAD_MM = TableHeights.FOLLOWING_H1_MM;

  private static final double MESSAGE_SHARE = 0.72;

  /**
   * What stands at the end.
   *
   * @param finishMm the height of the finish, zero if there is none
   * @param scheduleMm its height down to the end of its schedule
   */
  record Ends(StepPages steps, Notes notes, double finishMm, double scheduleMm) {}

  static EndPages of(Ends ends, BeforePages before, Print print) {
    Paper paper = print.paper();
    double findings = findingsMm(ends.notes().findings(), paper);
    boolean first = findings > 0 && before.findingsHere();
    double behind = first || findings == 0 ? 0 : findings + FINDINGS_HEAD_MM;
    double last = ends.steps().lastPageMm(print) + FinishHeight.ABOVE_MM;
    Below below = Below.of(ends, print.edition().follows("steps", "finish"), last, paper, behind);
    boolean breaks = ends.finishMm() > 0 && behind > 0 && below.endMm + behind > paper.roomMm();
    double end = (breaks ? TOP_MM : below.endMm) + behind;
    return new EndPages(
        first,
        below.follows,
        below.splits,
        breaks,
        ends.finishMm() + behind > 0 ? Math.min(end, paper.roomMm()) : paper.roomMm());
  }

  /**
   * How the finish stands below the last step.
   *
   * @param endMm how far down its last page is filled
   */
  private record Below(boolean follows, boolean splits, double endMm) {
    /** Whole if there is room; else its schedule alone, where the page would be nearly empty. */
    static Below of(Ends ends, boolean mayFollow, double lastMm, Paper paper, double behindMm) {
      double room = paper.roomMm();
      boolean may = mayFollow && ends.finishMm() > 0;
      if (may && lastMm + ends.finishMm() + behindMm <= room) {
        return new Below(true, false, lastMm + ends.finishMm());
      }
      if (may && lastMm < SPARSE * room && lastMm + ends.scheduleMm() <= room) {
        return new Below(true, true, TOP_MM + ends.finishMm() - ends.scheduleMm());
      }
      return new Below(false, false, TOP_MM + ends.finishMm());
    }
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
