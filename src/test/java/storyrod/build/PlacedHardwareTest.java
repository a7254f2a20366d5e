package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.drawing.AllProjects;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Drilling;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/** Where hardware is placed and how large it is, against the bores that are drilled for it. */
class PlacedHardwareTest {
  private static final double NEAR_MM = 0.01;

  /** The bores of a part as its solid has them, in the piece. */
  private static Stream<Cylinder> bores(Part part) {
    return part.placed().bores().stream();
  }

  private static Stream<PlacedItem> placed(Piece piece, ItemKind... kinds) {
    return PlacedHardware.of(piece).stream()
        .filter(item -> List.of(kinds).contains(piece.kind(item.item())));
  }

  /** A screw lies on the axis of a bore of its host, its head at the mouth or under the plug. */
  @TestFactory
  List<DynamicTest> aScrewsAxisIsThatOfItsBore() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          placed(piece, ItemKind.WOOD_SCREW, ItemKind.POCKET_SCREW, ItemKind.DOWEL)
              .filter(item -> item.origin().joint().isPresent() && !isInSlot(piece, item))
              .forEach(
                  item ->
                      assertTrue(
                          bores(piece.part(item.host())).anyMatch(bore -> isOnAxis(item, bore)),
                          item::toString));
        });
  }

  /**
   * Screws in slots and of top fasteners have no bore: the first may move, nothing tells of others.
   */
  private static boolean isInSlot(Piece piece, PlacedItem item) {
    Joint joint = item.origin().joint().orElseThrow();
    return !piece.part(item.host()).cuts(storyrod.piece.Slots.class).isEmpty()
        || joint.fasteners().stream().anyMatch(each -> piece.kind(each.item()).isTopFastener());
  }

  private static boolean isOnAxis(PlacedItem item, Cylinder bore) {
    Vector3D off = item.at().subtract(bore.mouth());
    return bore.direction().cross(item.out()).norm() < 1e-6
        && bore.direction().dot(item.out()) < 0
        && off.cross(bore.direction()).norm() < NEAR_MM;
  }

  /** As long and as thick as the description says: the facets touch its shank. */
  @TestFactory
  List<DynamicTest> screwsAndDowelsAreOfTrueSize() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          placed(piece, ItemKind.WOOD_SCREW, ItemKind.POCKET_SCREW, ItemKind.DOWEL)
              .forEach(item -> assertTrueSize(piece, item));
        });
  }

  private static void assertTrueSize(Piece piece, PlacedItem item) {
    ItemEntry entry = piece.item(item.item()).orElseThrow();
    double under = piece.kind(item.item()) == ItemKind.DOWEL ? item.highMm() : 0;
    assertEquals(entry.length().orElseThrow().toMm(), item.deepMm() + under, NEAR_MM);
    double thinnest =
        item.solid().faces().stream()
            .filter(face -> Math.abs(face.normal().dot(item.out())) < 1e-6)
            .mapToDouble(face -> face.normal().dot(face.outer().getFirst()))
            .min()
            .orElse(0);
    assertEquals(entry.diameter().orElseThrow().toMm() / 2, thinnest, NEAR_MM, item.item());
  }

  /** The tip of a pocket screw ends where the way that the check reckons with ends. */
  @TestFactory
  List<DynamicTest> aPocketScrewEndsWhereItsWayEnds() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          placed(piece, ItemKind.POCKET_SCREW)
              .forEach(
                  item -> {
                    Vector3D tip = item.at().subtract(item.out().multiply(item.deepMm()));
                    Length length = piece.item(item.item()).orElseThrow().length().orElseThrow();
                    Part host = piece.part(item.host());
                    assertTrue(
                        host.cuts(PocketHoles.class).stream()
                            .flatMap(cut -> Drilling.beyond(cut, length).stream())
                            .anyMatch(way -> way.end().distance(tip) < NEAR_MM),
                        item::toString);
                  });
        });
  }

  /** A screw of a slide or hinge lies in wood as far as it is past the metal, and ends in it. */
  @TestFactory
  List<DynamicTest> theScrewsOfHardwareEndInTheirPart() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          placed(piece, ItemKind.WOOD_SCREW)
              .filter(item -> item.origin().entry().isPresent())
              .forEach(item -> assertEndsIn(piece.part(item.host()).placed(), item));
        });
  }

  private static void assertEndsIn(Solid wood, PlacedItem item) {
    double held = wood.sharedVolumeMm3(item.solid(), item.at());
    assertTrue(held > 0.4 * item.solid().volumeMm3(), item::toString);
    Vector3D through = item.at().subtract(item.out().multiply(0.5));
    assertTrue(wood.sharedVolumeMm3(item.solid(), through) > held, item::toString);
  }

  /** The members of a slide lie between drawer and case, fill that gap and meet no wood. */
  @TestFactory
  List<DynamicTest> slidesLieInTheirClearance() {
    return AllProjects.each(
        project -> {
          Piece piece = project.set().piece();
          Map<String, List<PlacedItem>> pairs =
              placed(piece, ItemKind.SLIDE)
                  .collect(Collectors.groupingBy(item -> item.origin().entry().toString()));
          pairs.values().forEach(members -> assertFilled(piece, members));
        });
  }

  private static void assertFilled(Piece piece, List<PlacedItem> members) {
    ItemEntry slide = piece.item(members.getFirst().item()).orElseThrow();
    assertEquals(4, members.size());
    assertEquals(
        2 * slide.sideClearance().orElseThrow().toMm(),
        members.stream().mapToDouble(PlacedItem::highMm).sum(),
        NEAR_MM);
    for (PlacedItem item : members) {
      piece
          .parts()
          .forEach(
              part ->
                  assertEquals(
                      0,
                      part.placed().sharedVolumeMm3(item.solid(), item.at()),
                      1,
                      () -> item.item() + " in " + part.name()));
    }
  }
}
