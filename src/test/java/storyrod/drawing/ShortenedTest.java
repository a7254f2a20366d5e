package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects.Sample;
import storyrod.geometry.Axis;
import storyrod.geometry.Cylinder;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;
import storyrod.planset.PlanSet;

/** Long parts that a step cuts, with what goes on alike left out. */
class ShortenedTest {
  private static final double ON_PLANE_MM = 1e-3;
  private static final double LARGER = 0.7;
  private static final double EXACT_MM2 = 1e-3;

  private static Stream<CutPicture> pictures(PlanSet set) {
    return set.build().steps().stream()
        .flatMap(step -> CutPicture.of(set.piece(), set.build(), step).stream());
  }

  private static Stream<Taken> all(Sample sample) {
    return sample.set().build().steps().stream()
        .filter(CutPicture::isFor)
        .flatMap(
            step ->
                sample.set().piece().parts().stream()
                    .flatMap(part -> Taken.of(part, sample.set().build(), step).stream()));
  }

  /** What is left out goes on alike: both sides of a break show the same section of the wood. */
  @TestFactory
  List<DynamicTest> bothSidesOfABreakAreAlike() {
    return AllProjects.each(
        sample ->
            all(sample)
                .flatMap(taken -> Shortened.of(taken).stream())
                .forEach(ShortenedTest::assertAlike));
  }

  private static void assertAlike(Taken shown) {
    List<Double> sawn = shown.sawnAtMm();
    assertEquals(0, sawn.size() % 2);
    for (int i = 0; i < sawn.size(); i += 2) {
      for (Solid solid : List.of(shown.left(), shown.waste())) {
        double near = area(solid, sawn.get(i));
        assertEquals(near, area(solid, sawn.get(i + 1)), EXACT_MM2, shown.flat().part().name());
      }
      assertTrue(area(shown.left(), sawn.get(i)) > 0, shown.flat().part().name());
    }
  }

  private static double area(Solid solid, double at) {
    return solid.faces().stream()
        .filter(face -> face.outer().stream().allMatch(each -> isAt(each, at)))
        .mapToDouble(FlatFace::areaMm2)
        .sum();
  }

  private static boolean isAt(Vector3D corner, double at) {
    return Math.abs(corner.getX() - at) < ON_PLANE_MM;
  }

  /** No hole is lost or bored twice, wherever its part is broken off. */
  @TestFactory
  List<DynamicTest> everyBoreIsKept() {
    return AllProjects.each(
        sample ->
            all(sample)
                .forEach(
                    taken ->
                        Shortened.of(taken)
                            .ifPresent(
                                shown -> {
                                  assertEquals(sizes(taken.bores()), sizes(shown.bores()));
                                  assertEquals(
                                      sizes(taken.left().bores()), sizes(shown.left().bores()));
                                })));
  }

  private static List<List<Double>> sizes(List<Cylinder> bores) {
    return bores.stream().map(bore -> List.of(bore.radiusMm(), bore.depthMm())).toList();
  }

  /** The mortises at both ends of a door's stiles are a hair's breadth on the whole part. */
  @Test
  void mortisesOfLongStilesCanBeMadeOut() {
    List<CutPart> stiles =
        pictures(AllProjects.named("sideboard"))
            .flatMap(picture -> picture.parts().stream())
            .filter(each -> List.of("Z", "AA").contains(each.mark()))
            .filter(each -> each.taken().bores().isEmpty())
            .toList();
    assertFalse(stiles.isEmpty());
    for (CutPart each : stiles) {
      assertFalse(each.broken().isEmpty(), each.mark());
      double whole = each.taken().flat().size(Axis.X).toMm();
      assertTrue(each.longMm() < LARGER * whole, each.longMm() + " of " + whole);
    }
  }

  /** The breaks are thin lines with a kink; no wide line says that the wood ends there. */
  @TestFactory
  List<DynamicTest> noBreakIsDrawnAsAnEdge() {
    return AllProjects.each(sample -> pictures(sample.set()).forEach(ShortenedTest::assertThin));
  }

  private static void assertThin(CutPicture picture) {
    long broken = picture.parts().stream().mapToLong(each -> each.broken().size()).sum();
    Drawing drawn = picture.drawn(new Size(180, picture.heightMm(180)));
    long kinked =
        Clean.flat(drawn.elements()).stream()
            .flatMap(each -> each instanceof Drawing.Line line ? Stream.of(line) : Stream.empty())
            .filter(line -> line.role() == Drawing.Role.DIMENSION && line.points().size() == 6)
            .count();
    assertTrue(kinked >= broken, picture.step() + ": " + kinked + " of " + broken);
  }
}
