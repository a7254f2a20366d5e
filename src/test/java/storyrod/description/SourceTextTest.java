package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SourceTextTest {
  @Test
  void linesAndColumnsCountFromOne() {
    SourceText source = new SourceText("f", "ab\ncd\r\n\nef");
    assertEquals(List.of("1:1", "1:3", "2:1", "2:2", "3:1", "4:1", "4:3"), places(source));
    assertEquals(
        List.of("ab", "cd", "", "ef", ""),
        List.of(1, 2, 3, 4, 5).stream().map(source::line).toList());
  }

  private static List<String> places(SourceText source) {
    return List.of(0, 2, 3, 4, 7, 8, 99).stream()
        .map(at -> source.lineOf(at) + ":" + source.columnOf(at))
        .toList();
  }

  @Test
  void characterOfTwoPlacesIsOneColumn() {
    assertEquals(3, new SourceText("f", "\ud83e\ude91 x").columnOf(3));
  }

  @Test
  void markBeforeTheTextAndWindowsLinesDoNotShiftPlaces() {
    String text = "\ufeff" + Bench.TEXT.replace("\n", "\r\n").replace("bench", "b\ud83e\ude91");
    assertEquals(List.of(), Bench.faults(text));
    List<Diagnostic> faults = Bench.faults(text.replace("units: inch", "units: furlong"));
    assertEquals(1, faults.size());
    assertEquals("furlong", marked(faults.getFirst().at()));
    assertEquals(8, faults.getFirst().at().column());
  }

  private static String marked(Span at) {
    return at.source().text().substring(at.start(), at.end());
  }

  @Test
  void everyPlaceOfTheBenchIsWhereItsValueStands() {
    Description bench = Bench.described(Bench.TEXT);
    bench.parts().forEach(part -> assertTrue(part.name().endsWith(marked(part.at()))));
    bench.joints().forEach(joint -> assertEquals(joint.kind(), marked(joint.at())));
    bench.parts().forEach(part -> assertTrue(marked(part.x().at()).contains(" to ")));
  }
}
