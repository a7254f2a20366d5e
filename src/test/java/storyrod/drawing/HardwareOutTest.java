package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.PlacedItem;
import storyrod.piece.Part;
import storyrod.planset.PlanSet;

/** What lies in two parts is drawn between them where these are drawn apart. */
class HardwareOutTest {
  private static final double ROUNDED_MM = 0.001;

  @TestFactory
  List<DynamicTest> whatLiesInTwoPartsStaysBetweenThem() {
    return AllProjects.each(
        sample -> {
          Map<String, Vector3D> offsets =
              Explosion.of(sample.set().piece(), sample.set().build(), View.USUAL).offsets();
          fittings(sample.set(), offsets).stream()
              .filter(isBetween(offsets))
              .forEach(
                  each -> {
                    double end = each.outMm() + each.hardware().placed().highMm();
                    assertTrue(
                        end <= gap(each, offsets) + ROUNDED_MM,
                        () -> each.hardware().id() + " ends at " + end);
                  });
        });
  }

  private static List<Fitting> fittings(PlanSet set, Map<String, Vector3D> offsets) {
    List<Part> parts = set.piece().parts();
    Scene scene =
        new Scene(
            parts.stream()
                .map(part -> new Scene.Item(part.name(), part.placed(), offsets.get(part.name())))
                .toList());
    double diagonal = Extent.diagonalMm(Extent.around(parts));
    HiddenLines lines = HiddenLines.of(scene, View.USUAL);
    return HardwareOut.of(
        Hardware.of(set.piece()), lines, offsets, HardwareOut.Reach.far(diagonal));
  }

  /** Whether the gap between its parts has room for all of it. */
  private static Predicate<Fitting> isBetween(Map<String, Vector3D> offsets) {
    return each -> {
      PlacedItem placed = each.hardware().placed();
      return gap(each, offsets) >= placed.deepMm() + placed.highMm();
    };
  }

  /** How far its other part is drawn from its host, along the way by which it comes out. */
  private static double gap(Fitting fitting, Map<String, Vector3D> offsets) {
    PlacedItem placed = fitting.hardware().placed();
    Vector3D host = offsets.get(placed.host());
    return placed.origin().parts().stream()
        .mapToDouble(part -> offsets.get(part).subtract(host).dot(placed.out()))
        .max()
        .orElse(0);
  }
}
