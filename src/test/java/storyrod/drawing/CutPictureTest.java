package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Text;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Part;
import storyrod.planset.PlanSet;

/** Pictures of steps that cut or drill, over all projects. */
class CutPictureTest {
  private static final double EXACT_MM3 = 1e-3;

  private static Stream<CutPicture> pictures(PlanSet set) {
    return set.build().steps().stream()
        .flatMap(step -> CutPicture.of(set.piece(), set.build(), step).stream());
  }

  private static Step step(PlanSet set, CutPicture picture) {
    return set.build().steps().get(picture.step() - 1);
  }

  /** Where edges are only rounded, a picture may give way to a larger one. */
  private static boolean shapes(Step step) {
    return CutPicture.isFor(step)
        && step.operations().stream()
            .flatMap(each -> each.cuts().stream())
            .anyMatch(cut -> !(cut instanceof Cut.Roundover));
  }

  @Test
  void everyStepThatCutsIsShown() {
    List<String> all = new ArrayList<>();
    List<String> without = new ArrayList<>();
    for (Sample sample : AllProjects.all()) {
      sample.set().build().steps().stream()
          .filter(CutPictureTest::shapes)
          .map(Step::number)
          .peek(number -> all.add(sample.name() + " " + number))
          .filter(number -> !sample.set().drawings().steps().containsKey(number))
          .forEach(number -> without.add(sample.name() + " " + number));
    }
    assertTrue(all.size() > 50, all.toString());
    assertEquals(List.of(), without);
  }

  /** What a row of parts has no use for stays to the sentences below it. */
  @TestFactory
  List<DynamicTest> noPictureIsHigherThanItsParts() {
    return AllProjects.each(
        sample ->
            pictures(sample.set())
                .forEach(
                    picture -> {
                      double wanted = picture.heightMm(180);
                      Drawing drawn = picture.drawn(new Size(180, wanted + 40));
                      assertEquals(wanted, drawn.heightMm(), 1e-6, drawn.name());
                    }));
  }

  /** Mortises in the bottom of a groove are seen too, such as those of door stiles. */
  @TestFactory
  List<DynamicTest> whatIsTakenOffIsSeen() {
    return AllProjects.each(
        sample ->
            pictures(sample.set())
                .flatMap(picture -> picture.parts().stream())
                .filter(each -> !each.taken().waste().isEmpty() && each.mouths().isEmpty())
                .filter(each -> each.taken().cuts().getFirst() instanceof Cut.Trench)
                .forEach(
                    each -> {
                      double area =
                          each.waste().regions().stream().mapToDouble(Seen.Region::areaMm2).sum();
                      double least =
                          CutPicture.ENOUGH_SEEN
                              * BenchView.exposed(each.taken(), BenchView.of(each.taken()).view());
                      assertTrue(area >= least, each.mark() + " " + area + " of " + least);
                    }));
  }

  /** Whoever works on a part finds its mark in the picture, drawn or not. */
  @TestFactory
  List<DynamicTest> everyMarkOfAStepIsNamed() {
    return AllProjects.each(
        sample -> pictures(sample.set()).forEach(each -> assertNamesAll(sample.set(), each)));
  }

  private static void assertNamesAll(PlanSet set, CutPicture picture) {
    Drawing drawn = picture.drawn(new Size(180, Strip.MOST_MM));
    Set<String> named = new TreeSet<>();
    for (Drawing.Element each : drawn.elements()) {
      if (each instanceof Drawing.Balloon balloon) {
        named.add(balloon.mark());
      } else if (each instanceof Drawing.Text text) {
        named.addAll(List.of(text.text().replaceFirst("not drawn: ", "").split(", ")));
      }
    }
    Step step = step(set, picture);
    Set<String> marks = new TreeSet<>();
    for (String name : step.targets()) {
      Part part = set.piece().part(name);
      Taken.of(part, set.build(), step).ifPresent(taken -> marks.add(part.mark()));
    }
    assertTrue(named.containsAll(marks), step.number() + " " + marks + " " + named);
  }

  /** Summed up over all steps, what is taken off makes the whole part from its box. */
  @TestFactory
  List<DynamicTest> theStepsTakeAwayWhatThePartLacks() {
    return AllProjects.each(
        sample -> sample.set().piece().parts().forEach(part -> assertTakesAll(sample.set(), part)));
  }

  private static void assertTakesAll(PlanSet set, Part part) {
    List<Taken> all =
        set.build().steps().stream()
            .filter(CutPicture::isFor)
            .flatMap(step -> Taken.of(part, set.build(), step).stream())
            .toList();
    if (!all.isEmpty() && !hasOthers(set, part)) {
      double off = all.stream().mapToDouble(each -> each.waste().volumeMm3()).sum();
      double lacking = part.box().volumeMm3() - part.solid().unbored().volumeMm3();
      assertEquals(lacking, off, EXACT_MM3 * Math.max(1, lacking / 1000), part.name());
    }
  }

  /** Whether other steps shape it too, as when a board is sawn apart. */
  private static boolean hasOthers(PlanSet set, Part part) {
    Set<Cut> shown =
        set.build().steps().stream()
            .filter(CutPicture::isFor)
            .flatMap(step -> step.operations().stream())
            .filter(each -> each.target().equals(part.name()))
            .flatMap(each -> each.cuts().stream())
            .collect(Collectors.toSet());
    return !shown.containsAll(part.cuts());
  }

  /** What is left after one step is what the next one finds; so no later cut is there yet. */
  @TestFactory
  List<DynamicTest> eachStepBeginsWithWhatTheOneBeforeLeft() {
    return AllProjects.each(
        sample -> sample.set().piece().parts().forEach(part -> assertInTurn(sample.set(), part)));
  }

  private static void assertInTurn(PlanSet set, Part part) {
    Optional<Solid> before = Optional.empty();
    for (Step step : set.build().steps()) {
      Optional<Taken> taken =
          CutPicture.isFor(step) ? Taken.of(part, set.build(), step) : Optional.empty();
      if (taken.isPresent()) {
        double now = taken.get().left().unbored().volumeMm3() + taken.get().waste().volumeMm3();
        double whole = part.box().volumeMm3();
        double old = before.map(solid -> solid.unbored().volumeMm3()).orElse(now);
        assertEquals(old, now, EXACT_MM3 * Math.max(1, whole / 1000), part.name());
        assertEquals(
            0, taken.get().left().sharedVolumeMm3(taken.get().waste()), EXACT_MM3, part.name());
        before = taken.map(Taken::left);
      }
    }
  }

  /** The figures beside a cut are those to which the step sets its tool. */
  @TestFactory
  List<DynamicTest> figuresAgreeWithTheSettings() {
    return AllProjects.each(
        sample -> pictures(sample.set()).forEach(each -> assertSet(sample.set(), each)));
  }

  private static void assertSet(PlanSet set, CutPicture picture) {
    Step step = step(set, picture);
    Set<Length> settings = step.settings().stream().map(Setting::value).collect(Collectors.toSet());
    Drawing drawn = picture.drawn(new Size(180, Strip.MOST_MM));
    Cut first = picture.taken().getFirst().cuts().getFirst();
    if (first instanceof Cut.Trench) {
      Set<Length> figures =
          Clean.dimensions(drawn).stream()
              .map(Drawing.Dimension::measure)
              .collect(Collectors.toSet());
      Set<Length> tool =
          step.settings().stream()
              .filter(each -> each.key().equals("cut-width") || each.key().equals("cut-depth"))
              .map(Setting::value)
              .collect(Collectors.toSet());
      assertTrue(figures.containsAll(tool), step.number() + ": " + figures + " " + tool);
      assertTrue(
          !step.isSet("fence-") || settings.containsAll(figures),
          step.number() + ": " + figures + " " + settings);
    }
  }

  @Test
  void aGroovesFiguresAreThere() {
    assertFalse(
        pictures(AllProjects.named("sideboard"))
            .flatMap(each -> Clean.dimensions(each.drawn(new Size(180, 45))).stream())
            .toList()
            .isEmpty());
  }

  /** Who cut a left and a right part alike would spoil one of them. */
  @TestFactory
  List<DynamicTest> mirrorImagesAreNotCalledAlike() {
    return AllProjects.each(
        sample -> pictures(sample.set()).forEach(each -> assertHands(sample.set(), each)));
  }

  private static void assertHands(PlanSet set, CutPicture picture) {
    List<Part> targets = step(set, picture).targets().stream().map(set.piece()::part).toList();
    List<String> handed =
        picture.taken().stream()
            .map(each -> each.flat().part().mark())
            .map(mark -> targets.stream().filter(each -> each.mark().equals(mark)).toList())
            .filter(same -> same.stream().map(Part::mirrored).distinct().count() == 2)
            .map(same -> same.stream().filter(each -> !each.mirrored()).count())
            .map(shown -> shown + " + ")
            .toList();
    List<String> said =
        captions(picture).stream()
            .filter(each -> each.contains("mirrored"))
            .map(each -> each.replaceFirst("(.* \\+ ).*", "$1"))
            .toList();
    assertEquals(handed, said, "step " + picture.step());
  }

  @Test
  void theSidesAreALeftAndARightOne() {
    assertTrue(
        pictures(AllProjects.named("sideboard"))
            .flatMap(each -> captions(each).stream())
            .anyMatch("1 + 1 mirrored, show face down"::equals));
  }

  /** The round-over of a top runs on over its breadboard ends, which are on by then. */
  @Test
  void whatIsShapedTogetherIsSaidToBe() {
    PlanSet table = AllProjects.named("dining-table");
    List<Boolean> apart =
        pictures(table)
            .filter(
                each -> captions(each).stream().anyMatch(said -> said.endsWith("worked together")))
            .map(each -> step(table, each).verb() == Verb.TRIM)
            .toList();
    assertEquals(List.of(true), apart);
  }

  /** Tails are set out on the outside face, so that one lies up. */
  @Test
  void tailsAreSeenOnTheFaceOnWhichTheyAreSetOut() {
    PlanSet box = AllProjects.named("sewing-box");
    List<String> captions =
        pictures(box)
            .filter(each -> isOfTails(each.taken().getFirst().cuts().getFirst()))
            .flatMap(each -> captions(each).stream())
            .toList();
    assertFalse(captions.isEmpty());
    assertTrue(
        captions.stream().allMatch(each -> each.contains("show face up")), captions::toString);
  }

  private static boolean isOfTails(Cut cut) {
    return cut instanceof Dovetails tails && tails.isTails();
  }

  /** Where a page has room for further rows, no kind of part is left out. */
  @TestFactory
  List<DynamicTest> everyKindIsDrawnWhereThereIsRoom() {
    return AllProjects.each(
        sample ->
            pictures(sample.set())
                .forEach(
                    picture -> {
                      Size room = new Size(180, picture.heightMm(180));
                      assertEquals(
                          picture.taken().stream().map(each -> each.flat().part().mark()).toList(),
                          picture.drawn(room).elements().stream()
                              .filter(Balloon.class::isInstance)
                              .map(each -> ((Balloon) each).mark())
                              .toList());
                    }));
  }

  /** A mark far from a picture that does not fill its place is taken for another's. */
  @TestFactory
  List<DynamicTest> marksStandNextToTheirPictures() {
    return AllProjects.each(
        sample -> pictures(sample.set()).forEach(CutPictureTest::assertMarksNear));
  }

  private static void assertMarksNear(CutPicture picture) {
    List<Element> elements = picture.drawn(new Size(180, Strip.LEAST_MM)).elements();
    for (int i = 1; i < elements.size(); i++) {
      if (elements.get(i) instanceof Balloon mark && elements.get(i - 1) instanceof Group part) {
        double gap = left(part) - mark.centre().x();
        assertTrue(gap > Lowering.BALLOON_RADIUS && gap < 10, picture.step() + ": " + gap);
      }
    }
  }

  private static double left(Group part) {
    return part.elements().stream()
        .flatMap(each -> Paper.stretches(each).stream())
        .mapToDouble(each -> Math.min(each.from().x(), each.to().x()))
        .min()
        .orElseThrow();
  }

  private static List<String> captions(CutPicture picture) {
    Size room = new Size(180, picture.heightMm(180));
    return Clean.flat(picture.drawn(room).elements()).stream()
        .flatMap(each -> each instanceof Text text ? Stream.of(text.text()) : Stream.empty())
        .toList();
  }
}
