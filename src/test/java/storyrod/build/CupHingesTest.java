package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostics;
import storyrod.description.ItemKind;
import storyrod.description.SourceText;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Concealed hinges with their plates and screws, on a door with two of four screws each. */
class CupHingesTest {
  private static Piece piece;

  @BeforeAll
  static void read() throws IOException {
    Path file = Path.of("src/test/resources/projects/night-table/project.yaml");
    SourceText source = new SourceText(file.toString(), Files.readString(file));
    piece = Pipeline.planSet(source, new Diagnostics()).orElseThrow().piece();
  }

  private static List<PlacedItem> of(ItemKind kind, String host) {
    return PlacedHardware.of(piece).stream()
        .filter(each -> each.origin().entry().filter(e -> isHinge(e.item().value())).isPresent())
        .filter(each -> piece.kind(each.item()) == kind && each.host().equals(host))
        .toList();
  }

  private static boolean isHinge(String item) {
    return piece.kind(item) == ItemKind.CONCEALED_HINGE;
  }

  @Test
  void eachHingeHasACupInTheDoorAndAPlateBesideIt() {
    List<PlacedItem> cups = of(ItemKind.CONCEALED_HINGE, "door");
    List<PlacedItem> plates = of(ItemKind.CONCEALED_HINGE, "left-side");
    assertEquals(2, cups.size());
    assertEquals(2, plates.size());
    for (int i = 0; i < 2; i++) {
      assertEquals(cups.get(i).at().getZ(), plates.get(i).at().getZ(), 1e-6);
      assertEquals(0, cups.get(i).out().dot(plates.get(i).out()), 1e-6);
    }
  }

  /** Two in each cup, 45 apart and 9.5 behind its middle; two in each plate, 32 apart. */
  @Test
  void theScrewsLieBesideCupsAndInPlates() {
    List<PlacedItem> inDoor = of(ItemKind.WOOD_SCREW, "door");
    List<PlacedItem> inSide = of(ItemKind.WOOD_SCREW, "left-side");
    assertEquals(4, inDoor.size());
    assertEquals(4, inSide.size());
    assertEquals(45, inDoor.get(1).at().distance(inDoor.get(0).at()), 1e-6);
    assertEquals(32, inSide.get(1).at().distance(inSide.get(0).at()), 1e-6);
    PlacedItem cup = of(ItemKind.CONCEALED_HINGE, "door").getFirst();
    assertEquals(9.5, inDoor.get(0).at().getX() - cup.at().getX(), 1e-6);
  }

  /** Every screw goes into wood that no cup took away. */
  @Test
  void screwsHoldInTheirPart() {
    for (String host : List.of("door", "left-side")) {
      for (PlacedItem each : of(ItemKind.WOOD_SCREW, host)) {
        Part part = piece.part(host);
        Vector3D within = each.at().subtract(each.out().multiply(5));
        assertTrue(part.placed().hollowed().holds(within), each::toString);
      }
    }
  }
}
