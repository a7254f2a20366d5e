package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Text;
import storyrod.planset.PlanSet;

/** Units that stand side by side in a picture are named below them, from wherever they are seen. */
class UnitNamesTest {
  private static final PlanSet SIDEBOARD = AllProjects.named("sideboard");
  private static final List<String> DOORS = List.of("Left door", "Right door");

  private static Drawing picture(Step step) {
    return PicturedStep.of(
            SIDEBOARD.piece(), SIDEBOARD.build(), step, Hardware.of(SIDEBOARD.piece()))
        .orElseThrow()
        .drawn(new Size(120, 90));
  }

  private static List<Text> names(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .filter(text -> DOORS.contains(text.text()))
        .toList();
  }

  private static List<Step> steps(Verb verb) {
    return SIDEBOARD.build().steps().stream().filter(each -> each.verb() == verb).toList();
  }

  @Test
  void doorsThatAreGluedUpInOneStepAreNamedEachBelowItsOwnParts() {
    Step step =
        steps(Verb.FIT).stream()
            .filter(each -> isBuilding(each, "left-door.") && isBuilding(each, "right-door."))
            .findFirst()
            .orElseThrow();
    Drawing drawing = picture(step);
    List<Text> names = names(drawing);
    assertEquals(new TreeSet<>(DOORS), new TreeSet<>(names.stream().map(Text::text).toList()));
    for (Text name : names) {
      Bounds door = parts(drawing, name.text().toLowerCase(java.util.Locale.ROOT));
      assertTrue(door.left() < name.at().x() && name.at().x() < door.right(), name.text());
      assertTrue(name.at().y() > door.bottom(), name.text());
    }
  }

  private static boolean isBuilding(Step step, String door) {
    return step.newParts().size() > 2
        && step.newParts().stream().anyMatch(part -> part.startsWith(door));
  }

  private static Bounds parts(Drawing drawing, String door) {
    return Bounds.around(
        drawing.elements().stream()
            .filter(Group.class::isInstance)
            .map(Group.class::cast)
            .filter(each -> each.id().startsWith("part-" + door.replace(' ', '-')))
            .flatMap(each -> each.elements().stream())
            .filter(Area.class::isInstance)
            .flatMap(each -> ((Area) each).rings().getFirst().stream())
            .toList());
  }

  /** The doors lie beside the case when their catches are mounted. */
  @Test
  void doorsBesideTheCaseAreNamedToo() {
    assertTrue(
        steps(Verb.MOUNT).stream()
            .map(UnitNamesTest::picture)
            .anyMatch(drawing -> names(drawing).size() == DOORS.size()));
  }

  @Test
  void doorsThatLieByThemselvesToBeFinishedAreNamed() {
    for (Step step : steps(Verb.FINISH)) {
      assertEquals(DOORS.size(), names(picture(step)).size());
    }
  }
}
