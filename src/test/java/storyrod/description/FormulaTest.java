package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.measure.Length;

@Isolated("It sets the default locale.")
class FormulaTest {
  private static final String REST =
      """
      stock:
        ply: {kind: sheet, species: birch plywood, thickness: 18 mm, sheet: 96 x 48}
      parts:
        side: {stock: ply, x: 2 to 2 + ply.thickness, y: 0 to 12, z: 0 to 20, grain: z}
      """;

  /** What a formula gives in a project of inches with width 54, lip 2 mm, rows 3 and ratio 1.6. */
  private static Length of(String formula) {
    String quoted = "'" + formula.replace("'", "''") + "'";
    return Bench.described(project("inch", "  it: " + quoted)).sizes().get("it");
  }

  private static String project(String units, String sizes) {
    return "project: Case\nunits: "
        + units
        + "\nsizes:\n  width: 54 in\n  lip: 2 mm\n"
        + sizes
        + "\nnumbers: {rows: 3, ratio: 1.6, half: 1/2}\n"
        + REST;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "54 | 54 in",
        "17 1/2 | 17 1/2 in",
        "3/4 | 3/4 in",
        "3 / 4 | 3/4 in",
        "18.2 | 18.2 in",
        "18.2 mm | 18.2 mm",
        "1.5 cm | 15 mm",
        "2 m | 2000 mm",
        "18mm | 18 mm",
        "3/4\" | 3/4 in",
        "5' 2 1/2\" | 62 1/2 in",
        "5 ft 2 1/2 in | 62 1/2 in",
        "5' | 60 in",
        "-3/4 | -3/4 in",
        "- width | -54 in",
        "0 - 2 | -2 in",
        "width | 54 in",
        "width - lip | 1369.6 mm",
        "width + 1 mm | 1372.6 mm",
        "width / 2 + 3 | 30 in",
        "2 * width - 2 * 3/4 | 106 1/2 in",
        "(width + 6) / 4 | 15 in",
        "width-2*0 | error",
        "1 + 2 * 3 | 7 in",
        "(1 + 2) * 3 | 9 in",
        "10 - 2 - 3 | 5 in",
        "24 / 2 / 3 | 4 in",
        "12 / (3/4) | 16 in",
        "min(width, 30) | 30 in",
        "max(1, 2 mm, 3/4) | 1 in",
        "min(1, 20 mm) | 20 mm",
        "max(3 1/2) | 3 1/2 in",
        "side.right - side.left | 18 mm",
        "ply.thickness + 2 mm | 20 mm",
        "side.back | 12 in",
        "width / rows | 18 in",
        "width * ratio / 2 | 43.2 in",
        "rows * 2 | 6 in",
        "(rows - 1) * 2 in | 4 in",
        "half * width | 27 in",
        "width / lip * 1 mm | 685.8 mm",
        "width / 3 * 3 | 54 in",
        "10 mm / 3 * 3 | 10 mm",
        "round-up(width / 5 in) * 1 in | 11 in",
        "round-up(width / 6 in) * 1 in | 9 in",
        "round-up(0 - 7 / rows) * 1 in | -2 in",
        "round-up(width) | error",
        "round-up(rows, ratio) * 1 in | error",
        "printable(15/32 / 2) | 7/32 in",
        "printable(23/32 / 2) | 11/32 in",
        "printable(23/32 / 3) | 7/32 in",
        "printable(1/3) | 5/16 in",
        "printable(0 - 1/3) | -11/32 in",
        "printable(2 mm) | 1/16 in",
        "printable(rows) | error",
        "printable(width, lip) | error"
      })
  void formulaGivesALength(String formula, String expected) {
    if (expected.equals("error")) {
      assertTrue(!Bench.faults(project("inch", "  it: " + formula)).isEmpty());
    } else {
      assertEquals(Length.parse(expected), of(formula));
    }
  }

  @Test
  void bareNumberHasTheProjectsUnit() {
    assertEquals(Length.mm(19), Bench.described(project("mm", "  it: 19")).sizes().get("it"));
    Description mixed = Bench.described(project("mm", "  it: width - 1.6"));
    assertEquals(Length.mm(1370), mixed.sizes().get("it"));
  }

  @Test
  void printableKeepsToTheProjectsOwnFigures() {
    String sizes = "  it: printable(18.2 mm / 3)";
    assertEquals(Length.parse("6 mm"), Bench.described(project("mm", sizes)).sizes().get("it"));
    String fine = project("inch\nfraction: 1/64", "  it: printable(15/32 / 2)");
    assertEquals(Length.parse("15/64 in"), Bench.described(fine).sizes().get("it"));
  }

  @Test
  void thirdsAddUpToTheWholeWhileTheyHaveNames() {
    Description thirds =
        Bench.described(project("inch", "  third: 10 mm / 3\n  whole: third + third + third"));
    assertEquals(Length.mm(10), thirds.sizes().get("whole"));
  }

  @ParameterizedTest
  @CsvSource({"1/256, 1588", "3/256, 4763", "-1/256, -1587", "1/3, 135467", "2/3, 270933"})
  void resultIsTheNearestTickAndHalfATickGoesUp(String inches, long ticks) {
    assertEquals(ticks, of(inches).ticks());
  }

  @Test
  void endsAWholeNumberOfTicksApartStaySoWhereverTheyLie() {
    for (String start : List.of("1/256", "3/256", "-1/256", "1/3", "-1/3")) {
      String sizes = "  a: " + start + "\n  b: a + 1/128";
      Description both = Bench.described(project("inch", sizes));
      assertEquals(3175, both.sizes().get("b").ticks() - both.sizes().get("a").ticks());
    }
  }

  @Test
  void longChainOfNamesIsWorkedOut() {
    StringBuilder sizes = new StringBuilder("  s0: 1 mm\n");
    for (int i = 5000; i > 0; i--) {
      sizes.append("  s").append(i).append(": s").append(i - 1).append(" + 1 mm\n");
    }
    Description chain = Bench.described(project("inch", sizes.toString()));
    assertEquals(Length.mm(5001), chain.sizes().get("s5000"));
  }

  @Test
  void longCircleIsReportedOnce() {
    StringBuilder sizes = new StringBuilder("  s0: s3000\n");
    for (int i = 3000; i > 0; i--) {
      sizes.append("  s").append(i).append(": s").append(i - 1).append(" + 1\n");
    }
    List<Diagnostic> faults = Bench.faults(project("inch", sizes.toString()));
    assertEquals(List.of("cycle"), faults.stream().map(Diagnostic::code).toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {99, 101, 5000})
  void deepParenthesesAreWorkedOutOrRefused(int depth) {
    String formula = "(".repeat(depth) + "1" + ")".repeat(depth);
    List<Diagnostic> faults = Bench.faults(project("inch", "  it: " + formula));
    assertEquals(depth > 99 ? 1 : 0, faults.size());
  }

  @Test
  void numberThatGrowsWithoutEndIsRefused() {
    StringBuilder numbers = new StringBuilder("numbers:\n  n0: 3\n");
    for (int i = 1; i < 40; i++) {
      numbers.append("  n%d: n%d * n%d%n".formatted(i, i - 1, i - 1));
    }
    String text = "project: Case\nunits: inch\n" + numbers + REST;
    List<Diagnostic> faults = Bench.faults(text);
    assertEquals(List.of("too-large"), faults.stream().map(Diagnostic::code).toList());
  }

  @Test
  void turkishLocaleChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(Length.inches(54), of("width"));
      assertEquals(List.of(), Bench.faults(Bench.TEXT));
      assertEquals("Inside", NameStyle.title("inside"));
    } finally {
      Locale.setDefault(before);
    }
  }
}
