package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Units;
import storyrod.words.Words;

/** Where lengths stand in both units, areas and amounts do too. */
class BothUnitsTest {
  private static final LengthFormat INCHES =
      AllProjects.named("sewing-box").piece().description().format().alone();

  private static Texts both(LengthFormat first) {
    return new Texts(first.shownIn(Units.BOTH), Words.ENGLISH);
  }

  /** The international foot is 304.8 mm: a square metre has 10.76 square feet. */
  @Test
  void areasAreToldInBoth() {
    assertEquals("22 ft² [2.0 m²]", Supplies.area(Rational.of(2, 1), both(INCHES)));
    assertEquals("2.0 m² [22 ft²]", Supplies.area(Rational.of(2, 1), both(INCHES.other())));
    assertEquals("22 ft²", Supplies.area(Rational.of(2, 1), new Texts(INCHES, Words.ENGLISH)));
  }

  /** A US fluid ounce is 29.57 ml. */
  @Test
  void amountsOfFinishAreToldInBoth() {
    PlanSet set = AllProjects.named("nightstand");
    Texts texts = both(set.piece().description().format());
    String oil =
        Supplies.of(set.stock().supplies(), texts).rows().stream()
            .filter(row -> row.product().equals("Hard wax oil"))
            .map(Supplies.Row::takes)
            .findFirst()
            .orElseThrow();
    assertEquals("about 282 ml [about 9.5 fl oz]", oil);
  }
}
