package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.description.ItemKind;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.PocketHoles;

/** What holds a joint stands in its section, whole. */
class JointFastenersTest {
  private static final double SCALE = 0.5;
  private static final Length MM = Length.mm(1);

  @TestFactory
  List<DynamicTest> everySectionShowsWhatHoldsTheJoint() {
    return AllProjects.each(
        sample -> sample.set().drawings().joints().forEach(j -> check(sample, j)));
  }

  private static void check(Sample sample, JointSheet sheet) {
    List<Hardware> hardware = Hardware.of(sample.set().piece());
    if (!JointFasteners.of(sheet.kind().shown(), hardware).lying().isEmpty()) {
      assertTrue(
          sheet.drawing().elements().stream()
              .anyMatch(each -> each instanceof Group group && group.id().startsWith("hardware-")),
          () -> sheet.drawing().name() + " of " + sheet.kind().shown().joint());
    }
  }

  /** A slanted hole cut off on both sides is an empty band; its screw tells what it is. */
  @TestFactory
  List<DynamicTest> pocketHolesAreShownWithAllOfTheirScrews() {
    return AllProjects.each(
        sample ->
            sample.set().drawings().joints().stream()
                .map(sheet -> sheet.kind().shown())
                .filter(place -> !place.pockets().isEmpty())
                .forEach(place -> checkPockets(sample, place)));
  }

  private static void checkPockets(Sample sample, JointPlace place) {
    Axis along = place.normal();
    Range shown = place.window().on(along);
    List<Hardware> screws = JointFasteners.of(place, Hardware.of(sample.set().piece())).lying();
    assertFalse(screws.isEmpty(), place.joint().toString());
    for (Hardware screw : screws) {
      Range own = screw.placed().solid().bounds().orElseThrow().on(along);
      Length at = Length.nearest(screw.placed().at().dot(Point.ORIGIN.with(along, MM).toMm()));
      Range whole = new Range(own.from().plus(at), own.to().plus(at));
      assertTrue(shown.contains(whole), () -> shown + " of " + whole + " of " + place.joint());
    }
  }

  /** Apart, the face is seen from which they are drilled. */
  @TestFactory
  List<DynamicTest> theMouthsOfPocketHolesAreSeen() {
    return AllProjects.each(
        sample ->
            sample.set().drawings().joints().stream()
                .map(sheet -> sheet.kind().shown())
                .filter(place -> !place.pockets().isEmpty())
                .forEach(place -> assertTrue(showsMouths(place), place.joint().toString())));
  }

  private static boolean showsMouths(JointPlace place) {
    View view = JointApart.of(place).view();
    return Cut.only(PocketHoles.class, place.squareCuts().toList()).stream()
        .allMatch(pockets -> pockets.from().normal().dot(view.toViewer()) > 0);
  }

  /** As long and as thick as the dowel of the description, 3/8 by 1 1/2 in, to the scale. */
  @Test
  void aDowelIsDrawnInItsSize() {
    Sample box =
        AllProjects.all().stream()
            .filter(s -> s.name().equals("sewing-box"))
            .findFirst()
            .orElseThrow();
    JointPlace place =
        JointKind.of(box.set().piece()).stream()
            .map(JointKind::shown)
            .filter(each -> isDowelled(box, each))
            .findFirst()
            .orElseThrow();
    JointFasteners all = JointFasteners.of(place, Hardware.of(box.set().piece()));
    Bounds drawn = bounds(all.at(place.sectionsAt().getFirst()));
    double longer = Math.max(drawn.width(), drawn.height());
    double shorter = Math.min(drawn.width(), drawn.height());
    assertEquals(1.5 * 25.4 * SCALE, longer, 0.01);
    assertEquals(0.375 * 25.4 * SCALE, shorter, 0.3);
  }

  private static boolean isDowelled(Sample sample, JointPlace place) {
    return place.joint().fasteners().stream()
        .anyMatch(each -> sample.set().piece().kind(each.item()) == ItemKind.DOWEL);
  }

  private static Bounds bounds(JointFasteners fasteners) {
    assertEquals(1, fasteners.lying().size());
    Bounds bounds = Bounds.NONE;
    Bounds window = new Bounds(-1e4, -1e4, 1e4, 1e4);
    for (Element each : fasteners.elements(SCALE, window)) {
      for (Element line : ((Group) each).elements()) {
        if (line instanceof Line outline) {
          for (At at : outline.points()) {
            bounds = bounds.with(at);
          }
        }
      }
    }
    return bounds;
  }
}
