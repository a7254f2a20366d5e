package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.cli.PrintedProjects;
import storyrod.cli.PrintedProjects.Printed;
import storyrod.drawing.AllProjects;

/**
 * In the edition to sell no page is left more than two thirds empty, not even the last of a section
 * or of the whole set: what a page ends with goes on below something else, or takes a share of it.
 */
class FilledPagesTest {
  private static final double LEAST = 0.35;
  private static final double LEAST_IN_THE_SHOP = 0.25;

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
    assertEquals(List.of(), sparse(project, "publish", LEAST));
  }

  /** Where lists for signing and notes are ended by sections of their own. */
  @ParameterizedTest
  @MethodSource("forTheShop")
  void noPageForTheShopIsNearlyEmpty(String project, String edition) throws Exception {
    assertEquals(List.of(), sparse(project, edition, LEAST_IN_THE_SHOP));
  }

  private static Stream<Arguments> forTheShop() {
    return AllProjects.all().stream()
        .flatMap(
            each -> Stream.of("helper", "record").map(edition -> arguments(each.name(), edition)));
  }

  private static List<FillChecks.Sparse> sparse(String project, String edition, double least)
      throws Exception {
    PrintedProjects printed = PrintedProjects.named(project);
    Paper paper = printed.usualPaper();
    Printed set = printed.on(paper, edition);
    return FillChecks.sparse(FinishedPdf.of(set.pdf(), set.set(), paper), least);
  }
}
