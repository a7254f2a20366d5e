package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Planner;
import storyrod.description.Diagnostics;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

final class SpaceViewsTest {
  private static final Size PAGE = new Size(180, 215);
  private static final Size STRIP = new Size(180, 95);
  private static Piece piece;
  private static BuildPlan plan;
  private static Drawing exploded;
  private static List<Drawing> all;

  @BeforeAll
  static void draw() {
    Bench.Made made = Bench.made();
    piece = made.piece();
    plan = made.plan();
    exploded = ExplodedView.draw(piece, plan, PAGE);
    all = new ArrayList<>(List.of(exploded, AssembledView.draw(piece, Hardware.of(piece), STRIP)));
    plan.steps().forEach(step -> StepPicture.draw(piece, step, STRIP).ifPresent(all::add));
  }

  @Test
  void everyMarkHasABalloonAndEveryPartAGroup() {
    Set<String> marks = balloons(exploded).stream().map(Balloon::mark).collect(Collectors.toSet());
    assertEquals(piece.marks().stream().map(Mark::mark).collect(Collectors.toSet()), marks);
    assertEquals(29, of(exploded, Group.class).stream().map(Group::id).distinct().count());
    assertTrue(
        of(exploded, Group.class).stream()
            .anyMatch(g -> g.id().equals("part-drawer-face") && g.title().equals("Q Face")));
  }

  @Test
  void nothingLeavesThePage() {
    for (Drawing drawing : all) {
      for (At at : points(drawing)) {
        assertTrue(at.x() > 0 && at.x() < drawing.widthMm(), drawing.name() + " " + at);
        assertTrue(at.y() > 0 && at.y() < drawing.heightMm(), drawing.name() + " " + at);
      }
      for (Balloon balloon : balloons(drawing)) {
        At centre = balloon.centre();
        double edge = Balloons.RADIUS_MM;
        assertTrue(centre.x() >= edge && centre.x() <= drawing.widthMm() - edge, drawing.name());
        assertTrue(centre.y() >= edge && centre.y() <= drawing.heightMm() - edge, drawing.name());
      }
    }
  }

  @Test
  void leadersNeitherCrossNorRunThroughOtherBalloons() {
    for (Drawing drawing : all) {
      List<Balloon> balloons = balloons(drawing);
      for (Balloon one : balloons) {
        for (Balloon two : balloons) {
          if (one != two) {
            assertFalse(
                Balloons.cross(one.centre(), one.tip(), two.centre(), two.tip()),
                drawing.name() + ": " + one + " crosses " + two);
            assertTrue(
                away(two.centre(), one.centre(), one.tip()) >= Balloons.RADIUS_MM,
                drawing.name() + ": " + one + " runs through " + two);
          }
        }
      }
    }
  }

  private static double away(At at, At from, At to) {
    return org.locationtech.jts.algorithm.Distance.pointToSegment(
        coordinate(at), coordinate(from), coordinate(to));
  }

  private static Coordinate coordinate(At at) {
    return new Coordinate(at.x(), at.y());
  }

  @Test
  void leadersEndInWhatIsSeenOfTheirPart() {
    for (Drawing drawing : all) {
      for (Balloon balloon : balloons(drawing)) {
        boolean inside =
            of(drawing, Group.class).stream()
                .filter(group -> group.title().startsWith(balloon.mark() + " "))
                .flatMap(group -> group.elements().stream())
                .anyMatch(e -> e instanceof Area area && contains(area, balloon.tip()));
        assertTrue(inside, drawing.name() + " " + balloon);
      }
    }
  }

  private static boolean contains(Area area, At at) {
    List<At> ring = new ArrayList<>(area.rings().getFirst());
    ring.add(ring.getFirst());
    Coordinate[] corners = ring.stream().map(SpaceViewsTest::coordinate).toArray(Coordinate[]::new);
    return SimplePointInAreaLocator.locate(
            coordinate(at), new GeometryFactory().createPolygon(corners))
        == Location.INTERIOR;
  }

  @Test
  void partsMoveOutAgainstTheWayTheyWentIn() {
    Explosion explosion = Explosion.of(piece, plan, View.USUAL);
    assertEquals(Vector3D.ZERO, explosion.offsets().get("bottom"));
    assertTrue(explosion.offsets().get("left-side").getX() < 0);
    assertTrue(explosion.offsets().get("right-side").getX() > 0);
    assertTrue(explosion.offsets().get("top").getZ() > 0);
    assertTrue(explosion.offsets().get("left-front-foot").getZ() < 0);
    assertTrue(explosion.offsets().get("frame.top-rail").getY() < 0);
  }

  @Test
  void laterPartsStandBeyondEarlierOnesOnTheSameWay() {
    Explosion explosion = Explosion.of(piece, plan, View.USUAL);
    double frame = explosion.offsets().get("frame.top-rail").getY();
    for (String part : List.of("drawer.box-back", "left-shelf.panel", "right-shelf.panel")) {
      assertTrue(explosion.offsets().get(part).getY() < frame, part);
    }
    double stretcher = explosion.offsets().get("front-stretcher").getZ();
    assertTrue(explosion.offsets().get("top").getZ() > stretcher);
  }

  /**
   * A box that stands loose on a stand: what is set up first stays, and a lid goes with its box.
   */
  @Test
  void whatIsSetUpFirstStaysAndALidStartsFromItsBox() {
    Piece stood = WindowBench.piece(Path.of("projects/sewing-box/project.yaml"));
    BuildPlan order = Planner.plan(stood, new Diagnostics()).orElseThrow();
    Map<String, Vector3D> offsets = Explosion.of(stood, order, View.USUAL).offsets();
    assertEquals(0, offsets.get("stand.left-end.rail").getZ(), 1e-9);
    assertTrue(offsets.get("box.front").getZ() > 0, offsets::toString);
    assertEquals(offsets.get("box.front").getZ(), offsets.get("lid").getZ(), 1e-9);
    assertTrue(offsets.get("lid").getX() > 0, offsets::toString);
  }

  @Test
  void subAssemblyOpensAroundItsFirstPart() {
    Explosion explosion = Explosion.of(piece, plan, View.USUAL);
    Vector3D first = explosion.offsets().get("frame.top-rail");
    Vector3D stile = explosion.offsets().get("frame.left-stile").subtract(first);
    assertTrue(stile.getX() < 0);
    assertEquals(0, stile.getY(), 1e-9);
    assertEquals(0, stile.getZ(), 1e-9);
  }

  @Test
  void partInNoStepLeavesByItsJoint() {
    List<Step> without = new ArrayList<>(plan.steps());
    without.removeIf(step -> step.newParts().contains("top"));
    Explosion explosion = Explosion.of(piece, new BuildPlan(without, List.of()), View.USUAL);
    assertTrue(explosion.offsets().get("top").getZ() > 0);
  }

  @Test
  void coverHasTonesAndNoMarks() {
    Drawing cover = AssembledView.draw(piece, Hardware.of(piece), STRIP);
    assertTrue(balloons(cover).isEmpty());
    Set<Tone> tones = new TreeSet<>();
    of(cover, Area.class).forEach(area -> tones.add(area.tone()));
    assertEquals(new TreeSet<>(List.of(Tone.TOP, Tone.FRONT, Tone.SIDE)), tones);
  }

  @Test
  void stepShowsNewPartsStrongAndWhatStandsThin() {
    Step step = step("left-side");
    Drawing drawing = StepPicture.draw(piece, step, STRIP).orElseThrow();
    for (Group group : of(drawing, Group.class)) {
      boolean isNew = group.id().equals("part-left-side");
      List<Line> lines = lines(group);
      assertEquals(isNew, lines.stream().anyMatch(line -> line.role() == Role.VISIBLE), group.id());
      assertTrue(areas(group).stream().allMatch(a -> a.tone() == Tone.WHITE != isNew), group.id());
    }
    Arrow arrow = of(drawing, Arrow.class).getFirst();
    assertTrue(
        arrow.to().x() > arrow.from().x() && arrow.to().y() > arrow.from().y(), "to the right");
  }

  @Test
  void stepNamesNewPartsAndWhatTheyMeet() {
    Drawing drawing = StepPicture.draw(piece, step("left-side"), STRIP).orElseThrow();
    Set<String> marks = new TreeSet<>();
    balloons(drawing).forEach(balloon -> marks.add(balloon.mark()));
    assertEquals(Set.of("A", "B"), marks);
  }

  @Test
  void everyStepShowsItsArrow() {
    for (Step step : plan.steps()) {
      Drawing drawing = StepPicture.draw(piece, step, STRIP).orElseThrow();
      List<Arrow> arrows = of(drawing, Arrow.class);
      assertFalse(arrows.isEmpty(), drawing.name());
      assertTrue(arrows.getFirst().from().distance(arrows.getFirst().to()) > 3, drawing.name());
    }
  }

  @Test
  void sameInputGivesTheSameDrawing() {
    Bench.Made again = Bench.made();
    assertEquals(exploded, ExplodedView.draw(again.piece(), again.plan(), PAGE));
  }

  private static Step step(String target) {
    return plan.steps().stream()
        .filter(step -> step.operations().getFirst().target().equals(target))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Element> flat(Drawing drawing) {
    return drawing.elements().stream()
        .flatMap(
            e ->
                e instanceof Group g
                    ? Stream.concat(Stream.of(e), g.elements().stream())
                    : Stream.of(e));
  }

  private static <T extends Element> List<T> of(Drawing drawing, Class<T> type) {
    return flat(drawing).filter(type::isInstance).map(type::cast).toList();
  }

  private static List<Balloon> balloons(Drawing drawing) {
    return of(drawing, Balloon.class);
  }

  private static List<Line> lines(Group group) {
    return group.elements().stream().filter(Line.class::isInstance).map(Line.class::cast).toList();
  }

  private static List<Area> areas(Group group) {
    return group.elements().stream().filter(Area.class::isInstance).map(Area.class::cast).toList();
  }

  private static List<At> points(Drawing drawing) {
    List<At> points = new ArrayList<>();
    of(drawing, Line.class).forEach(line -> points.addAll(line.points()));
    of(drawing, Area.class).forEach(area -> area.rings().forEach(points::addAll));
    of(drawing, Arrow.class).forEach(arrow -> points.addAll(List.of(arrow.from(), arrow.to())));
    return points;
  }
}
