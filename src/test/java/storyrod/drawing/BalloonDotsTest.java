package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;

/** Leaders end in a dot inside the outline (ISO 128-2), which covers nothing that is to be seen. */
class BalloonDotsTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A dot is as large as this, and a round mouth has more points than that. */
  private static final double RADIUS_MM = 0.5;

  private static final int ROUND = 8;

  private static <T extends Element> Stream<T> only(Class<T> kind, List<Element> elements) {
    return elements.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** The mouths of bores, whole, that are drawn of parts. */
  private static List<Geometry> holes(Drawing drawing) {
    return only(Group.class, drawing.elements())
        .flatMap(each -> only(Line.class, each.elements()))
        .filter(line -> line.role() == Role.THIN || line.role() == Role.CUT)
        .map(Line::points)
        .filter(points -> points.size() > ROUND)
        .filter(points -> points.getFirst().distance(points.getLast()) < 0.01)
        .map(BalloonDotsTest::hull)
        .toList();
  }

  private static Geometry hull(List<At> points) {
    return FACTORY
        .createMultiPointFromCoords(
            points.stream().map(at -> new Coordinate(at.x(), at.y())).toArray(Coordinate[]::new))
        .convexHull();
  }

  private static boolean covers(Balloon balloon, Geometry hole) {
    At tip = balloon.tip();
    return hole.distance(FACTORY.createPoint(new Coordinate(tip.x(), tip.y()))) < RADIUS_MM;
  }

  /** Whether a dot would have room on what is seen of a mark, clear of edges and holes. */
  private static boolean hasRoom(Drawing drawing, String mark, List<Geometry> holes) {
    return only(Group.class, drawing.elements())
        .filter(group -> group.mark().equals(mark))
        .flatMap(group -> only(Area.class, group.elements()))
        .map(area -> face(area, holes))
        .anyMatch(free -> !free.isEmpty());
  }

  private static Geometry face(Area area, List<Geometry> holes) {
    Geometry free = ring(area.rings().getFirst());
    for (List<At> opening : area.rings().subList(1, area.rings().size())) {
      free = free.difference(ring(opening));
    }
    free = free.buffer(-2 * RADIUS_MM);
    for (Geometry hole : holes) {
      free = free.difference(hole.buffer(2 * RADIUS_MM));
    }
    return free;
  }

  private static Geometry ring(List<At> points) {
    Stream<At> closed = Stream.concat(points.stream(), Stream.of(points.getFirst()));
    return FACTORY
        .createPolygon(closed.map(at -> new Coordinate(at.x(), at.y())).toArray(Coordinate[]::new))
        .buffer(0);
  }

  /** Where a free spot of its part is seen. */
  @Test
  void noDotCoversAHole() {
    Set<String> faults = new TreeSet<>();
    List<Geometry> all = new ArrayList<>();
    for (Sample sample : AllProjects.all()) {
      for (Drawing drawing : sample.set().drawings().steps().values()) {
        List<Geometry> holes = holes(drawing);
        all.addAll(holes);
        only(Balloon.class, drawing.elements())
            .filter(balloon -> holes.stream().anyMatch(hole -> covers(balloon, hole)))
            .filter(balloon -> hasRoom(drawing, balloon.mark(), holes))
            .forEach(it -> faults.add(sample.name() + " " + drawing.name() + " " + it.mark()));
      }
    }
    assertTrue(all.size() > 100, all.size() + " holes");
    assertEquals(Set.of(), faults);
  }
}
