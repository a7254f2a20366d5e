package storyrod.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.wood.Beam.PointLoad;

/**
 * A load at one place of a beam on two supports, held to the formulas of handbooks of structures,
 * such as AISC, Steel Construction Manual, table 3-23 (from memory).
 */
class BeamUnderLoadTest {
  private static final Beam BEAM = new Beam(12_000, 300, 20);
  private static final double SPAN = 1200;
  private static final double FORCE = 600;
  private static final double EXACT = 1e-9;

  private static double stiffness() {
    return BEAM.modulus() * BEAM.secondMoment();
  }

  /** P L³ / 48 E I. */
  @Test
  void aLoadInTheMiddleBendsTheMiddle() {
    double expected = FORCE * Math.pow(SPAN, 3) / (48 * stiffness());
    assertEquals(expected, BEAM.deflectionUnder(SPAN, SPAN / 2, FORCE, SPAN / 2), EXACT);
  }

  /** P a² b² / 3 E I L, right under the load. */
  @Test
  void aLoadElsewhereBendsItsPlace() {
    double a = 300;
    double b = SPAN - a;
    double expected = FORCE * a * a * b * b / (3 * stiffness() * SPAN);
    assertEquals(expected, BEAM.deflectionUnder(SPAN, a, FORCE, a), EXACT);
  }

  /** A load here bends that place as much as one there would bend this (Maxwell, 1864). */
  @Test
  void placesBendEachOtherAlike() {
    assertEquals(
        BEAM.deflectionUnder(SPAN, 300, FORCE, 800),
        BEAM.deflectionUnder(SPAN, 800, FORCE, 300),
        EXACT);
  }

  @Test
  void nothingBendsAtTheSupports() {
    assertEquals(0, BEAM.deflectionUnder(SPAN, 300, FORCE, 0), EXACT);
    assertEquals(0, BEAM.deflectionUnder(SPAN, 300, FORCE, SPAN), EXACT);
  }

  /** Two loads at the thirds bend the middle most: P a (3 L² - 4 a²) / 24 E I. */
  @Test
  void severalLoadsBendBetweenThemMost() {
    double a = SPAN / 3;
    double expected = FORCE * a * (3 * SPAN * SPAN - 4 * a * a) / (24 * stiffness());
    List<PointLoad> loads = List.of(new PointLoad(a, FORCE), new PointLoad(2 * a, FORCE));
    assertEquals(expected, BEAM.deflection(SPAN, loads), EXACT);
  }

  /** P b (L² - b²)^(3/2) / (9 √3 E I L), beside the load and not under it. */
  @Test
  void aLoadNearOneEndBendsTheBeamMostBesideIt() {
    double b = 300;
    double expected =
        FORCE * b * Math.pow(SPAN * SPAN - b * b, 1.5) / (9 * Math.sqrt(3) * stiffness() * SPAN);
    List<PointLoad> loads = List.of(new PointLoad(SPAN - b, FORCE));
    assertEquals(expected, BEAM.deflection(SPAN, loads), expected * 1e-4);
  }

  @Test
  void nothingBendsWithoutALoad() {
    assertEquals(0, BEAM.deflection(SPAN, List.of()));
  }
}
