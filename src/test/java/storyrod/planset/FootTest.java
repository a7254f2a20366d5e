package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.cli.PrintedProjects;

/** Loose pages of two editions, on which a drawing has two page numbers, are told apart. */
class FootTest {
  @ParameterizedTest
  @CsvSource({"publish,", "helper, for the helper", "record, record"})
  void everyFootNamesItsEdition(String edition, String named) throws Exception {
    PrintedProjects printed = PrintedProjects.named("step-stool");
    byte[] pdf = printed.on(printed.usualPaper(), edition).pdf();
    String foot = "edition 1" + (named == null ? "" : " · " + named);
    int pages =
        FinishedPdf.of(pdf, printed.on(printed.usualPaper(), edition).set(), printed.usualPaper())
            .count();
    for (int page = 2; page <= pages; page++) {
      long feet =
          PdfText.text(pdf, page).lines().filter(line -> line.contains("edition 1")).count();
      long right =
          PdfText.text(pdf, page)
              .lines()
              .filter(line -> line.strip().matches(".*\\Q" + foot + "\\E( \\d+ of \\d+)?"))
              .count();
      assertEquals(feet, right, edition + " page " + page);
    }
  }
}
