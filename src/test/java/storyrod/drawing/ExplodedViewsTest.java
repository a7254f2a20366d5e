package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Group;
import storyrod.piece.Mark;
import storyrod.planset.PlanSet;

/** The exploded views of all projects: of the piece and of its sub-assemblies. */
class ExplodedViewsTest {
  /** A view with more balloons than these is no longer read at a glance. */
  private static final int MOST = 16;

  private static List<Drawing> views(PlanSet set) {
    return set.drawings().exploded().all();
  }

  private static List<Balloon> balloons(Drawing drawing) {
    return Clean.flat(drawing.elements()).stream()
        .filter(Balloon.class::isInstance)
        .map(Balloon.class::cast)
        .toList();
  }

  private static Set<String> marks(Stream<Drawing> drawings) {
    return drawings
        .flatMap(each -> balloons(each).stream())
        .map(Balloon::mark)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @TestFactory
  List<DynamicTest> everyMarkHasABalloonInAView() {
    return AllProjects.each(
        project -> {
          Set<String> all = new TreeSet<>();
          project.set().piece().marks().stream().map(Mark::mark).forEach(all::add);
          Hardware.of(project.set().piece()).stream().map(Hardware::mark).forEach(all::add);
          assertEquals(all, marks(views(project.set()).stream()));
        });
  }

  @TestFactory
  List<DynamicTest> noViewIsCrowdedWithBalloons() {
    return AllProjects.each(
        project ->
            views(project.set())
                .forEach(view -> assertTrue(balloons(view).size() <= MOST, () -> crowd(view))));
  }

  private static String crowd(Drawing view) {
    return view.name() + ": " + balloons(view).size();
  }

  @TestFactory
  List<DynamicTest> noLeadersCross() {
    return AllProjects.each(
        project -> {
          for (Drawing view : views(project.set())) {
            List<Balloon> all = balloons(view);
            for (int i = 0; i < all.size(); i++) {
              for (Balloon two : all.subList(i + 1, all.size())) {
                Balloon one = all.get(i);
                assertFalse(
                    Balloons.cross(one.centre(), one.tip(), two.centre(), two.tip()),
                    () -> view.name() + ": " + one + " " + two);
              }
            }
          }
        });
  }

  /** A crowded piece shows each sub-assembly open, with all of its parts; one for alike ones. */
  @TestFactory
  List<DynamicTest> whatIsClosedInThePieceIsOpenedBesideIt() {
    return AllProjects.each(
        project -> {
          Set<String> opened = new HashSet<>();
          for (GeneralSheet sheet : project.set().drawings().exploded().opened()) {
            assertTrue(opened.addAll(sheet.units()), sheet.units()::toString);
            long parts =
                sheet.drawing().elements().stream().filter(Group.class::isInstance).count();
            assertTrue(parts > 1, sheet.drawing().name());
          }
          boolean crowded = project.set().piece().marks().size() > 12;
          assertEquals(crowded, !opened.isEmpty());
        });
  }
}
