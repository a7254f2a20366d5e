package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.description.ItemKind;
import storyrod.drawing.AllProjects;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

/** Catches on the frame and strikes on the doors of the sideboard. */
class CatchesTest {
  private static final PlanSet SET = AllProjects.named("sideboard");
  private static final Piece PIECE = SET.piece();

  private static List<PlacedItem> bodies(int sort) {
    return PlacedHardware.of(PIECE).stream()
        .filter(each -> PIECE.kind(each.item()) == ItemKind.CATCH)
        .filter(each -> each.origin().makeup().sort() == sort)
        .toList();
  }

  private static List<String> hosts(int sort) {
    return bodies(sort).stream().map(PlacedItem::host).toList();
  }

  private static Solid solid(PlacedItem item) {
    return item.solid().moved(item.at());
  }

  @Test
  void theCatchIsOnTheFrameAndItsStrikeOnTheDoor() {
    assertEquals(List.of("frame.middle-stile-1", "frame.middle-stile-2"), hosts(0));
    assertEquals(List.of("left-door.right-stile", "right-door.right-stile"), hosts(1));
  }

  /** What is told to the maker is where it is drawn. */
  @Test
  void bothSitAsHighAsTheStepSays() {
    for (int i = 0; i < 2; i++) {
      PlacedItem strike = bodies(1).get(i);
      Length top = PIECE.part(strike.host()).bounds().z().to();
      assertEquals(Length.inches(3).toMm(), top.toMm() - strike.at().getZ(), 1e-6);
      assertEquals(strike.at().getZ(), bodies(0).get(i).at().getZ(), 1e-6);
    }
  }

  /** They meet behind the door, and neither is in the other. */
  @Test
  void theStrikeMeetsTheCatch() {
    for (int i = 0; i < 2; i++) {
      Solid caught = solid(bodies(0).get(i));
      Solid strike = solid(bodies(1).get(i));
      Box plate = strike.bounds().orElseThrow();
      assertEquals(0, caught.sharedVolumeMm3(strike), 1e-3);
      double deep = plate.y().length().toMm() * 2;
      Vector3D back = Face.BACK.normal().multiply(deep);
      assertTrue(caught.sharedVolumeMm3(strike.moved(back)) > strike.volumeMm3() / 2);
    }
  }

  @Test
  void nothingStandsWhereTheyAre() {
    for (int sort = 0; sort < 2; sort++) {
      for (PlacedItem each : bodies(sort)) {
        PIECE
            .parts()
            .forEach(
                part ->
                    assertEquals(0, part.placed().sharedVolumeMm3(solid(each)), 1e-3, part::name));
      }
    }
  }
}
