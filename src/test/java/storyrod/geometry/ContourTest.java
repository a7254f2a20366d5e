package storyrod.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Segment.Arc;
import storyrod.geometry.Segment.Line;
import storyrod.measure.Length;

class ContourTest {
  private static Point at(long x, long z) {
    return new Point(Length.mm(x), Length.ZERO, Length.mm(z));
  }

  /** A board 600 x 100 whose lower edge is hollow by a rise over a chord in its middle. */
  private static Contour hollow(long chord, long rise) {
    long from = 300 - chord / 2;
    long to = 300 + chord / 2;
    return new Contour(
        Axis.Y,
        List.of(
            new Line(at(0, 0), at(from, 0)),
            new Arc(at(from, 0), at(300, rise), at(to, 0)),
            new Line(at(to, 0), at(600, 0)),
            new Line(at(600, 0), at(600, 100)),
            new Line(at(600, 100), at(0, 100)),
            new Line(at(0, 100), at(0, 0))));
  }

  /**
   * Radius of an arc from its chord c and its rise h: c²/(8h) + h/2, as in the article "Sagitta
   * (geometry)" of Wikipedia (from memory); 3-4-5 gives a whole number: c = 160, h = 40, r = 100.
   */
  @Test
  void radiusFollowsFromChordAndRise() {
    for (long[] each : new long[][] {{160, 40}, {500, 30}, {300, 12}}) {
      Contour contour = hollow(each[0], each[1]);
      double radius = contour.flat(contour.arcs().getFirst()).radius();
      double chord = each[0];
      double rise = each[1];
      assertEquals(chord * chord / (8 * rise) + rise / 2, radius, 1e-9);
    }
    Contour whole = hollow(160, 40);
    assertEquals(100, whole.flat(whole.arcs().getFirst()).radius(), 1e-9);
  }

  /** Area of a circular segment: r²/2 (a - sin a), with a the angle of the arc. */
  @Test
  void areaIsThatOfTheRectangleLessTheSegment() {
    double angle = 2 * StrictMath.asin(80.0 / 100);
    double segment = 100 * 100 / 2.0 * (angle - StrictMath.sin(angle));
    assertEquals(600 * 100 - segment, hollow(160, 40).areaMm2(), 1e-6);
  }

  @Test
  void areaOfASlotIsARectangleAndACircle() {
    Contour slot =
        new Contour(
            Axis.Y,
            List.of(
                new Line(at(20, 0), at(80, 0)),
                new Arc(at(80, 0), at(100, 20), at(80, 40)),
                new Line(at(80, 40), at(20, 40)),
                new Arc(at(20, 40), at(0, 20), at(20, 0))));
    assertEquals(60 * 40 + Math.PI * 20 * 20, slot.areaMm2(), 1e-6);
    assertEquals(new Range(Length.ZERO, Length.mm(100)), slot.extent(Axis.X));
    for (int i = 0; i < 4; i++) {
      assertTrue(slot.isSmoothAfter(i), "segment " + i);
    }
  }

  @Test
  void aMirrorImageHasTheSameAreaAndRadius() {
    Contour plain = hollow(500, 30);
    Contour mirrored =
        plain.mapped(Axis.Y, point -> point.with(Axis.X, Length.mm(600).minus(point.x())));
    assertEquals(plain.areaMm2(), mirrored.areaMm2(), 1e-6);
    assertEquals(
        plain.flat(plain.arcs().getFirst()).radius(),
        mirrored.flat(mirrored.arcs().getFirst()).radius(),
        1e-9);
  }

  @Test
  void aSolidHasTheContoursVolumeButForItsFacets() {
    Contour contour = hollow(500, 30);
    Solid solid =
        Solid.of(contour, new Range(Length.ZERO, Length.mm(20)), new Fineness(0.001, 1000));
    assertEquals(contour.areaMm2() * 20, solid.volumeMm3(), 20);
    Solid usual = Solid.of(contour, new Range(Length.ZERO, Length.mm(20)), Fineness.USUAL);
    assertEquals(contour.areaMm2() * 20, usual.volumeMm3(), 0.1 * 500 * 20);
  }

  @Test
  void theFrontOfAHollowBoardIsOneFace() {
    Solid solid = Solid.of(hollow(500, 30), new Range(Length.ZERO, Length.mm(20)), Fineness.USUAL);
    long fronts =
        solid.faces().stream()
            .filter(face -> face.normal().dot(Vector3D.of(0, -1, 0)) > 0.999)
            .count();
    assertEquals(1, fronts);
  }

  /** With 20 facets an arc has 19 seams; its ends meet the straight edge at a corner. */
  @Test
  void seamsLieBetweenTheFacetsOfAnArcOnly() {
    Solid solid = Solid.of(hollow(500, 30), new Range(Length.ZERO, Length.mm(20)), Fineness.USUAL);
    long facets =
        solid.faces().stream()
            .filter(face -> Math.abs(face.normal().getX()) < 0.9 && face.normal().getZ() < 0)
            .filter(face -> face.outer().stream().anyMatch(at -> at.getZ() > 0.001))
            .count();
    assertEquals(facets - 1, solid.seams().size());
  }

  @Test
  void aPathMustCloseAndThreePointsOfALineAreNoArc() {
    List<Segment> open = List.of(new Line(at(0, 0), at(10, 0)), new Line(at(10, 0), at(0, 10)));
    assertThrows(IllegalArgumentException.class, () -> new Contour(Axis.Y, open));
    Contour flat =
        new Contour(
            Axis.Y, List.of(new Arc(at(0, 0), at(5, 0), at(10, 0)), new Line(at(10, 0), at(0, 0))));
    assertThrows(IllegalArgumentException.class, flat::areaMm2);
  }

  @Test
  void crossingsAreFoundAndTouchingOpeningsAreNotWithin() {
    Contour bowTie =
        new Contour(
            Axis.Y,
            List.of(
                new Line(at(0, 0), at(10, 10)),
                new Line(at(10, 10), at(10, 0)),
                new Line(at(10, 0), at(0, 10)),
                new Line(at(0, 10), at(0, 0))));
    assertTrue(Shapes.crossing(bowTie).isPresent());
    assertFalse(Shapes.crossing(hollow(160, 40)).isPresent());
    Box box =
        new Box(
            new Range(Length.mm(250), Length.mm(350)),
            new Range(Length.ZERO, Length.mm(20)),
            new Range(Length.mm(50), Length.mm(90)));
    Contour opening = Contour.rectangle(box, Face.FRONT);
    assertTrue(Shapes.isWithin(opening, hollow(160, 40)));
    assertFalse(Shapes.isWithin(opening, hollow(200, 60)));
  }

  @Test
  void edgesAreNamedByTheirFacesInEitherOrder() {
    assertEquals(Edge.named("front-top"), Edge.named("top-front"));
    assertEquals(Axis.X, Edge.named("front-top").orElseThrow().axis());
    assertTrue(Edge.named("front-back").isEmpty());
    assertTrue(Edge.named("front").isEmpty());
  }

  @Test
  void stripsFillWhatAPathTakes() {
    Box board =
        new Box(
            new Range(Length.ZERO, Length.mm(600)),
            new Range(Length.ZERO, Length.mm(20)),
            new Range(Length.ZERO, Length.mm(100)));
    double taken =
        Strips.outside(hollow(500, 30), board).stream().mapToDouble(Box::volumeMm3).sum();
    double exact = board.volumeMm3() - hollow(500, 30).areaMm2() * 20;
    assertTrue(taken > 0.7 * exact && taken < 1.1 * exact, taken + " of " + exact);
  }
}
