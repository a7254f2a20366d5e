package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.description.SourceText;
import storyrod.description.Span;

class ToldOnceTest {
  private static final SourceText SOURCE = new SourceText("p.yaml", "one\ntwo\nsix\n");

  private static Span line(int number) {
    return new Span(SOURCE, 4 * (number - 1), 4 * number - 1);
  }

  private static Diagnostic sag(int line, String message) {
    return Diagnostic.warning("shelf-sag", line(line), message).hint("make it thicker");
  }

  private static List<String> remarks(Diagnostic... diagnostics) {
    return ToldOnce.print(List.of(diagnostics))
        .lines()
        .filter(
            line ->
                line.contains("p.yaml") || line.contains("more like it") || line.matches("\\d+ .*"))
        .toList();
  }

  @Test
  void equalButForThePartsNumberIsToldOnceWithTheLinesOfTheOthers() {
    assertEquals(
        List.of(
            "p.yaml:1:1: warning: shelf-1 sags 2 mm [shelf-sag]",
            "  and 3 more like it at lines 2, 3",
            "4 warnings"),
        remarks(
            sag(1, "shelf-1 sags 2 mm"),
            sag(2, "shelf-2 sags 2 mm"),
            sag(2, "shelf-3 sags 2 mm"),
            sag(3, "shelf-12 sags 2 mm")));
  }

  @Test
  void otherMeasuresOtherItemsAndErrorsAreToldEach() {
    assertEquals(
        List.of(
            "p.yaml:1:1: warning: shelf-1 sags 2 mm [shelf-sag]",
            "p.yaml:2:1: warning: shelf-2 sags 3 mm [shelf-sag]",
            "2 warnings"),
        remarks(sag(1, "shelf-1 sags 2 mm"), sag(2, "shelf-2 sags 3 mm")));
    assertEquals(
        List.of(
            "p.yaml:1:1: warning: dowel-8-by-40-mm is short [shelf-sag]",
            "p.yaml:2:1: warning: dowel-10-by-40-mm is short [shelf-sag]",
            "2 warnings"),
        remarks(sag(1, "dowel-8-by-40-mm is short"), sag(2, "dowel-10-by-40-mm is short")));
    assertEquals(
        List.of(
            "p.yaml:1:1: error: shelf-1 is lost [lost]",
            "p.yaml:2:1: error: shelf-2 is lost [lost]",
            "2 errors"),
        remarks(
            Diagnostic.error("lost", line(1), "shelf-1 is lost"),
            Diagnostic.error("lost", line(2), "shelf-2 is lost")));
  }
}
