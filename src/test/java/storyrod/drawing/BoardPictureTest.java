package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.PanelClamps;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.measure.Length;
import storyrod.piece.KeptBoard;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

/** Pictures of steps that glue up boards, or saw blanks apart and glue them together again. */
class BoardPictureTest {
  private static final Size ROOM = new Size(190, Strip.MOST_MM);

  private static Stream<Element> all(List<Element> elements) {
    return elements.stream()
        .flatMap(each -> each instanceof Group group ? all(group.elements()) : Stream.of(each));
  }

  private static <T> List<T> only(Class<T> kind, Drawing drawing) {
    return all(drawing.elements()).filter(kind::isInstance).map(kind::cast).toList();
  }

  private static Drawing drawn(PlanSet set, Step step) {
    return BoardPicture.of(set.piece(), step).orElseThrow().drawn(ROOM);
  }

  private static Step step(PlanSet set, Verb verb) {
    return set.build().steps().stream()
        .filter(each -> each.verb() == verb)
        .findFirst()
        .orElseThrow();
  }

  private static Step sized(PlanSet set, String part) {
    return set.build().steps().stream()
        .filter(each -> each.verb() == Verb.SIZE && each.targets().equals(List.of(part)))
        .findFirst()
        .orElseThrow();
  }

  private static Set<Length> sizes(Drawing drawing) {
    return only(Dimension.class, drawing).stream()
        .map(Dimension::measure)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** On its page; a panel that is cut to size may give way, for its glue-up shows it. */
  @Test
  void everyStepThatGluesUpBoardsIsShown() {
    List<String> all = new ArrayList<>();
    List<String> without = new ArrayList<>();
    for (Sample sample : AllProjects.all()) {
      PlanSet set = sample.set();
      for (Step step : set.build().steps()) {
        boolean works =
            step.targets().stream().anyMatch(name -> isMadeOfSeveral(set.piece(), step, name));
        if (works && BoardPicture.isFor(step)) {
          all.add(sample.name() + " " + step.number());
          if (!set.drawings().steps().containsKey(step.number())) {
            without.add(all.getLast());
          }
        }
      }
    }
    assertTrue(all.size() >= 12, all.toString());
    assertEquals(List.of(), without);
  }

  private static boolean isMadeOfSeveral(Piece piece, Step step, String name) {
    Part part = piece.part(name);
    return switch (step.verb()) {
      case MILL -> piece.isPanel(part);
      case SIZE -> piece.keptAs(name).isPresent() || piece.keptBoard(name).isPresent();
      case BLANK, KEEP, REJOIN -> piece.keptBoard(name).isPresent();
      default -> false;
    };
  }

  /** An arrow at each side of each clamp of which the sentences speak. */
  @TestFactory
  List<DynamicTest> clampsPressWhereTheWordsSay() {
    return AllProjects.each(
        sample ->
            sample.set().build().steps().stream()
                .filter(each -> each.verb() == Verb.MILL || each.verb() == Verb.REJOIN)
                .filter(each -> PanelClamps.glued(sample.set().piece(), each).count() > 0)
                .forEach(each -> assertClamped(sample.set(), each)));
  }

  private static void assertClamped(PlanSet set, Step step) {
    PanelClamps clamps = new PanelClamps(set.piece());
    int wanted =
        PanelClamps.panels(set.piece(), step).stream()
            .collect(
                Collectors.toMap(panel -> panel.first().mark(), clamps::count, (one, other) -> one))
            .values()
            .stream()
            .mapToInt(count -> 2 * count)
            .sum();
    long drawn =
        only(Arrow.class, drawn(set, step)).stream().filter(each -> !each.twoHeads()).count();
    assertEquals(wanted, drawn, step.number() + "");
  }

  /** Boards too short for the machines stay in one length, in the picture as in the words. */
  @Test
  void shortPartsAreShownInOneLength() {
    PlanSet set = AllProjects.named("step-stool");
    Step step =
        set.build().steps().stream()
            .filter(each -> each.verb() == Verb.MILL)
            .filter(
                each -> PanelClamps.panels(set.piece(), each).stream().anyMatch(p -> p.isShared()))
            .findFirst()
            .orElseThrow();
    Part part = set.piece().part(step.targets().getFirst());
    Length rough = part.finishedLength().plus(set.piece().description().shop().extraLength());
    assertEquals(rough.times(2), BoardPlan.of(set.piece(), step, part).orElseThrow().length());
  }

  @Test
  void aRejoinedBoardShowsItsOpeningAndItsFullSize() {
    PlanSet set = AllProjects.named("sideboard");
    Step step = step(set, Verb.REJOIN);
    KeptBoard board = set.piece().keptBoard(step.targets().getFirst()).orElseThrow();
    Set<Length> wanted =
        new TreeSet<>(
            List.of(
                board.cutouts().getFirst().along().length(),
                board.blankLength(),
                board.board().finishedWidth()));
    assertEquals(wanted, sizes(drawn(set, step)));
    assertEquals(4, only(Drawing.Area.class, drawn(set, step)).size(), "two strips, two blocks");
  }

  @Test
  void aBlankIsAsWideAsItsStripsAndTheKerfs() {
    PlanSet set = AllProjects.named("sideboard");
    Step step = step(set, Verb.BLANK);
    KeptBoard board = set.piece().keptBoard(step.targets().getFirst()).orElseThrow();
    assertTrue(board.blankWidth().isLongerThan(board.board().finishedWidth()));
    assertEquals(
        new TreeSet<>(List.of(board.blankLength(), board.blankWidth())), sizes(drawn(set, step)));
    assertEquals(1, only(Drawing.Area.class, drawn(set, step)).size(), "no cut of a later step");
  }

  @Test
  void aTrimmedPieceIsShownBeforeAndAfter() {
    PlanSet set = AllProjects.named("sideboard");
    String kept =
        set.piece()
            .keptBoard(step(set, Verb.REJOIN).targets().getFirst())
            .orElseThrow()
            .kept()
            .getFirst();
    Part part = set.piece().part(kept);
    Length before = set.piece().keptAs(kept).orElseThrow().widthOffTheTool();
    Set<Length> sizes = sizes(drawn(set, sized(set, kept)));
    assertTrue(
        sizes.containsAll(List.of(before, part.finishedWidth(), part.finishedLength())),
        sizes.toString());
  }

  /** In one stave the rings curve up, in the next down, as the sentence of the step says. */
  @Test
  void ringsCurveUpAndDownInTurn() {
    Piece piece = AllProjects.named("window-bench").piece();
    Part top = piece.parts().stream().filter(piece::isStaved).findFirst().orElseThrow();
    EndView end = EndView.of(piece, top, piece.description().words()).orElseThrow();
    List<Boolean> down = Stream.of(0, 1).map(i -> curvesDown(end, i)).toList();
    assertEquals(List.of(true, false), down);
  }

  /** What goes on beyond the last stave that is drawn is broken off, not cut off. */
  @Test
  void furtherStavesAreBrokenOff() {
    Piece piece = AllProjects.named("dining-table").piece();
    Part slab = piece.parts().stream().filter(piece::isStaved).findFirst().orElseThrow();
    EndView end = EndView.of(piece, slab, piece.description().words()).orElseThrow();
    assertTrue(end.goesOn());
    double last = end.staves() * end.wide();
    assertEquals(
        1,
        all(List.of(end.in(end.size())))
            .filter(each -> each instanceof Drawing.Line line && runsDown(line, last))
            .count());
  }

  /** Whether a thin line beyond some x runs from above to below with a kink. */
  private static boolean runsDown(Drawing.Line line, double beyond) {
    return line.role() == Drawing.Role.DIMENSION
        && line.points().size() > 2
        && line.points().stream().allMatch(at -> at.x() > beyond);
  }

  /** Whether the middle of a stave's longest ring lies above the ring's ends. */
  private static boolean curvesDown(EndView end, int stave) {
    Bounds at = new Bounds(stave * end.wide(), 0, (stave + 1) * end.wide(), end.thick());
    List<Drawing.At> ring =
        all(List.of(end.in(end.size())))
            .flatMap(each -> each instanceof Drawing.Line line ? Stream.of(line) : Stream.empty())
            .filter(line -> line.role() == Drawing.Role.DIMENSION)
            .map(Drawing.Line::points)
            .filter(points -> points.stream().allMatch(p -> isBetween(p.x(), at)))
            .max(java.util.Comparator.comparingInt(List::size))
            .orElseThrow();
    return ring.get(ring.size() / 2).y() < ring.getFirst().y();
  }

  private static boolean isBetween(double x, Bounds at) {
    return x >= at.left() - 1e-6 && x <= at.right() + 1e-6;
  }

  /** One board of each size, none longer on the paper than a third of its width. */
  @TestFactory
  List<DynamicTest> singleBoardsAreShownOnceForEachSize() {
    return AllProjects.each(
        sample ->
            sample.set().build().steps().stream()
                .filter(each -> each.verb() == Verb.SIZE)
                .filter(each -> !BoardPicture.isShown(sample.set().piece(), each))
                .filter(each -> BoardPicture.of(sample.set().piece(), each).isPresent())
                .forEach(each -> assertSizes(sample.set(), each)));
  }

  private static void assertSizes(PlanSet set, Step step) {
    BoardPicture picture = BoardPicture.of(set.piece(), step).orElseThrow();
    Drawing drawn = picture.drawn(new Size(190, picture.heightMm(190)));
    long sizes =
        step.targets().stream()
            .map(set.piece()::part)
            .map(part -> List.of(part.finishedLength(), part.finishedWidth()))
            .distinct()
            .count();
    assertEquals(sizes, only(Balloon.class, drawn).size(), "step " + step.number());
    only(Dimension.class, drawn)
        .forEach(each -> assertTrue(each.to().x() - each.from().x() <= 190 / 3.0));
  }

  @TestFactory
  List<DynamicTest> everyBoardBearsItsMark() {
    return AllProjects.each(
        sample ->
            sample.set().build().steps().stream()
                .filter(each -> BoardPicture.of(sample.set().piece(), each).isPresent())
                .forEach(
                    each ->
                        assertTrue(
                            !only(Balloon.class, drawn(sample.set(), each)).isEmpty(),
                            each.number() + "")));
  }
}
