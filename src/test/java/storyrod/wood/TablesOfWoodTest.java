package storyrod.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.description.ClimateEntry;
import storyrod.description.FinishEntry;
import storyrod.description.GlueEntry;
import storyrod.measure.Rational;

class TablesOfWoodTest {
  // EN 315 as mills print it (sanded birch plywood), PS 1-19, ANSI A208.2-2009.
  @ParameterizedTest
  @CsvSource({
    "birch plywood, 6.5, 0.5, 0.4",
    "birch plywood, 18, 0.9, 0.7",
    "birch plywood, 18.2, 0.9, 0.7",
    "birch plywood, 30, 1.3, 1.1",
    "softwood plywood, 18, 0.4, 0.4",
    "MDF, 19, 0.125, 0.125"
  })
  void sheetsMayBeSoMuchOff(String material, double nominal, double minus, double plus) {
    var tolerance = SheetTolerances.of(material, nominal).orElseThrow();
    assertEquals(minus, tolerance.minus());
    assertEquals(plus, tolerance.plus());
  }

  @Test
  void whatNoTableKnowsHasNoTolerance() {
    assertTrue(SheetTolerances.of("birch plywood", 40).isEmpty());
    assertTrue(SheetTolerances.of("cardboard", 3).isEmpty());
  }

  // Wood Handbook table 13-1, from memory: wood for interiors ranges from 4 to 9 % in the dry
  // southwest, from 6 to 10 % in most of the US, from 8 to 13 % on the damp southern coast.
  @ParameterizedTest
  @CsvSource({"dry, 4, 9", "heated, 6, 11", "conditioned, 6, 10", "damp, 8, 13"})
  void climatesOfInteriorsKeepWoodInTheAdvisedRange(String name, double low, double high) {
    Climate climate = Climates.ALL.get(name);
    assertTrue(climate.dry().moisture() >= low, name);
    assertTrue(climate.damp().moisture() <= high, name);
    assertTrue(climate.dry().moisture() + 1.5 < climate.damp().moisture(), name);
  }

  @Test
  void everyRoomOfTheLanguageHasItsClimate() {
    assertEquals(ClimateEntry.ROOMS, List.copyOf(Climates.ALL.keySet()));
  }

  @Test
  void everyKindOfGlueAndFinishHasItsCoverage() {
    assertEquals(GlueEntry.KINDS, kinds("glue"));
    assertEquals(FinishEntry.KINDS, kinds("finish"));
    for (Coverages.Sort sort : Coverages.all()) {
      Rational least = sort.least().squareMetresPerLitre();
      assertTrue(least.compareTo(sort.most().squareMetresPerLitre()) < 0, sort.kind());
    }
  }

  private static List<String> kinds(String use) {
    return Coverages.all().stream()
        .filter(sort -> sort.use().equals(use))
        .map(Coverages.Sort::kind)
        .toList();
  }

  // Wood Handbook table 12-1 and ANSI A208.2, from memory; that of birch plywood depends on its
  // lay-up.
  @Test
  void sheetsHaveTheLeastPublishedModulusOrNone() {
    assertEquals(2160, SheetMaterials.find("MDF").orElseThrow().modulus().orElseThrow());
    assertFalse(SheetMaterials.find("birch plywood").orElseThrow().modulus().isPresent());
  }
}
