package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.geometry.Face.BACK;
import static storyrod.geometry.Face.BOTTOM;
import static storyrod.geometry.Face.LEFT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Need;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

class PlannerTest {
  private static BuildPlan plan(Piece piece) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<BuildPlan> plan = Planner.plan(piece, diagnostics);
    assertEquals(List.of(), diagnostics.sorted());
    return plan.orElseThrow();
  }

  private static List<String> names(BuildPlan plan) {
    return plan.steps().stream()
        .flatMap(step -> step.operations().stream())
        .map(Operation::name)
        .toList();
  }

  @Test
  void everyOperationComesAfterAllThatItNeeds() {
    BuildPlan plan = plan(Benches.bench().piece());
    Map<String, Integer> first = new LinkedHashMap<>();
    Map<String, Integer> last = new LinkedHashMap<>();
    List<String> names = names(plan);
    for (int i = 0; i < names.size(); i++) {
      first.putIfAbsent(names.get(i), i);
      last.put(names.get(i), i);
    }
    List<Need> broken =
        plan.needs().stream()
            .filter(need -> last.get(need.before()) >= first.get(need.after()))
            .toList();
    assertEquals(List.of(), broken);
    assertTrue(plan.needs().size() > 150, "needs: " + plan.needs().size());
  }

  @Test
  void everyPartIsSizedAndFittedOnceAndEveryBoardMilledBefore() {
    Piece piece = Benches.bench().piece();
    List<String> names = names(plan(piece));
    for (Part part : piece.parts()) {
      for (Verb verb : List.of(Verb.MILL, Verb.SIZE, Verb.FIT)) {
        String name = verb.word() + " " + part.name();
        boolean isReady = verb == Verb.MILL && Traits.isSheet(part);
        assertEquals(isReady ? 0 : 1, names.stream().filter(name::equals).count(), name);
      }
    }
  }

  @Test
  void hardwareOverAllStepsIsWhatJointsAndHardwareListUseUp() {
    Piece piece = Benches.bench().piece();
    Map<String, Integer> used = new TreeMap<>();
    piece.joints().stream()
        .flatMap(joint -> joint.fasteners().stream())
        .forEach(each -> used.merge(each.item(), each.count(), Integer::sum));
    for (HardwareEntry entry : piece.description().hardware()) {
      used.merge(entry.item().value(), entry.count(), Integer::sum);
      entry
          .screw()
          .ifPresent(screw -> used.merge(screw, entry.count() * entry.screwsEach(), Integer::sum));
    }
    Map<String, Integer> inSteps = new TreeMap<>();
    plan(piece).steps().stream()
        .flatMap(step -> step.hardware().stream())
        .forEach(each -> inSteps.merge(each.item(), each.count(), Integer::sum));
    assertEquals(used, inSteps);
  }

  @Test
  void everyJointIsClosedOnce() {
    Piece piece = Benches.bench().piece();
    List<Object> closed = new ArrayList<>();
    plan(piece).steps().forEach(s -> s.operations().forEach(o -> closed.addAll(o.joints())));
    assertEquals(piece.joints().size(), closed.size());
    assertTrue(closed.containsAll(piece.joints()));
  }

  @Test
  void theSamePieceGivesTheSamePlan() {
    assertEquals(
        plan(Benches.bench().piece()).toString(), plan(Benches.bench().piece()).toString());
  }

  @Test
  void capturedDrawerBottomGoesInBeforeTheLastSide() {
    List<String> names = names(plan(Benches.bench().piece()));
    int panel = names.indexOf("fit drawer.panel");
    int last =
        Stream.of("left-side", "right-side", "box-front", "box-back")
            .mapToInt(side -> names.indexOf("fit drawer." + side))
            .max()
            .orElseThrow();
    assertTrue(panel < last, names::toString);
  }

  @Test
  void screwedFrontIsFixedWhenItsDrawerHangsAndJustBeforeItsPull() {
    List<String> names = names(plan(Benches.bench().piece()));
    assertEquals(
        List.of("fit drawer", "fit drawer.face", "mount pull"),
        names.subList(names.indexOf("fit drawer"), names.indexOf("fit drawer") + 3));
  }

  @Test
  void crossMembersStandBeforeTheBackAndTheFrameAndAllFeetComeInOneTurn() {
    List<String> names = names(plan(Benches.bench().piece()));
    for (String rail : List.of("fit front-stretcher", "fit back-stretcher")) {
      for (String later : List.of("fit back", "fit frame", "fit left-front-foot")) {
        assertTrue(names.indexOf(rail) < names.indexOf(later), rail + " after " + later);
      }
    }
  }

  @Test
  void gluedUpPanelRestsWhileTheOtherPartsAreSizedAndCut() {
    List<String> names = names(plan(Benches.bench().piece()));
    assertTrue(names.indexOf("size top") > names.lastIndexOf("cut left-side"), names::toString);
  }

  @Test
  void theTopGoesOnAfterTheFinishAndTheDrawerAfterItsSlides() {
    List<String> names = names(plan(Benches.bench().piece()));
    assertTrue(names.indexOf("finish piece") < names.indexOf("fit top"));
    assertTrue(names.indexOf("mount slide") < names.indexOf("fit drawer"));
    assertTrue(names.indexOf("mount shelf-pin") < names.indexOf("fit left-shelf"));
  }

  @Test
  void shelfWiderThanTheOpeningOfTheFrameIsTiltedIn() {
    List<Step> steps = plan(Benches.bench().piece()).steps();
    Step shelves =
        steps.stream()
            .filter(s -> s.operations().getFirst().name().equals("fit left-shelf"))
            .findFirst()
            .orElseThrow();
    assertEquals(Optional.of(BACK), shelves.enters());
    assertTrue(shelves.cautions().contains("tilt"));
  }

  @Test
  void allGroovesOfOneSettingAreOneStep() {
    long grooves =
        plan(Benches.bench().piece()).steps().stream()
            .filter(s -> s.verb() == Verb.CUT)
            .filter(s -> s.operations().getFirst().cuts().getFirst().term().equals("groove"))
            .count();
    assertEquals(1, grooves);
  }

  @Test
  void equalFeetAreFittedInOneStepAndSoAreOppositeSidesThatClampsPressTogether() {
    List<Step> steps = plan(Benches.bench().piece()).steps();
    List<String> feet =
        List.of("left-front-foot", "right-front-foot", "left-back-foot", "right-back-foot");
    List<String> sides = List.of("left-side", "right-side");
    assertTrue(steps.stream().anyMatch(s -> s.newParts().equals(feet)));
    assertTrue(steps.stream().anyMatch(s -> s.newParts().containsAll(sides)));
  }

  /** The small part is brought to the large unit, though that is a sub-assembly. */
  @Test
  void railIsScrewedToTheCaseAndNotTheCaseToTheRail() {
    Piece piece =
        new TestPiece()
            .item("screw", "Screw", ItemKind.WOOD_SCREW)
            .part("rail", "Rail", "A", "ash", 18, 582, 282, 300, 0, 80)
            .part("case.left", "Left", "B", "ply", 0, 18, 0, 318, 0, 800)
            .part("case.back", "Back", "C", "ply", 18, 600, 300, 318, 0, 800)
            .fasten("butt", "case.back", LEFT, "case.left", true, "", 0)
            .fasten("screws", "rail", BACK, "case.back", false, "screw", 4)
            .piece();
    Step last =
        plan(piece).steps().stream()
            .filter(s -> s.verb() == Verb.FIT)
            .reduce((earlier, later) -> later)
            .orElseThrow();
    assertEquals(List.of("rail"), last.movingParts());
  }

  @Test
  void firstPartOfAnAssemblyLiesReadyWhileTheOtherMoves() {
    Step first =
        plan(Benches.bench().piece()).steps().stream()
            .filter(s -> s.newParts().contains("bottom"))
            .findFirst()
            .orElseThrow();
    assertEquals(List.of("bottom", "left-side", "right-side"), first.newParts());
    assertEquals(List.of("bottom", "right-side"), first.movingParts());
    assertEquals(Optional.of(LEFT), first.enters());
    assertEquals(2, first.tiers().size());
  }

  @Test
  void diagonalOfTheCaseIsThatOfItsOuterCorners() {
    Step square =
        plan(Benches.bench().piece()).steps().stream()
            .filter(s -> s.stage().key().equals("assembly"))
            .filter(s -> s.settings().stream().anyMatch(v -> v.key().equals("diagonal")))
            .findFirst()
            .orElseThrow();
    double expected = Math.hypot(1333, 451 - 57); // case width by height of the sides, in mm
    assertEquals(expected, square.settings().getFirst().value().toMm(), 1.0 / 16000);
  }

  @Test
  void diagonalIsRoundedToTheNearestTick() {
    assertEquals(Length.mm(5), Squares.diagonal(Length.mm(3), Length.mm(4)));
    assertEquals(new Length(1), Squares.diagonal(new Length(1), new Length(1))); // 1.414
    assertEquals(new Length(4), Squares.diagonal(new Length(2), new Length(3))); // 3.606
  }

  @Test
  void aWidePartIsGluedUpAndRestsADayBeforeItIsSized() {
    Step panels = plan(Benches.bench().piece()).steps().get(1);
    assertEquals(
        List.of("top", "drawer.face"),
        panels.operations().stream().map(Operation::target).toList());
    // The six clamps of the shop go from one to the other.
    assertEquals(60 + 24 * 60, panels.waitMinutes());
  }

  @Test
  void aPartShutInByAnotherHasNoWayIn() {
    TestPiece puzzle =
        new TestPiece()
            .part("shell", "Shell", "A", "ash", 0, 60, 0, 60, 0, 60)
            .part("core", "Core", "B", "ash", 20, 40, 20, 40, 20, 40)
            .hollow("shell", TestPiece.box(20, 40, 20, 40, 20, 40))
            .fasten("butt", "core", BOTTOM, "shell", true, "", 0);
    Diagnostics diagnostics = new Diagnostics();
    assertTrue(Planner.plan(puzzle.piece(), diagnostics).isEmpty());
    Diagnostic fault = diagnostics.sorted().getFirst();
    assertEquals("no-way-in", fault.code());
    assertTrue(fault.message().contains("`shell` and `core`"), fault.message());
    assertEquals(1, fault.also().size());
  }

  @Test
  void withoutFinishAndHardwareThereIsNothingToFinishOrMount() {
    TestPiece box =
        new TestPiece()
            .part("side", "Side", "A", "ply", 0, 18, 0, 300, 0, 300)
            .part("shelf", "Shelf", "B", "ply", 18, 400, 0, 300, 100, 118)
            .letIn("dado", "shelf", LEFT, "side", 6, true);
    List<String> names = names(plan(box.piece()));
    assertEquals(
        List.of(
            "choose side",
            "choose shelf",
            "size side",
            "size shelf",
            "mark side",
            "mark shelf",
            "cut side",
            "fit shelf",
            "fit side"),
        names.stream().filter(name -> !name.startsWith("sand")).toList());
  }
}
