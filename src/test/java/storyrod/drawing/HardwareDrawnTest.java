package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Role;
import storyrod.piece.HardwareUse;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

/** The hardware in the exploded views and step pictures of all projects. */
class HardwareDrawnTest {
  static Stream<Group> hardware(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Group.class::isInstance)
        .map(Group.class::cast)
        .filter(group -> group.id().startsWith("hardware-"));
  }

  private static Map<String, Integer> drawn(PlanSet set) {
    Exploded exploded = set.drawings().exploded();
    Map<String, Integer> counts = new TreeMap<>();
    hardware(exploded.whole()).forEach(each -> counts.merge(mark(each), 1, Integer::sum));
    exploded
        .opened()
        .forEach(
            sheet ->
                hardware(sheet.drawing())
                    .forEach(each -> counts.merge(mark(each), sheet.units().size(), Integer::sum)));
    return counts;
  }

  static String mark(Group group) {
    return group.title().substring(0, group.title().indexOf(' '));
  }

  /** How many of an item there are, bought or made. */
  private static int used(Piece piece, String item) {
    return piece
        .made(item)
        .map(made -> made.pieces().size())
        .orElseGet(() -> HardwareUse.of(piece).counts().get(item));
  }

  /** Each item that has a place is drawn once, with alike sub-assemblies as often as they are. */
  @TestFactory
  List<DynamicTest> exactlyTheHardwareOfTheScheduleIsDrawn() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          HardwareUse use = HardwareUse.of(piece);
          Map<String, Integer> wanted = new TreeMap<>();
          for (PlacedItem each : PlacedHardware.of(piece)) {
            wanted.put(
                use.mark(each.item()), used(piece, each.item()) * each.origin().makeup().bodies());
          }
          assertEquals(wanted, drawn(project.set()));
        });
  }

  /** All that joints use has a place, the splines of mitres too. */
  @TestFactory
  List<DynamicTest> everyFastenerOfAJointHasAPlace() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          List<PlacedItem> placed = PlacedHardware.of(piece);
          for (Joint joint : piece.joints()) {
            for (ItemCount each : joint.fasteners()) {
              long found =
                  placed.stream()
                      .filter(item -> item.origin().joint().filter(joint::equals).isPresent())
                      .filter(item -> item.item().equals(each.item()))
                      .count();
              assertTrue(found == each.count(), () -> joint.at() + " " + each + ": " + found);
            }
          }
        });
  }

  /** Hardware comes out until nothing hides it: of twenty items one may stay hidden. */
  @TestFactory
  List<DynamicTest> nearlyAllThatIsDrawnIsSeen() {
    return AllProjects.each(
        project -> {
          List<String> unseen = new ArrayList<>();
          int all = 0;
          for (Drawing drawing : project.set().drawings().exploded().all()) {
            for (Group each : hardware(drawing).toList()) {
              all++;
              if (each.elements().isEmpty()) {
                unseen.add(drawing.name() + " " + each.id());
              }
            }
          }
          assertTrue(unseen.size() * 20 <= all, unseen::toString);
        });
  }

  /** The nails of a back come out behind the top too: a leader there would seem to mean the top. */
  @ParameterizedTest
  @CsvSource({"bookcase,H4", "window-bench,H6"})
  void theLeaderOfTheBacksNailsEndsClearOfTheTop(String project, String mark) {
    PlanSet set = AllProjects.named(project);
    Drawing drawing = set.drawings().exploded().hardware().orElseThrow();
    Group lid = group(drawing, Ink.id(set.piece().part("top")));
    Bounds bounds =
        Bounds.around(
            lid.elements().stream()
                .filter(Drawing.Area.class::isInstance)
                .flatMap(each -> ((Drawing.Area) each).rings().getFirst().stream())
                .toList());
    At tip = balloon(drawing, mark).tip();
    boolean beside = tip.x() < bounds.left() || tip.x() > bounds.right();
    assertTrue(beside || tip.y() < bounds.top() || tip.y() > bounds.bottom(), tip + " " + bounds);
  }

  private static Group group(Drawing drawing, String id) {
    return drawing.elements().stream()
        .filter(Group.class::isInstance)
        .map(Group.class::cast)
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Balloon balloon(Drawing drawing, String mark) {
    return drawing.elements().stream()
        .filter(Balloon.class::isInstance)
        .map(Balloon.class::cast)
        .filter(each -> each.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  /** A step that only mounts hardware has a picture. */
  @TestFactory
  List<DynamicTest> aStepThatMountsHardwareHasAPicture() {
    return AllProjects.each(
        project -> {
          List<Hardware> all = Hardware.of(project.set().piece());
          for (Step step : project.set().build().steps()) {
            if (step.verb() == Verb.MOUNT
                && all.stream().anyMatch(each -> each.placed().isFittedIn(step))) {
              Drawing picture = project.set().drawings().steps().get(step.number());
              assertTrue(picture != null, () -> "step " + step.number());
            }
          }
        });
  }

  /** Of the hardware that a step puts in, three quarters at least are seen. */
  @TestFactory
  List<DynamicTest> mostHardwareOfAStepIsSeen() {
    return AllProjects.each(
        project -> {
          for (Drawing picture : project.set().drawings().steps().values()) {
            List<Group> groups = hardware(picture).toList();
            long seen = groups.stream().filter(each -> !each.elements().isEmpty()).count();
            assertTrue(4 * seen >= 3 * groups.size(), () -> picture.name() + ": " + seen);
          }
        });
  }

  /** Only what stands already gives way to show hardware, and it keeps its outline. */
  @TestFactory
  List<DynamicTest> whatIsNewIsNeverDrawnAsAnOutline() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          for (Step step : project.set().build().steps()) {
            Drawing picture = project.set().drawings().steps().get(step.number());
            if (picture != null && step.verb() == Verb.FIT) {
              List<String> ids = step.newParts().stream().map(piece::part).map(Ink::id).toList();
              picture.elements().stream()
                  .filter(Group.class::isInstance)
                  .map(Group.class::cast)
                  .filter(each -> ids.contains(each.id()))
                  .forEach(each -> assertTrue(isWhole(each), () -> picture.name() + each.id()));
            }
          }
        });
  }

  private static boolean isWhole(Group group) {
    return group.elements().stream()
        .noneMatch(each -> each instanceof Drawing.Line line && line.role() == Role.PHANTOM);
  }

  /** Pins on both sides of a bay are seen only where the side before them is an outline. */
  @Test
  void theSideBeforeShelfPinsIsAnOutline() {
    PlanSet set = AllProjects.named("sideboard");
    Step pins =
        set.build().steps().stream()
            .filter(step -> step.verb() == Verb.MOUNT)
            .filter(step -> pinsOf(set).anyMatch(pin -> pin.placed().isFittedIn(step)))
            .findFirst()
            .orElseThrow();
    Drawing picture = set.drawings().steps().get(pins.number());
    assertTrue(
        picture.elements().stream()
            .filter(Group.class::isInstance)
            .map(Group.class::cast)
            .anyMatch(group -> !isWhole(group)));
  }

  private static Stream<Hardware> pinsOf(PlanSet set) {
    return Hardware.of(set.piece()).stream()
        .filter(each -> each.placed().item().equals("shelf-pin"));
  }

  /**
   * Hardware too small to make out is enlarged beside: some line of it is longer there. What is
   * stuck on anywhere, such as felt, has no body to be drawn.
   */
  @TestFactory
  List<DynamicTest> smallHardwareIsEnlarged() {
    return AllProjects.each(
        project -> {
          List<Hardware> all = Hardware.of(project.set().piece());
          for (Step step : project.set().build().steps()) {
            Drawing picture = project.set().drawings().steps().get(step.number());
            boolean hasBody = !StepHardware.of(step, all).coming().isEmpty();
            if (step.verb() == Verb.MOUNT && picture != null && hasBody) {
              double largest =
                  Stream.concat(
                          hardware(picture).flatMap(each -> each.elements().stream()),
                          picture.elements().stream())
                      .filter(Drawing.Area.class::isInstance)
                      .map(Drawing.Area.class::cast)
                      .mapToDouble(HardwareDrawnTest::acrossMm)
                      .max()
                      .orElse(0);
              assertTrue(largest > 3, () -> picture.name() + ": " + largest);
            }
          }
        });
  }

  private static double acrossMm(Drawing.Area area) {
    Bounds bounds = Bounds.around(area.rings().getFirst());
    return Math.hypot(bounds.width(), bounds.height());
  }

  /** A step's picture shows what the step fits, and its balloons count all of it. */
  @TestFactory
  List<DynamicTest> aStepShowsItsHardware() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          List<Hardware> all = Hardware.of(piece);
          for (Step step : project.set().build().steps()) {
            Drawing picture = project.set().drawings().steps().get(step.number());
            if (picture != null && !OneOfMany.isIn(piece, step)) {
              List<String> wanted =
                  all.stream()
                      .filter(each -> each.placed().isFittedIn(step))
                      .map(Hardware::id)
                      .sorted()
                      .toList();
              assertEquals(
                  wanted, hardware(picture).map(Group::id).sorted().toList(), () -> picture.name());
              assertCounted(step, all, picture);
            }
          }
        });
  }

  private static void assertCounted(Step step, List<Hardware> all, Drawing picture) {
    Map<String, Integer> said = new TreeMap<>();
    picture.elements().stream()
        .filter(Balloon.class::isInstance)
        .map(Balloon.class::cast)
        .filter(each -> each.count() > 0)
        .forEach(each -> said.merge(each.mark(), each.count(), Integer::sum));
    Map<String, Integer> there = new TreeMap<>();
    all.stream()
        .filter(each -> each.placed().isFittedIn(step))
        .filter(each -> said.containsKey(each.mark()))
        .forEach(each -> there.merge(each.mark(), 1, Integer::sum));
    all.stream()
        .filter(each -> each.placed().origin().each() > 1 && there.containsKey(each.mark()))
        .map(Hardware::mark)
        .distinct()
        .forEach(mark -> there.merge(mark, 2, (count, each) -> count / each));
    assertEquals(there, said, () -> picture.name());
  }
}
