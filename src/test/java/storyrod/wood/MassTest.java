package storyrod.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.description.Located;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.Rational;

class MassTest {
  private static final Span AT = Span.startOf(new SourceText("project.yaml", ""));

  @Test
  void aTenthOfACubicMetreOfWhiteAshWeighsSixtySevenKilograms() {
    double density = Mass.density(stock(StockKind.SOLID, "white ash", false)).orElseThrow();
    assertEquals(67.2, Mass.kg(1e8, density), 1e-9);
  }

  @Test
  void theProjectsOwnDensityComesFirst() {
    assertEquals(Optional.of(700.0), Mass.density(stock(StockKind.SHEET, "birch plywood", true)));
  }

  @Test
  void sheetsTakeTheMiddleOfThePublishedRange() {
    // ANSI/HPVA HP-1 as usually quoted: 550 to 650 kg/m³; from memory.
    StockEntry plywood = stock(StockKind.SHEET, "Hardwood plywood", false);
    assertEquals(Optional.of(600.0), Mass.density(plywood));
  }

  @Test
  void anUnknownMaterialHasNoDensity() {
    assertEquals(Optional.empty(), Mass.density(stock(StockKind.SOLID, "moonwood", false)));
    assertEquals(Optional.empty(), Mass.density(stock(StockKind.SHEET, "white ash", false)));
  }

  private static StockEntry stock(StockKind kind, String species, boolean own) {
    return new StockEntry(
        "stock",
        AT,
        kind,
        species,
        new Located<>(Length.mm(18), AT),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        own ? Optional.of(new Located<>(Rational.of(700, 1), AT)) : Optional.empty(),
        false);
  }
}
