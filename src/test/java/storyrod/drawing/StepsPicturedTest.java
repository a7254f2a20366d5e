package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.SandedFaces;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.planset.PlanSet;
import storyrod.stock.StockPlan;

/** Which steps have a picture, and what those that mark, sand, mill and saw stock show. */
class StepsPicturedTest {
  private static final Size ROOM = new Size(190, 90);

  private static Optional<? extends PicturedStep> picture(PlanSet set, Step step) {
    return PicturedStep.of(set.piece(), set.build(), step, Hardware.of(set.piece()))
        .or(() -> GridPicture.of(set.piece(), set.stock(), step))
        .or(() -> BoardPicture.chosen(set.piece(), step));
  }

  private static Stream<Step> steps(PlanSet set, Verb verb) {
    return set.build().steps().stream().filter(each -> each.verb() == verb);
  }

  private static Drawing drawn(PlanSet set, Step step) {
    return picture(set, step).orElseThrow().drawn(ROOM);
  }

  private static List<Group> groups(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Group.class::isInstance)
        .map(Group.class::cast)
        .toList();
  }

  private static <T extends Element> Stream<T> only(Class<T> kind, List<Element> elements) {
    return elements.stream().filter(kind::isInstance).map(kind::cast);
  }

  @Test
  void noKindOfStepIsWithoutPicture() {
    List<String> without = new ArrayList<>();
    for (Sample sample : AllProjects.all()) {
      for (Step step : sample.set().build().steps()) {
        if (picture(sample.set(), step).isEmpty()) {
          without.add(step.verb() + " " + sample.name());
        }
      }
    }

    assertEquals(List.of(), without);
  }

  /** A strip that has no room above the sentences of its step stands below its lists. */
  @Test
  void allOfThemFindRoom() {
    List<String> without = new ArrayList<>();
    for (Sample sample : AllProjects.all()) {
      for (Step step : sample.set().build().steps()) {
        if (!sample.set().drawings().steps().containsKey(step.number())) {
          without.add(sample.name() + " " + step.number() + " " + step.verb());
        }
      }
    }
    assertEquals(List.of(), without);
  }

  /**
   * Where no layout says from which board a part comes, its rough blanks are what is looked for.
   */
  @Test
  void boardsThatAreNotLaidOutAreChosenByTheBlanksThatTheyHaveToHold() {
    PlanSet set = AllProjects.named("step-stool");
    Step step = steps(set, Verb.CHOOSE).findFirst().orElseThrow();
    List<Drawing.Dimension> drawn = Clean.dimensions(drawn(set, step));
    List<Length> lengths = drawn.stream().map(Drawing.Dimension::measure).toList();
    Length wanted =
        set.stock().rough().stream()
            .map(each -> each.length().times(each.count()))
            .reduce(Length.ZERO, Length::plus);

    assertEquals(wanted, lengths.stream().reduce(Length.ZERO, Length::plus));
    assertEquals(lengths.stream().sorted(Comparator.reverseOrder()).toList(), lengths);
    double scale = scale(drawn.getFirst());
    drawn.forEach(each -> assertEquals(scale, scale(each), 1e-6));
  }

  private static double scale(Drawing.Dimension along) {
    return (along.to().x() - along.from().x()) / along.measure().toMm();
  }

  /** Slides are hung on trial in the step where their lines are drawn: words may run on. */
  @Test
  void trialsAreShownAlsoWhereTheirWordsFillThePage() {
    List<String> without = new ArrayList<>();
    for (Sample sample : AllProjects.all()) {
      steps(sample.set(), Verb.TRIAL_FIT)
          .filter(step -> !sample.set().drawings().steps().containsKey(step.number()))
          .forEach(step -> without.add(sample.name() + " " + step.number()));
    }
    assertEquals(List.of(), without);
  }

  /** Each mark once, and a wedge at each edge from which its joints are set out. */
  @TestFactory
  List<DynamicTest> aStepThatMarksShowsEachOfItsMarks() {
    return AllProjects.each(
        sample ->
            steps(sample.set(), Verb.MARK)
                .forEach(
                    step -> {
                      List<String> marks =
                          step.targets().stream()
                              .map(name -> sample.set().piece().part(name).mark())
                              .distinct()
                              .toList();
                      List<String> shown =
                          groups(drawn(sample.set(), step)).stream().map(Group::mark).toList();
                      assertEquals(marks.subList(0, shown.size()), shown);
                      assertTrue(shown.size() == marks.size() || shown.size() == 24);
                      assertNamed(sample, step, marks.subList(shown.size(), marks.size()));
                    }));
  }

  /** What is not drawn is named below, so that nobody looks for it. */
  private static void assertNamed(Sample sample, Step step, List<String> marks) {
    String said =
        only(Drawing.Text.class, drawn(sample.set(), step).elements())
            .map(Drawing.Text::text)
            .collect(Collectors.joining(", "));
    assertTrue(said.contains(String.join(", ", marks)), said);
  }

  /** The toned share of a face is what its solid has in the plane of the face. */
  @TestFactory
  List<DynamicTest> aStepThatSandsTonesWhatIsLeftOfEachFace() {
    return AllProjects.each(
        sample ->
            steps(sample.set(), Verb.SAND)
                .forEach(
                    step -> {
                      Drawing drawing = drawn(sample.set(), step);
                      assertEquals(faces(sample.set(), step), groups(drawing).size());
                      groups(drawing).forEach(each -> assertToned(sample.set(), step, each));
                    }));
  }

  private static long faces(PlanSet set, Step step) {
    SandedFaces faces = new SandedFaces(set.piece());
    return Math.min(
        24,
        Strips.byMark(set.piece(), step).values().stream()
            .mapToLong(same -> faces.of(shown(set, same)).size())
            .sum());
  }

  private static Part shown(PlanSet set, List<Part> same) {
    Part shown = set.piece().mark(same.getFirst().mark()).shown();
    return same.contains(shown) ? shown : same.getFirst();
  }

  private static void assertToned(PlanSet set, Step step, Group tile) {
    Part part =
        step.targets().stream()
            .map(name -> set.piece().part(name))
            .filter(each -> tile.id().startsWith(Ink.id(each)))
            .max(java.util.Comparator.comparing(each -> each.name().length()))
            .orElseThrow();
    double ratio = part.finishedLength().toMm() / part.finishedWidth().toMm();
    if (ratio > 4 || part.cuts().stream().anyMatch(each -> !(each instanceof Cut.Trench))) {
      return;
    }
    boolean back = tile.id().endsWith("-back");
    FlatPart flat = FlatPart.of(part);
    double plane = back ? part.finishedThickness().toMm() : 0;
    Set<Cut> later = new ByThen(set.build()).made(part, n -> n > step.number());
    if (!later.isEmpty()) {
      return;
    }
    double left =
        storyrod.piece.Carving.of(flat.box(), flat.cuts(), storyrod.geometry.Fineness.DRAWN)
            .faces()
            .stream()
            .filter(face -> isIn(face, plane))
            .mapToDouble(StepsPicturedTest::area)
            .sum();
    left -= seats(set, part, flat.original(back ? Face.BACK : Face.FRONT));
    double share = left / part.finishedLength().toMm() / part.finishedWidth().toMm();
    double toned = area(tile, Tone.FRONT) / round(tile);
    assertEquals(share, toned, 0.01, tile.id());
  }

  /** Where other parts are glued to a face, in mm²: no sander may come there. */
  private static double seats(PlanSet set, Part part, Face face) {
    Set<String> others = new TreeSet<>();
    for (Joint joint : set.piece().joints()) {
      if (joint.glued() && List.of(joint.first(), joint.second()).contains(part.name())) {
        others.addAll(List.of(joint.first(), joint.second()));
      }
    }
    others.remove(part.name());
    List<FlatFace> own =
        part.placed().faces().stream()
            .filter(each -> each.normal().dot(part.pose().normal(face)) > 0.999)
            .toList();
    double outermost = own.stream().mapToDouble(FlatFace::offsetMm).max().orElseThrow();
    List<FlatFace> nearest =
        own.stream().filter(each -> each.offsetMm() > outermost - 0.01).toList();
    return others.stream()
        .flatMap(name -> set.piece().part(name).placed().faces().stream())
        .mapToDouble(other -> nearest.stream().mapToDouble(each -> touching(each, other)).sum())
        .sum();
  }

  private static double touching(FlatFace one, FlatFace other) {
    boolean touches =
        one.normal().dot(other.normal()) < -0.999
            && Math.abs(one.offsetMm() + other.offsetMm()) < 0.01;
    return touches ? one.sharedMm2(other) : 0;
  }

  private static boolean isIn(FlatFace face, double plane) {
    return face.outer().stream().allMatch(at -> Math.abs(at.getY() - plane) < 1e-6);
  }

  private static double area(FlatFace face) {
    return ring(face.outer().stream().map(at -> new At(at.getX(), at.getZ())).toList())
        - face.openings().stream()
            .mapToDouble(
                each -> ring(each.stream().map(at -> new At(at.getX(), at.getZ())).toList()))
            .sum();
  }

  private static double area(Group tile, Tone tone) {
    return only(Area.class, tile.elements())
        .filter(each -> each.tone() == tone)
        .mapToDouble(
            each ->
                ring(each.rings().getFirst())
                    - each.rings().stream().skip(1).mapToDouble(StepsPicturedTest::ring).sum())
        .sum();
  }

  private static double round(Group tile) {
    Bounds all =
        Bounds.around(
            only(Area.class, tile.elements())
                .flatMap(each -> each.rings().getFirst().stream())
                .toList());
    return all.width() * all.height();
  }

  private static double ring(List<At> ring) {
    double twice = 0;
    At before = ring.getLast();
    for (At at : ring) {
      twice += before.x() * at.y() - at.x() * before.y();
      before = at;
    }
    return Math.abs(twice) / 2;
  }

  /** As many toned blanks as the layouts have for the parts of the step, alike sheets once. */
  @TestFactory
  List<DynamicTest> whatAStepTakesFromSheetsIsToned() {
    return AllProjects.each(
        sample ->
            Stream.concat(steps(sample.set(), Verb.CHOOSE), steps(sample.set(), Verb.SIZE))
                .filter(
                    step ->
                        GridPicture.of(sample.set().piece(), sample.set().stock(), step)
                            .isPresent())
                .forEach(step -> assertTaken(sample.set(), step)));
  }

  /** A lower one is but a stamp; a board is as low as it is slim. */
  @TestFactory
  List<DynamicTest> noSheetGetsSmallerThanCanBeRead() {
    return AllProjects.each(
        sample ->
            steps(sample.set(), Verb.SIZE)
                .filter(step -> isOfSheets(sample.set(), step))
                .flatMap(
                    step ->
                        GridPicture.of(sample.set().piece(), sample.set().stock(), step).stream())
                .forEach(each -> assertTrue(each.heightMm(0) >= 25, "step " + each.step())));
  }

  private static boolean isOfSheets(PlanSet set, Step step) {
    return step.targets().stream()
        .allMatch(
            name -> set.piece().part(name).stock().kind() == storyrod.description.StockKind.SHEET);
  }

  private static void assertTaken(PlanSet set, Step step) {
    Set<String> marks =
        step.targets().stream()
            .map(name -> set.piece().part(name).mark())
            .collect(Collectors.toSet());
    long laid =
        set.stock().layouts().stream()
            .flatMap(plan -> looks(set, plan).stream())
            .flatMap(sheet -> sheet.parts().stream())
            .filter(part -> marks.contains(part.mark()))
            .count();
    Drawing drawing = GridPicture.of(set.piece(), set.stock(), step).orElseThrow().drawn(ROOM);
    long toned =
        groups(drawing).stream()
            .flatMap(each -> only(Area.class, each.elements()))
            .filter(area -> area.tone() == Tone.FRONT)
            .count();
    assertEquals(laid, toned, "step " + step.number());
  }

  /** The sheets of a plan, of those that look the same one. */
  private static Set<SawnPiece> looks(PlanSet set, StockPlan.SheetPlan plan) {
    return plan.sheets().stream()
        .map(sheet -> SawnPiece.of(sheet, set.piece()).withoutNames())
        .collect(Collectors.toSet());
  }

  /** The thickness to which the words say that the blank is planed, and that of the rough board. */
  @TestFactory
  List<DynamicTest> aBlankIsShownWithItsTwoThicknesses() {
    return AllProjects.each(
        sample ->
            steps(sample.set(), Verb.MILL)
                .filter(step -> !BoardPicture.isShown(sample.set().piece(), step))
                .forEach(step -> assertMilled(sample.set(), step)));
  }

  private static void assertMilled(PlanSet set, Step step) {
    Part part = set.piece().part(step.targets().getFirst());
    String said =
        only(Drawing.Text.class, drawn(set, step).elements())
            .map(Drawing.Text::text)
            .collect(Collectors.joining(" "));
    Notation notation = Notation.of(set.piece());
    Stream.of(part.finishedThickness(), part.stock().boughtAs().orElseThrow())
        .map(notation.format()::format)
        .forEach(each -> assertTrue(said.contains(each), said));
    assertEquals(
        List.of(part.finishedThickness(), part.stock().boughtAs().orElseThrow()),
        Clean.dimensions(drawn(set, step)).stream().map(Drawing.Dimension::measure).toList());
  }
}
