package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.geometry.Solid;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

/** Things put together in one step, each for itself, stand beside each other in its picture. */
class SideBySideTest {
  private static final View VIEW = View.USUAL;

  private static List<List<Part>> units(Piece piece, Step step) {
    return step.operations().stream()
        .map(Operation::parts)
        .map(names -> names.stream().map(piece::part).toList())
        .toList();
  }

  private static Outline outline(List<Part> unit, Map<String, Vector3D> offsets) {
    List<Solid> solids = unit.stream().map(Part::placed).toList();
    return Outline.of(solids, VIEW).moved(offsets.get(unit.getFirst().name()), VIEW);
  }

  private static List<Step> dryFits(PlanSet set) {
    return set.build().steps().stream().filter(step -> step.verb() == Verb.DRY_FIT).toList();
  }

  @TestFactory
  List<DynamicTest> noneStandsBeforeAnother() {
    return AllProjects.each(
        project -> {
          for (Step step : dryFits(project.set())) {
            List<List<Part>> units = units(project.set().piece(), step);
            Map<String, Vector3D> offsets = SideBySide.offsets(VIEW, units);
            List<Outline> outlines = units.stream().map(each -> outline(each, offsets)).toList();
            for (int i = 0; i < outlines.size(); i++) {
              for (Outline other : outlines.subList(i + 1, outlines.size())) {
                assertEquals(0, outlines.get(i).shared(other), 1e-6, step.number() + "");
              }
            }
          }
        });
  }

  @TestFactory
  List<DynamicTest> nothingIsTakenApartOrMovedToTheViewer() {
    return AllProjects.each(
        project -> {
          for (Step step : dryFits(project.set())) {
            List<List<Part>> units = units(project.set().piece(), step);
            Map<String, Vector3D> offsets = SideBySide.offsets(VIEW, units);
            for (List<Part> unit : units) {
              Vector3D by = offsets.get(unit.getFirst().name());
              assertTrue(unit.stream().allMatch(part -> offsets.get(part.name()).equals(by)));
              assertEquals(0, by.dot(VIEW.toViewer()), 1e-6);
            }
          }
        });
  }

  /** Seen from behind, the left door is at the right. */
  @Test
  void doorsStandAsTheyHangFromWhereverTheyAreSeen() {
    Piece piece = AllProjects.named("sideboard").piece();
    List<List<Part>> doors =
        Stream.of("left-door", "right-door").map(door -> parts(piece, door)).toList();
    Set<Boolean> orders = new HashSet<>();
    for (View view : View.AROUND) {
      Map<String, Vector3D> offsets = SideBySide.offsets(view, doors);
      List<Double> hung = doors.stream().map(door -> middle(door, view, Vector3D.ZERO)).toList();
      List<Double> drawn =
          doors.stream()
              .map(door -> middle(door, view, offsets.get(door.getFirst().name())))
              .toList();
      orders.add(hung.get(0) < hung.get(1));
      assertEquals(hung.get(0) < hung.get(1), drawn.get(0) < drawn.get(1), view.toString());
    }
    assertEquals(Set.of(true, false), orders);
  }

  private static List<Part> parts(Piece piece, String unit) {
    Nesting nesting = Nesting.of(piece);
    return piece.parts().stream().filter(part -> nesting.isIn(part.name(), unit)).toList();
  }

  private static double middle(List<Part> thing, View view, Vector3D by) {
    Outline outline = Outline.of(thing.stream().map(Part::placed).toList(), view);
    return (outline.minX() + outline.maxX()) / 2 + by.dot(view.right());
  }

  /** Seven things in one row would each be as small as a stamp. */
  @Test
  void manyThingsStandInRows() {
    PlanSet sideboard = AllProjects.named("sideboard");
    Step step = dryFits(sideboard).getFirst();
    List<List<Part>> units = units(sideboard.piece(), step);
    assertFalse(units.size() < 5, units::toString);
    Map<String, Vector3D> offsets = SideBySide.offsets(VIEW, units);
    List<Outline> outlines = new ArrayList<>();
    units.forEach(each -> outlines.add(outline(each, offsets)));
    double width =
        most(outlines.stream().map(Outline::maxX).toList())
            + most(outlines.stream().map(each -> -each.minX()).toList());
    double height =
        most(outlines.stream().map(Outline::maxY).toList())
            + most(outlines.stream().map(each -> -each.minY()).toList());
    assertTrue(width / height > 0.75 && width / height < 3, width + " " + height);
  }

  private static double most(List<Double> values) {
    return values.stream().mapToDouble(each -> each).max().orElseThrow();
  }

  /** Two that are built in one step keep clear of each other, however far their parts are out. */
  @TestFactory
  List<DynamicTest> whatIsBuiltForItselfIsDrawnForItself() {
    return AllProjects.each(
        sample -> {
          for (Step step : sample.set().build().steps()) {
            List<List<String>> things = apart(sample.set().piece(), step);
            Drawing picture = sample.set().drawings().steps().get(step.number());
            for (int i = 0; i < things.size() && picture != null; i++) {
              for (int j = i + 1; j < things.size(); j++) {
                Bounds one = drawn(picture, things.get(i));
                Bounds two = drawn(picture, things.get(j));
                assertTrue(isClear(one, two), picture.name());
              }
            }
          }
        });
  }

  private static List<List<String>> apart(Piece piece, Step step) {
    Nesting nesting = Nesting.of(piece);
    List<List<String>> things =
        OneOfMany.levels(nesting, step).stream()
            .map(level -> nesting.parts(level).stream().map(Ink::id).toList())
            .toList();
    return OneOfMany.isIn(piece, step) ? List.of() : things;
  }

  private static Bounds drawn(Drawing picture, List<String> ids) {
    return Bounds.around(
        picture.elements().stream()
            .filter(Drawing.Group.class::isInstance)
            .map(Drawing.Group.class::cast)
            .filter(group -> ids.contains(group.id()))
            .flatMap(group -> group.elements().stream())
            .filter(Drawing.Line.class::isInstance)
            .flatMap(line -> ((Drawing.Line) line).points().stream())
            .toList());
  }

  private static boolean isClear(Bounds one, Bounds two) {
    return one.right() < two.left()
        || two.right() < one.left()
        || one.bottom() < two.top()
        || two.bottom() < one.top();
  }
}
