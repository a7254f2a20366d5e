package storyrod.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated("It sets the default locale.")
class LengthTest {
  private static final int TRIES = 2000;

  @ParameterizedTest
  @CsvSource({
    "19 mm, 19",
    "18.2 mm, 18.2",
    "1.9 cm, 19",
    "1 m, 1000",
    "1 in, 25.4",
    "1 inch, 25.4",
    "3/4 in, 19.05",
    "2 1/2 in, 63.5",
    "3/4\", 19.05",
    "1', 304.8",
    "1 ft, 304.8",
    "5' 2 1/2\", 1587.5",
    "5 ft 2 1/2 in, 1587.5",
    "-3/4 in, -19.05",
    "0 mm, 0",
    "0.001 mm, 0.001"
  })
  void readsWhatAPersonWrites(String text, BigDecimal mm) {
    assertEquals(0, mm.compareTo(Length.parse(text).toMmExact()), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "3",
        "3/4",
        "3 furlongs",
        "3/0 in",
        "1 2/0 in",
        "5' 3/0\"",
        "1,5 mm",
        "- 3 mm",
        "3 mm 4",
        "99999999999999999999 mm",
        "1e3 mm"
      })
  void refusesWhatIsNoLengthInOneClearSentence(String text) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> Length.parse(text)).getMessage();
    assertTrue(message.matches("[a-z'].*[^.]"), message);
  }

  @Test
  void fractionOverZeroIsNamed() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> Length.parse("3/0 in")).getMessage();
    assertEquals("'3/0' divides by zero", message);
  }

  @Test
  void parseReadsBackWhatToStringPrints() {
    Random random = new Random(7);
    for (int i = 0; i < TRIES; i++) {
      Length length = new Length(random.nextLong(-1L << 40, 1L << 40));
      assertEquals(length, Length.parse(length.toString()));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4, 8, 16, 32, 64, 128})
  void parseReadsBackEveryPrintedFraction(int denominator) {
    LengthFormat format = new LengthFormat(Unit.INCH, denominator);
    Random random = new Random(denominator);
    for (int i = 0; i < TRIES; i++) {
      Length length = Length.inch(random.nextInt(-1_000_000, 1_000_000), denominator);
      assertEquals(length, Length.parse(format.formatWithUnit(length)));
    }
  }

  @Test
  void parseReadsBackPrintedMillimetres() {
    LengthFormat format = new LengthFormat(Unit.MM, 1);
    Random random = new Random(11);
    for (int i = 0; i < TRIES; i++) {
      Length length = Length.micrometres(100L * random.nextInt(-1_000_000, 1_000_000));
      assertEquals(length, Length.parse(format.formatWithUnit(length)));
    }
  }

  @Test
  void printedLengthIsOffByAtMostHalfAStep() {
    LengthFormat format = new LengthFormat(Unit.INCH, 32);
    Random random = new Random(13);
    for (int i = 0; i < TRIES; i++) {
      Length length = new Length(random.nextLong(0, 1L << 34));
      Length printed = Length.parse(format.formatWithUnit(length));
      assertEquals(format.rounded(length), printed);
      assertTrue(!printed.minus(length).abs().isLongerThan(Length.inch(1, 64)), length::toString);
    }
  }

  @Test
  void turkishLocaleChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(
          "1 1/2 in", new LengthFormat(Unit.INCH, 16).formatWithUnit(Length.parse("1 1/2 inch")));
      assertEquals("18.2 mm", Length.parse("18.2 mm").toString());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void arithmeticThatWouldOverflowIsRefused() {
    Length most = new Length(Long.MAX_VALUE);
    assertThrows(ArithmeticException.class, () -> most.plus(new Length(1)));
    assertThrows(ArithmeticException.class, () -> most.times(2));
  }

  @Test
  void dividesAsAsked() {
    assertEquals(new Length(2), new Length(5).dividedBy(2, RoundingMode.HALF_EVEN));
    assertEquals(new Length(3), new Length(5).dividedBy(2, RoundingMode.HALF_UP));
  }

  @Test
  void everyStepOf128thsIsExact() {
    IntStream.rangeClosed(0, 128)
        .forEach(i -> assertEquals(3175L * i, Length.inch(i, 128).ticks()));
  }
}
