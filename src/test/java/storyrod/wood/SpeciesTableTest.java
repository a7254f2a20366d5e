package storyrod.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesTableTest {
  // Wood Handbook FPL-GTR-190, tables 5-3a (gravity, elasticity, hardness), 4-3 (shrinkage) and
  // 13-5 (coefficients).
  @ParameterizedTest
  @CsvSource({
    "'ash, white', 0.60, 12000, 5900, 4.9, 7.8, 0.00169, 0.00274",
    "'cherry, black', 0.50, 10300, 4200, 3.7, 7.1, 0.00126, 0.00248",
    "'oak, white', 0.68, 12300, 6000, 5.6, 10.5, 0.00180, 0.00365",
    "'maple, sugar (hard)', 0.63, 12600, 6400, 4.8, 9.9, 0.00165, 0.00353",
    "'walnut, black', 0.55, 11600, 4500, 5.5, 7.8, 0.00190, 0.00274"
  })
  void figuresAreThoseOfTheHandbook(
      String name,
      double gravity,
      int moe,
      int hardness,
      double radial,
      double tangential,
      double cRadial,
      double cTangential) {
    Species species = SpeciesTable.find(name).orElseThrow();
    assertEquals(gravity, species.specificGravity());
    assertEquals(moe, species.moeMpa());
    assertEquals(hardness, species.sideHardnessN());
    assertEquals(new Species.AcrossGrain(radial, tangential), species.shrinkage());
    assertEquals(new Species.AcrossGrain(cRadial, cTangential), species.coefficient());
    assertTrue(species.provenance().mechanical());
  }

  // Wood Handbook: gravity is ovendry mass on the volume at 12 %, to which 12 % of water is added.
  @ParameterizedTest
  @CsvSource({"'ash, white', 672.0", "'pine, eastern white', 392.0", "'oak, northern red', 705.6"})
  void densityIsGravityWithTwelvePercentOfWater(String name, double density) {
    assertEquals(density, SpeciesTable.find(name).flatMap(Species::density).orElseThrow(), 1e-9);
  }

  @Test
  void gravityOnGreenVolumeGivesNoDensity() {
    Species teak = SpeciesTable.find("teak").orElseThrow();
    assertEquals(Species.GravityBasis.GREEN, teak.gravityBasis());
    assertEquals(Optional.empty(), teak.density());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ash, white", "White Ash", "  ASH,  WHITE ", "white ash"})
  void aNameIsFoundInEitherOrderAndAnyCase(String name) {
    assertEquals("ash, white", SpeciesTable.find(name).orElseThrow().name());
  }

  @Test
  void aNameIsFoundWithoutWhatStandsInParentheses() {
    assertEquals("maple, sugar (hard)", SpeciesTable.find("sugar maple").orElseThrow().name());
  }

  @ParameterizedTest
  @ValueSource(strings = {"maple, hard", "Hard maple"})
  void aNameIsFoundByWhatStandsInParentheses(String name) {
    assertEquals("maple, sugar (hard)", SpeciesTable.find(name).orElseThrow().name());
  }

  @Test
  void anUnknownWoodHasNoPropertiesAndSimilarNamesAreOffered() {
    assertEquals(Optional.empty(), SpeciesTable.find("wite ash"));
    assertEquals("ash, white", SpeciesTable.near("wite ash").getFirst());
    assertEquals(List.of(), SpeciesTable.near("granite countertop"));
  }

  @Test
  void aGenusAloneOffersItsWoods() {
    assertEquals(3, SpeciesTable.near("oak").size());
    assertTrue(SpeciesTable.near("oak").stream().allMatch(name -> name.startsWith("oak")));
  }

  @Test
  void whatWasNotSeenInASourceIsSaid() {
    Species scots = SpeciesTable.find("pine, Scots").orElseThrow();
    assertFalse(scots.provenance().shrinkage());
    assertFalse(scots.provenance().source().isBlank());
  }

  @Test
  void everyWoodSwellsMoreAlongTheRingsThanAcrossThem() {
    for (Species each : SpeciesTable.all()) {
      assertTrue(each.shrinkage().tangential() > each.shrinkage().radial(), each.name());
      assertTrue(each.coefficient().tangential() > each.coefficient().radial(), each.name());
    }
    assertEquals(59, SpeciesTable.all().size());
  }
}
