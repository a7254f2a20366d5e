package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;

/** Areas cut by areas, by hand and against the overlay of a general library (JTS). */
class ExactAreaTest {
  private static final double STEP_MM = 1e-3;

  @Test
  void cornerIsCutOff() {
    ExactArea left = square(0, 0, 10).less(square(6, 6, 10));
    assertEquals(100 - 16, left.areaMm2(), 1e-9);
    assertEquals(6, left.rings().getFirst().size());
  }

  @Test
  void middleBecomesAnOpening() {
    ExactArea left = square(0, 0, 10).less(square(4, 4, 2));
    assertEquals(96, left.areaMm2(), 1e-9);
    assertEquals(List.of(2), left.apart().stream().map(area -> area.rings().size()).toList());
  }

  @Test
  void stripAcrossLeavesTwoAreas() {
    ExactArea left = square(0, 0, 10).less(rectangle(-1, 4, 12, 2));
    assertEquals(List.of(40.0, 40.0), left.apart().stream().map(ExactArea::areaMm2).toList());
  }

  @Test
  void nothingIsLeftUnderTheSameArea() {
    assertTrue(square(0, 0, 10).less(square(0, 0, 10)).isEmpty());
    assertTrue(square(0, 0, 10).less(square(-1, 0, 12)).isEmpty());
  }

  @Test
  void neighbourThatSharesAnEdgeTakesNothing() {
    ExactArea left = square(0, 0, 10).less(rectangle(10, 2, 5, 5));
    assertEquals(100, left.areaMm2(), 1e-9);
    assertEquals(4, left.rings().getFirst().size());
  }

  @Test
  void openingOfTheCoverLetsThrough() {
    ExactArea frame = square(-5, -5, 20).less(square(2, 2, 4));
    assertEquals(16, square(0, 0, 10).less(frame).areaMm2(), 1e-9);
  }

  @Test
  void areasThatTouchInAPointStayApart() {
    ExactArea left = square(0, 0, 10).less(square(0, 5, 5)).less(square(5, 0, 5));
    assertEquals(List.of(25.0, 25.0), left.apart().stream().map(ExactArea::areaMm2).toList());
  }

  @Test
  void ringsTurnEitherWay() {
    List<At> outer = List.of(new At(0, 0), new At(0, 10), new At(10, 10), new At(10, 0));
    List<At> opening = List.of(new At(2, 2), new At(2, 4), new At(4, 4), new At(4, 2));
    assertEquals(96, ExactArea.of(List.of(outer, opening)).areaMm2(), 1e-9);
    assertEquals(96, ExactArea.of(List.of(outer.reversed(), opening)).areaMm2(), 1e-9);
  }

  @Test
  void spikeNarrowerThanTheGridIsNoPartOfARing() {
    ExactArea area =
        ExactArea.of(
            List.of(
                List.of(
                    new At(0, 0),
                    new At(10, 0),
                    new At(10, 10),
                    new At(5, 10),
                    new At(9, 17.0004),
                    new At(5.0002, 10),
                    new At(0, 10))));
    assertEquals(4, area.rings().getFirst().size());
  }

  /** Two skew frames whose opening the grid moves a hair beyond their edge. */
  @Test
  void ringTurnedInsideOutByTheGridIsCutAsWell() {
    List<At> outer = List.of(new At(0, 0), new At(90, 17), new At(83, 57), new At(-7, 40));
    double x = 90.0 * 11 / 37;
    double y = 17.0 * 11 / 37;
    double toX = 90.0 * 29 / 37;
    double toY = 17.0 * 29 / 37;
    List<At> opening =
        List.of(
            new At(x, y), new At(toX, toY), new At(toX - 3.5, toY + 20), new At(x - 3.5, y + 20));
    ExactArea frame = ExactArea.of(List.of(outer, opening));
    for (int i = 0; i < 40; i++) {
      double shift = i * 2.3 - 20;
      ExactArea picture = square(shift, -5, 31.7);
      double beyond = picture.less(ExactArea.of(List.of(outer))).areaMm2();
      double through = picture.areaMm2() - picture.less(ExactArea.of(List.of(opening))).areaMm2();
      double left = picture.less(frame).areaMm2();
      assertEquals(beyond + through, left, 150 * STEP_MM, "shift " + shift);
    }
  }

  /** Coarse coordinates, so that corners lie on edges and edges on edges again and again. */
  @Test
  void randomAreasAreCutAsTheLibraryCutsThem() {
    Random random = new Random(7);
    for (int round = 0; round < 3000; round++) {
      double coarse = round % 2 == 0 ? 1 : 0.37;
      ExactArea ours = star(random, coarse);
      ExactArea theirs = ours;
      for (int cover = 0; cover < 5 && !ours.isEmpty(); cover++) {
        ExactArea star = star(random, coarse);
        ours = ours.less(star);
        theirs = theirs.isEmpty() ? theirs : AreaOverlay.less(theirs, star);
        double slack = STEP_MM * (ours.perimeterMm() + theirs.perimeterMm() + 1);
        String place = "round " + round + ", cover " + cover;
        assertEquals(theirs.areaMm2(), ours.areaMm2(), slack, place);
        assertTrue(ours.less(theirs).areaMm2() < slack, place);
        assertTrue(theirs.less(ours).areaMm2() < slack, place);
      }
    }
  }

  /** A ring round a point, its corners on a coarse grid, now and then with an opening. */
  private static ExactArea star(Random random, double coarse) {
    double x = random.nextInt(12);
    double y = random.nextInt(12);
    int corners = 3 + random.nextInt(8);
    List<At> ring = new ArrayList<>();
    IntStream.range(0, corners)
        .mapToDouble(i -> (i + 0.1 + 0.8 * random.nextDouble()) * 2 * Math.PI / corners)
        .forEach(
            angle -> {
              double radius = 3 + 5 * random.nextDouble();
              ring.add(
                  new At(
                      coarse * Math.round((x + radius * Math.cos(angle)) / coarse),
                      coarse * Math.round((y + radius * Math.sin(angle)) / coarse)));
            });
    ExactArea star = ExactArea.of(List.of(ring));
    return random.nextInt(3) == 0 ? star.less(square(x - 0.5, y - 0.5, 1)) : star;
  }

  private static ExactArea square(double x, double y, double side) {
    return rectangle(x, y, side, side);
  }

  private static ExactArea rectangle(double x, double y, double width, double height) {
    return ExactArea.of(
        List.of(
            List.of(
                new At(x, y),
                new At(x + width, y),
                new At(x + width, y + height),
                new At(x, y + height))));
  }
}
