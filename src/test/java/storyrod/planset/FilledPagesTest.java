package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.cli.PrintedProjects;
import storyrod.cli.PrintedProjects.Printed;

/**
 * In the edition to sell no page is left more than two thirds empty, not even the last of a section
 * or of the whole set: what a page ends with goes on below something else, or takes a share of it.
 */
class FilledPagesTest {
  private static final double LEAST = 0.35;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "window-bench",
        "sideboard",
        "bookcase",
        "dining-table",
        "nightstand",
        "step-stool",
        "sewing-box"
      })
  void noPageOfTheEditionToSellIsSparse(String project) throws Exception {
    PrintedProjects printed = PrintedProjects.named(project);
    Paper paper = printed.usualPaper();
    Printed set = printed.on(paper, "publish");
    FinishedPdf pdf = FinishedPdf.of(set.pdf(), set.set(), paper);
    assertEquals(List.of(), FillChecks.sparse(pdf, LEAST));
  }
}
