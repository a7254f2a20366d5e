package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.Levels;
import storyrod.build.PlacedItem;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
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
        Hardware.of(set.piece()),
        lines,
        offsets,
        HardwareOut.Reach.far(diagonal, new FreeWay(parts, offsets)));
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

  /** Drawn beyond the partition, the screws of a slide would seem to go into the next bay. */
  @TestFactory
  List<DynamicTest> noHardwareComesOutThroughAPart() {
    return AllProjects.each(
        project -> {
          Map<String, Vector3D> still = new LinkedHashMap<>();
          List<Part> parts = project.set().piece().parts();
          parts.forEach(part -> still.put(part.name(), Vector3D.ZERO));
          FreeWay way = new FreeWay(parts, still);
          HardwareOut.Reach reach = HardwareOut.Reach.near(1e4, way);
          Scene scene =
              new Scene(
                  parts.stream()
                      .map(part -> new Scene.Item(part.name(), part.placed(), Vector3D.ZERO))
                      .toList());
          HiddenLines lines = HiddenLines.of(scene, View.USUAL);
          for (Fitting each :
              HardwareOut.of(Hardware.of(project.set().piece()), lines, still, reach)) {
            assertStopsBefore(parts, each);
          }
        });
  }

  /** No part that begins where it is clear of its seat stands in the line of its middle. */
  private static void assertStopsBefore(List<Part> parts, Fitting fitting) {
    PlacedItem placed = fitting.hardware().placed();
    Face out = Face.nearest(placed.out());
    if (placed.out().dot(out.normal()) < 0.999) {
      return;
    }
    double clear = placed.highMm() + placed.deepMm();
    double end = fitting.outMm() + placed.highMm() - 0.5;
    parts.stream()
        .filter(part -> !part.name().equals(placed.host()) && isInLine(part, placed))
        .forEach(
            part ->
                assertFalse(
                    start(part, placed) >= clear && start(part, placed) < end,
                    () -> fitting.hardware().id() + " " + part.name()));
  }

  /** From where hardware sits to where a part begins along its way, in mm. */
  private static double start(Part part, PlacedItem placed) {
    Face out = Face.nearest(placed.out());
    return part.bounds().at(out.opposite()).toMm() * out.sign() - placed.at().dot(placed.out());
  }

  private static boolean isInLine(Part part, PlacedItem placed) {
    return Stream.of(Axis.values())
        .filter(axis -> axis != Face.nearest(placed.out()).axis())
        .allMatch(
            axis ->
                part.bounds()
                    .on(axis)
                    .contains(Length.nearest(placed.at().dot(Face.of(axis, 1).normal()))));
  }

  /** Screws before a front that comes last would seem to go through it. */
  @TestFactory
  List<DynamicTest> noHardwareIsDrawnBeyondAPartThatStandsApart() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          Levels.withFronts(piece)
              .forEach(
                  (level, units) -> {
                    List<Part> parts = units.stream().flatMap(u -> u.parts().stream()).toList();
                    Explosion apart =
                        Explosion.ofLevel(piece, project.set().build(), View.USUAL, level);
                    assertNoneBeyond(ExplodedView.of(apart, parts, within(piece, parts)));
                  });
        });
  }

  private static List<Hardware> within(Piece piece, List<Part> parts) {
    List<String> names = parts.stream().map(Part::name).toList();
    return Hardware.of(piece).stream()
        .filter(each -> names.containsAll(each.placed().origin().parts()))
        .filter(each -> names.contains(each.placed().host()))
        .toList();
  }

  private static void assertNoneBeyond(ExplodedView view) {
    for (Fitting each : view.picture().fittings()) {
      PlacedItem placed = each.hardware().placed();
      double clear = placed.highMm() + placed.deepMm();
      for (int i = 0; i < view.parts().size(); i++) {
        Part part = view.parts().get(i);
        Box box = part.bounds().moved(view.picture().seen().get(i).item().offset());
        if (!part.name().equals(placed.host()) && !meets(box, each, 0, clear)) {
          assertFalse(
              meets(box, each, clear, each.outMm() + placed.highMm() - 1),
              () -> each.hardware().id() + " beyond " + part.name());
        }
      }
    }
  }

  /** Whether its middle line, some way out of its seat, runs through a box. */
  private static boolean meets(Box box, Fitting fitting, double fromMm, double toMm) {
    return DoubleStream.iterate(fromMm, at -> at < toMm, at -> at + 1)
        .mapToObj(at -> fitting.seat().add(fitting.hardware().placed().out().multiply(at)))
        .anyMatch(
            point ->
                Stream.of(Axis.values())
                    .allMatch(
                        axis ->
                            box.on(axis)
                                .contains(Length.nearest(point.dot(Face.of(axis, 1).normal())))));
  }
}
