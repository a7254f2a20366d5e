package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;

/** The sections through joints. */
class JointSectionTest {
  private static final double ON_LINE_MM = 0.05;
  private static final double ON_BREAK_MM = 0.8;
  private static final double SHORT_MM = 0.3;

  /** A cut face ends at an edge, which is drawn wide, or at a break. */
  @TestFactory
  List<DynamicTest> everySideOfACutFaceIsDrawn() {
    return AllProjects.each(
        sample -> {
          List<String> faults = new ArrayList<>();
          for (JointSheet sheet : sample.set().drawings().joints()) {
            JointSection section =
                JointSection.of(sheet.kind().shown(), List.of(), new Scale(5, 1));
            undrawn(section.elements())
                .forEach(at -> faults.add(sheet.kind().lines() + " at " + at));
          }
          assertEquals(List.of(), faults);
        });
  }

  /** Middles of sides of cut faces that neither a wide line nor a break runs along. */
  private static List<At> undrawn(List<Element> elements) {
    List<Paper.Stretch> breaks =
        elements.stream().filter(Line.class::isInstance).flatMap(JointSectionTest::lines).toList();
    List<At> undrawn = new ArrayList<>();
    for (Element element : elements) {
      if (element instanceof Group group) {
        List<Paper.Stretch> edges =
            group.elements().stream()
                .filter(each -> each instanceof Line line && line.role() == Role.VISIBLE)
                .flatMap(JointSectionTest::lines)
                .toList();
        group.elements().stream()
            .flatMap(each -> each instanceof Area area ? area.rings().stream() : Stream.empty())
            .flatMap(ring -> sides(ring).stream())
            .filter(side -> side.length() > SHORT_MM)
            .map(side -> side.at(0.5))
            .filter(at -> !isOn(edges, at, ON_LINE_MM) && !isOn(breaks, at, ON_BREAK_MM))
            .forEach(undrawn::add);
      }
    }
    return undrawn;
  }

  private static Stream<Paper.Stretch> lines(Element element) {
    return Paper.stretches(element).stream();
  }

  private static List<Seen.Stroke> sides(List<At> ring) {
    List<Seen.Stroke> sides = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      sides.add(new Seen.Stroke(ring.get(i), ring.get((i + 1) % ring.size())));
    }
    return sides;
  }

  private static boolean isOn(List<Paper.Stretch> lines, At at, double within) {
    return lines.stream().anyMatch(line -> away(line, at) < within);
  }

  private static double away(Paper.Stretch line, At at) {
    return Line2D.ptSegDist(
        line.from().x(), line.from().y(), line.to().x(), line.to().y(), at.x(), at.y());
  }
}
