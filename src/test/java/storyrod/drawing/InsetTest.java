package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.planset.PlanSet;

/** Hardware enlarged beside the picture of its step. */
class InsetTest {
  private static final String SCALE = " along the edges";

  private static Stream<String> texts(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Text.class::isInstance)
        .map(each -> ((Text) each).text());
  }

  private static Optional<String> scale(Drawing drawing) {
    return texts(drawing)
        .filter(each -> each.endsWith(SCALE))
        .map(each -> each.substring(0, each.length() - SCALE.length()))
        .findFirst();
  }

  /** ISO 5455, and the scales of US practice for inches. */
  @TestFactory
  List<DynamicTest> everyInsetHasAScaleOfTheList() {
    return AllProjects.each(
        project -> {
          List<String> known =
              Scales.in(project.set().piece().description().printed().unit()).stream()
                  .map(Scale::toString)
                  .toList();
          project.set().drawings().steps().values().stream()
              .flatMap(each -> scale(each).stream())
              .forEach(each -> assertTrue(known.contains(each), each));
        });
  }

  private static Drawing mounting(PlanSet set, String item) {
    Step step =
        set.build().steps().stream()
            .filter(each -> each.verb() == Verb.MOUNT)
            .filter(each -> each.targets().contains(item) || fits(set, each, item))
            .findFirst()
            .orElseThrow();
    return set.drawings().steps().get(step.number());
  }

  private static boolean fits(PlanSet set, Step step, String item) {
    return PlacedHardware.of(set.piece()).stream()
        .anyMatch(each -> each.item().equals(item) && each.isFittedIn(step));
  }

  /** Beside the item the inset shows lines of wood: one sees from what it is measured. */
  @ParameterizedTest
  @ValueSource(strings = {"slide-16", "door-hinge", "shelf-pin", "catch", "strap"})
  void smallThingsAreEnlargedWithTheirEdges(String item) {
    Drawing picture = mounting(AllProjects.named("sideboard"), item);
    assertTrue(scale(picture).isPresent(), picture.name());
    Bounds frame = frames(picture).getLast();
    assertTrue(
        lines(picture)
            .filter(line -> line.role() == Role.THIN || line.role() == Role.PHANTOM)
            .filter(line -> !isFrame(line))
            .anyMatch(line -> line.points().stream().allMatch(frame.widened(0.01)::contains)),
        picture.name());
  }

  /** A pin that sits in its hole shows neither that hole nor how deep it goes in. */
  @ParameterizedTest
  @ValueSource(strings = {"window-bench", "sideboard"})
  void aShelfPinIsShownOutOfItsHole(String project) {
    Drawing picture = mounting(AllProjects.named(project), "shelf-pin");
    Bounds frame = frames(picture).getLast();
    List<Line> inside =
        lines(picture)
            .filter(line -> line.points().stream().allMatch(frame.widened(0.01)::contains))
            .toList();
    Bounds pin =
        Bounds.around(
            inside.stream()
                .filter(line -> line.role() == Role.VISIBLE)
                .flatMap(line -> line.points().stream())
                .toList());
    assertTrue(
        inside.stream()
            .filter(line -> line.role() == Role.THIN && line.points().size() > 8)
            .map(line -> Bounds.around(line.points()))
            .anyMatch(hole -> !hole.overlaps(pin) && hole.widened(hole.height()).overlaps(pin)),
        "no hole beside " + pin);
  }

  private static Stream<Line> lines(Drawing drawing) {
    return drawing.elements().stream().filter(Line.class::isInstance).map(Line.class::cast);
  }

  private static boolean isFrame(Line line) {
    return line.points().size() == 5 && line.points().getFirst().equals(line.points().getLast());
  }

  private static List<Bounds> frames(Drawing drawing) {
    return lines(drawing)
        .filter(InsetTest::isFrame)
        .map(each -> Bounds.around(each.points()))
        .toList();
  }

  /** Beside high lists the picture has all the width: what is enlarged stands below it. */
  @Test
  void inANarrowRoomTheItemStandsBelowThePicture() {
    PlanSet set = AllProjects.named("sideboard");
    Step step =
        set.build().steps().stream()
            .filter(each -> each.verb() == Verb.TRIAL_FIT && fits(set, each, "slide-16"))
            .findFirst()
            .orElseThrow();
    Drawing picture = set.drawings().steps().get(step.number());
    Bounds enlarged = frames(picture).getLast();
    List<Balloon> balloons =
        picture.elements().stream()
            .filter(Balloon.class::isInstance)
            .map(Balloon.class::cast)
            .toList();
    assertTrue(picture.widthMm() < 130 && balloons.size() > 3, picture.name());
    balloons.forEach(
        each ->
            assertTrue(each.centre().y() + Lowering.BALLOON_RADIUS <= enlarged.top(), "" + each));
    assertTrue(enlarged.bottom() < picture.heightMm());
  }

  /** The strap goes through the back into the stretcher: it lies on the back, seen from there. */
  @Test
  void aStrapLiesOnTheBackAndIsSeenFromBehind() {
    PlanSet set = AllProjects.named("sideboard");
    PlacedItem strap =
        PlacedHardware.of(set.piece()).stream()
            .filter(each -> each.item().equals("strap"))
            .findFirst()
            .orElseThrow();
    Part back = set.piece().part("case.back-panel");
    assertEquals(back.bounds().at(Face.BACK).toMm(), strap.at().getY(), 0.001);
    assertTrue(texts(mounting(set, "strap")).anyMatch("Seen from behind."::equals));
  }
}
