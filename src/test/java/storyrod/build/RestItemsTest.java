package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Piece;

/** Felt in the sewing box: what lies on its bottom, and the dots on which box and tray rest. */
class RestItemsTest {
  private final Piece piece = AllProjects.named("sewing-box").piece();

  private List<PlacedItem> placed(String item) {
    return PlacedHardware.of(piece).stream().filter(each -> each.item().equals(item)).toList();
  }

  /** 17 x 9 3/4 in between the walls, 1/32 in free at each. */
  @Test
  void feltCoversTheBottomBetweenTheWalls() {
    PlacedItem felt = placed("felt").getFirst();
    Box box = felt.solid().moved(felt.at()).bounds().orElseThrow();
    Box bottom = piece.part("box.bottom").bounds();
    assertEquals(Length.inch(271, 16), box.x().length());
    assertEquals(Length.inch(155, 16), box.y().length());
    assertEquals(bottom.at(Face.TOP), box.z().from());
    assertEquals(
        piece.part("box.left-end").bounds().at(Face.RIGHT).plus(Length.inch(1, 32)),
        box.x().from());
  }

  /** Two under each end of the tray, on the dividers; two on each side of the seat. */
  @Test
  void dotsLieWhereBoxAndTrayRest() {
    List<PlacedItem> dots = placed("dot");
    assertEquals(12, dots.size());
    for (PlacedItem dot : dots) {
      boolean ofTray = dot.host().startsWith("tray.");
      Face out = ofTray ? Face.BOTTOM : Face.TOP;
      assertEquals(out.normal(), dot.out());
      String on = ofTray ? "crate.long-divider" : "box.";
      Length at =
          piece.part(ofTray ? "crate.long-divider-1" : "box.front").bounds().at(out.opposite());
      assertEquals(at.toMm(), dot.at().getZ(), 0.01);
      assertTrue(
          piece.parts().stream()
              .filter(part -> part.name().startsWith(on))
              .map(part -> part.bounds())
              .anyMatch(box -> holds(box, dot)),
          dot::toString);
    }
    assertEquals(
        12,
        dots.stream()
            .map(dot -> dot.at().toString())
            .collect(Collectors.toCollection(TreeSet::new))
            .size());
  }

  private static boolean holds(Box box, PlacedItem dot) {
    return box.x().contains(Length.nearest(dot.at().getX()))
        && box.y().contains(Length.nearest(dot.at().getY()));
  }
}
