package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.description.ItemKind;
import storyrod.drawing.AllProjects;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What ties a piece to the wall, with its screws. */
class StrapTest {
  private static List<PlacedItem> straps(Piece piece) {
    return PlacedHardware.of(piece).stream()
        .filter(each -> piece.kind(each.item()) == ItemKind.ANTI_TIP_STRAP)
        .toList();
  }

  /** Its two screws hold in the part that it is meant for; a thin back before it holds nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"sideboard", "bookcase"})
  void screwsReachThroughTheBackIntoTheirPart(String project) {
    Piece piece = AllProjects.named(project).piece();
    PlacedItem strap = straps(piece).getFirst();
    Part host = piece.part(strap.host());
    Solid placed = strap.solid().moved(strap.at());
    Solid within = placed.trimmed(middle(host), Face.BACK.normal());
    assertEquals(Face.BACK.normal(), strap.out());
    assertTrue(host.placed().sharedVolumeMm3(placed) > 100);
    assertEquals(0, within.volumeMm3(), 1e-6, "no longer than half the part");
    assertTrue(strap.highMm() > 3, "heads stand on the plate");
  }

  /** A strap near the floor holds nothing: a piece tips about its feet. */
  @Test
  void eachSideHasOneNearItsTop() {
    Piece piece = AllProjects.named("bookcase").piece();
    assertEquals(
        List.of("case.left-side", "case.right-side"),
        straps(piece).stream().map(PlacedItem::host).toList());
    for (PlacedItem strap : straps(piece)) {
      Box host = piece.part(strap.host()).bounds();
      double below = host.z().to().toMm() - strap.at().getZ();
      assertTrue(below > 30 && below < host.z().length().toMm() / 10, "below the top: " + below);
    }
  }

  private static Vector3D middle(Part part) {
    return part.bounds().middle().toMm();
  }
}
