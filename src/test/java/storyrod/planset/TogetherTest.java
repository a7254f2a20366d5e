package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import org.junit.jupiter.api.Test;

class TogetherTest {
  private static final TextMeasure MEASURE = new TextMeasure(PdfFonts.REGULAR, 10, 1.4);

  private static String shown(String text) {
    return Together.bound(text).replace('\u00A0', '_');
  }

  @Test
  void numberAndUnitStayTogether() {
    assertEquals("set it to 17/32_in from the edge", shown("set it to 17/32 in from the edge"));
    assertEquals("a stop at 1_3/16_in deep", shown("a stop at 1 3/16 in deep"));
    assertEquals("10.5_mm from it, then 60_mm.", shown("10.5 mm from it, then 60 mm."));
    assertEquals("a board 1_3/4 thick", shown("a board 1 3/4 thick"));
  }

  @Test
  void markAndCountStayTogether() {
    assertEquals("A_×_2, AB_×_12 and C", shown("A × 2, AB × 12 and C"));
  }

  @Test
  void stopBehindThemStaysWithThem() {
    var kept = Together.PATTERN.matcher("in the list: Q × 2 and R × 2. Then 8 mm, at 1 3/4;");
    assertEquals(
        List.of("Q × 2", "R × 2.", "8 mm,", "1 3/4;"),
        kept.results().map(MatchResult::group).toList());
  }

  @Test
  void bracketBeforeThemStaysWithThem() {
    var kept = Together.PATTERN.matcher("first T (18 11/16 in), then H (A × 2), 3/8 in [10 mm]");
    assertEquals(
        List.of("(18 11/16 in),", "(A × 2),", "3/8 in", "[10 mm]"),
        kept.results().map(MatchResult::group).toList());
  }

  @Test
  void bothEndsOfARangeStayTogether() {
    var kept = Together.PATTERN.matcher("(steps 36–38, 45) and 2–4");
    assertEquals(List.of("36–38,", "2–4"), kept.results().map(MatchResult::group).toList());
  }

  /** Most texts are never matched; what is left of them must be all that the pattern finds. */
  @Test
  void noTextThatThePatternFindsIsPassedOver() {
    List<String> pieces =
        List.of(" ", "1", " 23", "/", " A", " ×", " in", "mm", " h", "lb", " kg", " %", ",", " so");
    Random random = new Random(7);
    int found = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int j = 0; j < 9; j++) {
        text.append(pieces.get(random.nextInt(pieces.size())));
      }
      String matched =
          Together.PATTERN.matcher(text).replaceAll(each -> each.group().replace(' ', '_'));
      assertEquals(matched, shown(text.toString()));
      found += matched.contentEquals(text) ? 0 : 1;
    }
    assertTrue(found > 500, found + " texts");
  }

  @Test
  void otherNumbersBreakAsWords() {
    assertEquals("drive the 36 screws", shown("drive the 36 screws"));
    assertEquals("step 12 inside", shown("step 12 inside"));
    assertEquals("70 × 35 × 29_1/2_in", shown("70 × 35 × 29 1/2 in"));
  }

  /** Two words fit on a line; where the second may not leave the third, it goes down with it. */
  @Test
  void heightCountsWhatMovesToTheNextLine() {
    String text = "mmmmm 3 mm";
    double wide = 0.1;
    while (MEASURE.heightMm("mmmmm 3", wide) > MEASURE.lineMm() * 1.5) {
      wide += 0.1;
    }
    assertEquals(2 * MEASURE.lineMm(), MEASURE.heightMm(text, wide), 1e-9);
    String longer = text + " mmmmm";
    assertTrue(MEASURE.heightMm(longer, wide) > 2 * MEASURE.lineMm());
  }
}
