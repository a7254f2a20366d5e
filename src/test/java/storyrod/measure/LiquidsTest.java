package storyrod.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LiquidsTest {
  // NIST Handbook 44, appendix C, from memory: litres of the US liquid measures.
  @ParameterizedTest
  @CsvSource({
    "1 gal, 3.785412",
    "1 qt, 0.9463529",
    "1 pt, 0.4731765",
    "1 fl-oz, 0.02957353",
    "16 fl-oz, 0.4731765",
    "500 ml, 0.5",
    "2.5 l, 2.5"
  })
  void volumesAreThoseOfTheHandbook(String text, double litres) {
    assertEquals(litres, Volume.parse(text).orElseThrow().litres().toDouble(), 1e-6 * litres);
  }

  @Test
  void aVolumeKeepsItsUnit() {
    Volume can = Volume.parse("1.5 qt").orElseThrow();
    assertEquals(Rational.of(3, 2), can.amount());
    assertEquals("qt", can.unit());
  }

  // A square foot is 0.09290304 m², so 500 ft² a gallon are 46.45152 / 3.785411784 = 12.2712 m²/l.
  @ParameterizedTest
  @CsvSource({"12 m2/l, 12", "500 ft2/gal, 12.2712", "125 ft2/qt, 12.2712"})
  void coveragesAreTurnedIntoSquareMetresALitre(String text, double expected) {
    double found = Coverage.parse(text).orElseThrow().squareMetresPerLitre().toDouble();
    assertEquals(expected, found, 1e-4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "1", "qt", "0 qt", "-1 l", "1 cup", "1e3 l", "1 l l"})
  void whatIsNoVolumeIsNone(String text) {
    assertEquals(Optional.empty(), Volume.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "12", "m2/l", "0 m2/l", "-3 m2/l", "12 m/l", "12 m2/gal"})
  void whatIsNoCoverageIsNone(String text) {
    assertEquals(Optional.empty(), Coverage.parse(text));
  }
}
