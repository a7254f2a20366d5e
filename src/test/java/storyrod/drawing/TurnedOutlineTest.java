package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Face;
import storyrod.geometry.Ring;
import storyrod.geometry.Solid;

/** A turned body keeps both sides of its outline, where a facet is seen just from its edge too. */
class TurnedOutlineTest {
  private static final double RADIUS = 8;

  @ParameterizedTest
  @EnumSource(Face.class)
  void bothSidesOfAKnobAreDrawn(Face from) {
    Stream.of(Face.values())
        .filter(out -> out.axis() != from.axis())
        .forEach(out -> assertBothSides(from, out));
  }

  private static void assertBothSides(Face from, Face out) {
    Solid knob = Solid.turned(out.normal(), List.of(new Ring(0, RADIUS), new Ring(10, RADIUS)), 24);
    View view = View.at(from);
    At along = view.project(out.normal());
    At across = new At(-along.y(), along.x());
    DoubleSummaryStatistics sides =
        HiddenLines.of(new Scene(List.of(new Scene.Item("knob", knob, Vector3D.ZERO))), view)
            .seen()
            .getFirst()
            .lines()
            .visible()
            .stream()
            .filter(each -> Math.abs(dot(across, each.from()) - dot(across, each.to())) < 0.01)
            .mapToDouble(each -> dot(across, each.from()))
            .summaryStatistics();
    assertEquals(-RADIUS, sides.getMin(), 0.1, from + " " + out);
    assertEquals(RADIUS, sides.getMax(), 0.1, from + " " + out);
  }

  private static double dot(At one, At other) {
    return one.x() * other.x() + one.y() * other.y();
  }
}
