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
import storyrod.piece.Pieces;
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

  private static List<String> posts(Piece piece) {
    return new Catches(piece).posts(piece.description().hardware());
  }

  private static List<String> ends(Piece piece) {
    Catches catches = new Catches(piece);
    return piece.description().hardware().stream()
        .flatMap(entry -> catches.ends(entry).stream())
        .map(end -> end.door().name() + " " + end.face().word() + " at " + end.post().name())
        .toList();
  }

  /** A case with a partition in the middle, its doors and its hardware. */
  private static Piece cupboard(String doors, String hardware) {
    return Pieces.of(
        """
          hinge: {kind: concealed-hinge, title: Hinge}
          catch: {kind: catch, title: Catch}
        parts:
          left: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: z}
          right: {stock: ply18, x: 782 to 800, y: 0 to 300, z: 0 to 600, grain: z}
          bottom: {stock: ply18, x: 18 to 782, y: 0 to 300, z: 0 to 18, grain: x}
          middle: {stock: ply18, x: 391 to 409, y: 0 to 300, z: 18 to 600, grain: z}
        %s
        joints:
          - butt: {end: bottom.left, to: left, glue: yes}
          - butt: {end: bottom.right, to: right, glue: yes}
          - butt: {end: middle.bottom, to: bottom, glue: yes}
        hardware:
        %s
        """
            .formatted(doors.indent(2).stripTrailing(), hardware.indent(2).stripTrailing()));
  }

  private static final String INSET =
      """
      door: {stock: ply18, x: 20 to 389, y: 0 to 18, z: 20 to 598, grain: z}
      door2: {stock: ply18, x: 411 to 780, y: 0 to 18, z: 20 to 598, grain: z}
      """;

  private static final String OVERLAY =
      """
      door: {stock: ply18, x: 0 to 399, y: -18 to 0, z: 20 to 598, grain: z}
      door2: {stock: ply18, x: 401 to 800, y: -18 to 0, z: 20 to 598, grain: z}
      """;

  private static final String HINGES =
      """
      - {item: hinge, count: 2, parts: [door, left]}
      - {item: hinge, count: 2, parts: [door2, right]}
      """;

  /** Neither both on the first door nor one that is left over. */
  @Test
  void twoDoorsShareTheCatchesOfOneEntry() {
    String entry = HINGES + "- {item: catch, parts: [door, door2], count: %d}";
    List<String> both = List.of("door top at middle", "door2 top at middle");
    assertEquals(both, ends(cupboard(INSET, entry.formatted(2))));
    List<String> three = List.of("door top at middle", "door bottom at middle", both.get(1));
    assertEquals(three, ends(cupboard(INSET, entry.formatted(3))));
  }

  /** A door that is no sub-assembly has posts like any other. */
  @Test
  void aDoorOfOnePartHasItsPostBesideIt() {
    Piece piece = cupboard(INSET, HINGES + "- {item: catch, parts: [door]}");
    assertEquals(List.of("middle"), posts(piece));
  }

  /** It hangs on the partition, so it is caught at the side. */
  @Test
  void theHingesTellTheFreeEdge() {
    String hinges = HINGES.replace("left]", "middle]");
    assertEquals(
        List.of("door top at left"),
        ends(cupboard(INSET, hinges + "- {item: catch, parts: [door]}")));
  }

  /** Nothing stands at the edge of a door that laps over the case but what its entry names. */
  @Test
  void anOverlayDoorIsCaughtOnThePartThatItsEntryNames() {
    Piece piece = cupboard(OVERLAY, HINGES + "- {item: catch, parts: [door, middle]}");
    assertEquals(List.of("door top at middle"), ends(piece));
    List<PlacedItem> placed =
        PlacedHardware.of(piece).stream().filter(each -> each.item().equals("catch")).toList();
    assertEquals(List.of("middle", "door"), placed.stream().map(PlacedItem::host).toList());
    for (PlacedItem each : placed) {
      double inWood =
          piece.parts().stream()
              .mapToDouble(part -> part.placed().sharedVolumeMm3(solid(each)))
              .sum();
      assertEquals(0, inWood, 1e-3, each.host());
    }
    double apart = solid(placed.get(0)).bounds().orElseThrow().x().to().toMm();
    assertEquals(391, apart, 1e-6);
  }

  /** What is named is what carries it, though it is no upright part; where on it is not known. */
  @Test
  void aNamedPartOverTheDoorCarriesTheCatch() {
    Piece piece = cupboard(INSET, HINGES + "- {item: catch, parts: [door, bottom]}");
    assertEquals(List.of("bottom"), posts(piece));
    assertEquals(List.of(), ends(piece));
  }
}
