package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class DiagnosticPrinterTest {
  private static Span span(String text, String marked) {
    int start = text.indexOf(marked);
    return new Span(new SourceText("stool.yaml", text), start, start + marked.length());
  }

  @Test
  void showsTheLineItsMarksTheSecondPlaceAndTheHint() {
    String text = "rail:\n  depth: 14 mm\nleg:\n  size: 12 mm\n";
    Diagnostic fault =
        Diagnostic.error("too-deep", span(text, "14 mm"), "a depth of 14 mm in a leg of 12 mm")
            .also(span(text, "12 mm"), "the leg is defined here")
            .hint("make it shallower");
    assertEquals(
        """
        stool.yaml:2:10: error: a depth of 14 mm in a leg of 12 mm [too-deep]
           2 |   depth: 14 mm
             |          ^^^^^
           4 |   size: 12 mm    the leg is defined here
          hint: make it shallower
        """,
        DiagnosticPrinter.print(fault));
  }

  @Test
  void countsStandAtTheEnd() {
    Span at = span("a: 1\n", "1");
    List<Diagnostic> all =
        List.of(
            Diagnostic.error("one", at, "first"),
            Diagnostic.error("two", at, "second"),
            Diagnostic.warning("three", at, "third"));
    assertTrue(DiagnosticPrinter.print(all).endsWith("\n\n2 errors, 1 warning\n"));
    assertEquals("no faults", DiagnosticPrinter.counts(List.of()));
    assertEquals(
        "1 piece of advice", DiagnosticPrinter.counts(List.of(Diagnostic.advice("four", at, "x"))));
  }

  @Test
  void tabsAndWideCharactersDoNotShiftTheMarks() {
    Excerpt tab = Excerpt.of(span("\tname:\tvalue\n", "value"));
    assertEquals(" name: value", tab.line());
    assertEquals("       ^^^^^", tab.marks());
    Excerpt chair = Excerpt.of(span("a\ud83e\ude91: value\n", "value"));
    assertEquals("     ^^^^^", chair.marks());
    Excerpt accent = Excerpt.of(span("e\u0301: value\n", "value"));
    assertEquals("   ^^^^^", accent.marks());
  }

  @Test
  void longLineIsCutRoundItsMarks() {
    String text = "x".repeat(5_000_000) + "HERE" + "y".repeat(5_000_000);
    String printed = DiagnosticPrinter.print(Diagnostic.error("long", span(text, "HERE"), "there"));
    assertTrue(printed.length() < 400, () -> "printed " + printed.length() + " characters");
    List<String> lines = printed.lines().toList();
    int at = lines.get(2).indexOf('^');
    assertEquals("HERE", lines.get(1).substring(at, at + 4));
    assertEquals("^^^^", lines.get(2).strip().substring(2).strip());
  }

  @Test
  void hugeValueIsNotEchoed() {
    String value = "w".repeat(1_000_000);
    String text = Bench.TEXT.replace("date: 2026-11-25", "date: " + value + "\n" + value + ": 1");
    String printed = DiagnosticPrinter.print(Bench.faults(text));
    assertTrue(printed.length() < 3000, () -> "printed " + printed.length() + " characters");
  }

  @Test
  void controlCharactersAreNotSentToATerminal() {
    String text = Bench.TEXT.replace("units: inch", "units: \"\\e[31minch\"");
    String printed = DiagnosticPrinter.print(Bench.faults(text));
    assertTrue(printed.indexOf('\u001b') < 0, printed);
  }
}
