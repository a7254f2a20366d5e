package storyrod.build;

import static storyrod.geometry.Face.BACK;
import static storyrod.geometry.Face.BOTTOM;
import static storyrod.geometry.Face.FRONT;
import static storyrod.geometry.Face.LEFT;
import static storyrod.geometry.Face.RIGHT;
import static storyrod.geometry.Face.TOP;

import java.util.Optional;
import storyrod.description.ItemKind;

/** A reduced window bench, built by hand: case, face frame, shelves, drawer, back, feet, top. */
final class Benches {
  private Benches() {}

  static TestPiece bench() {
    return bench(new TestPiece());
  }

  static TestPiece bench(TestPiece piece) {
    items(piece.finish("oil-based varnish"));
    parts(piece);
    frame(piece);
    shelf(piece, "left-shelf", 20, 436);
    shelf(piece, "right-shelf", 897, 1313);
    drawer(piece);
    joints(piece);
    return piece
        .mount(
            "slide",
            1,
            Optional.of("slide-screw"),
            12,
            "drawer.left-side",
            "drawer.right-side",
            "left-partition",
            "right-partition")
        .mount("pull", 1, Optional.empty(), 0, "drawer.face", "drawer.box-front")
        .mount("shelf-pin", 8, Optional.empty(), 0, "left-shelf.panel", "right-shelf.panel")
        .mount(
            "glide",
            4,
            Optional.empty(),
            0,
            "left-front-foot",
            "right-front-foot",
            "left-back-foot",
            "right-back-foot");
  }

  private static void items(TestPiece piece) {
    piece
        .item("pocket-screw", "Pocket screw 1 1/4 in fine thread", ItemKind.POCKET_SCREW)
        .item("long-screw", "Wood screw #8 x 1 3/4 in", ItemKind.WOOD_SCREW)
        .item("short-screw", "Wood screw #8 x 1 in", ItemKind.WOOD_SCREW)
        .item("slide-screw", "Wood screw #6 x 1/2 in", ItemKind.WOOD_SCREW)
        .item("brad", "Brad 1 in", ItemKind.BRAD)
        .item("top-fastener", "Slotted top fastener", ItemKind.TOP_FASTENER)
        .item("slide", "Drawer slide pair 14 in", ItemKind.SLIDE)
        .item("pull", "Bar pull", ItemKind.PULL)
        .item("shelf-pin", "Shelf pin 1/4 in", ItemKind.SHELF_PIN)
        .item("glide", "Felt glide", ItemKind.FOOT);
  }

  private static void parts(TestPiece piece) {
    piece
        .part("left-side", "Left side", "A", "ply", 0, 18, 19, 420, 57, 451)
        .part("right-side", "Right side", "A", "ply", 1315, 1333, 19, 420, 57, 451)
        .part("bottom", "Bottom", "B", "ply", 18, 1315, 19, 420, 82, 100)
        .part("left-partition", "Left partition", "C", "ply", 437, 455, 19, 400, 100, 432)
        .part("right-partition", "Right partition", "C", "ply", 878, 896, 19, 400, 100, 432)
        .part("front-stretcher", "Front stretcher", "D", "ash", 18, 1315, 19, 95, 432, 451)
        .part("back-stretcher", "Back stretcher", "D", "ash", 18, 1315, 324, 400, 432, 451)
        .part("back", "Back panel", "E", "ply", 18, 1315, 401, 407.5, 100, 451)
        .part("top", "Top", "F", "ash", -19, 1352, -19, 426, 451, 470)
        .part("left-front-foot", "Foot", "G", "ash", 18, 120, 19, 63, 0, 82)
        .part("right-front-foot", "Foot", "G", "ash", 1213, 1315, 19, 63, 0, 82)
        .part("left-back-foot", "Foot", "G", "ash", 18, 120, 376, 420, 0, 82)
        .part("right-back-foot", "Foot", "G", "ash", 1213, 1315, 376, 420, 0, 82);
  }

  private static void frame(TestPiece piece) {
    piece
        .part("frame.left-stile", "Outer stile", "H", "ash", 0, 50, 0, 19, 57, 451)
        .part("frame.right-stile", "Outer stile", "H", "ash", 1283, 1333, 0, 19, 57, 451)
        .part("frame.top-rail", "Top rail", "I", "ash", 50, 1283, 0, 19, 400, 451)
        .part("frame.bottom-rail", "Bottom rail", "J", "ash", 50, 1283, 0, 19, 57, 100)
        .part("frame.left-middle-stile", "Middle stile", "K", "ash", 417, 455, 0, 19, 100, 400)
        .part("frame.right-middle-stile", "Middle stile", "K", "ash", 878, 916, 0, 19, 100, 400)
        .pocketHoles("frame.top-rail", BACK, LEFT)
        .pocketHoles("frame.bottom-rail", BACK, LEFT)
        .pocketHoles("frame.left-middle-stile", BACK, TOP)
        .pocketHoles("frame.right-middle-stile", BACK, TOP);
    for (String rail : new String[] {"frame.top-rail", "frame.bottom-rail"}) {
      pocket(piece, rail, LEFT, "frame.left-stile");
      pocket(piece, rail, RIGHT, "frame.right-stile");
    }
    for (String stile : new String[] {"frame.left-middle-stile", "frame.right-middle-stile"}) {
      pocket(piece, stile, TOP, "frame.top-rail");
      pocket(piece, stile, BOTTOM, "frame.bottom-rail");
    }
  }

  private static void pocket(
      TestPiece piece, String end, storyrod.geometry.Face face, String into) {
    piece.fasten("pocket-screws", end, face, into, true, "pocket-screw", 2);
  }

  private static void shelf(TestPiece piece, String name, double left, double right) {
    piece
        .part(name + ".panel", "Shelf", "L", "ply", left, right, 41, 397, 252, 270)
        .part(name + ".edge", "Shelf edge", "M", "ash", left, right, 22, 41, 238, 270)
        .fasten("brads", name + ".edge", BACK, name + ".panel", true, "brad", 4);
  }

  private static void drawer(TestPiece piece) {
    piece
        .part("drawer.left-side", "Drawer side", "N", "ply", 468, 480, 19, 375, 119, 348)
        .part("drawer.right-side", "Drawer side", "N", "ply", 853, 865, 19, 375, 119, 348)
        .part("drawer.box-front", "Drawer box front", "O", "ply", 480, 853, 19, 31, 119, 348)
        .part("drawer.box-back", "Drawer box back", "P", "ply", 480, 853, 363, 375, 119, 348)
        .part("drawer.panel", "Drawer bottom", "Q", "ply", 480, 853, 31, 363, 129, 135.5)
        .part("drawer.face", "Drawer front", "R", "ash", 457, 876, 0, 19, 102, 398)
        .letIn("rabbet", "drawer.box-front", LEFT, "drawer.left-side", 6, true)
        .letIn("rabbet", "drawer.box-front", RIGHT, "drawer.right-side", 6, true)
        .letIn("rabbet", "drawer.box-back", LEFT, "drawer.left-side", 6, true)
        .letIn("rabbet", "drawer.box-back", RIGHT, "drawer.right-side", 6, true)
        .letIn("groove", "drawer.panel", LEFT, "drawer.left-side", 6, false)
        .letIn("groove", "drawer.panel", RIGHT, "drawer.right-side", 6, false)
        .letIn("groove", "drawer.panel", FRONT, "drawer.box-front", 6, false)
        .letIn("groove", "drawer.panel", BACK, "drawer.box-back", 6, false)
        .fasten("screws", "drawer.face", BACK, "drawer.box-front", false, "short-screw", 4);
  }

  private static void joints(TestPiece piece) {
    piece
        .letIn("dado", "bottom", LEFT, "left-side", 9, true)
        .letIn("dado", "bottom", RIGHT, "right-side", 9, true)
        .letIn("dado", "left-partition", BOTTOM, "bottom", 6, true)
        .letIn("dado", "right-partition", BOTTOM, "bottom", 6, true)
        .letIn("groove", "back", LEFT, "left-side", 6, false)
        .letIn("groove", "back", RIGHT, "right-side", 6, false)
        .letIn("groove", "back", BOTTOM, "bottom", 6, false)
        .holes("left-side", RIGHT, 5)
        .holes("right-side", LEFT, 5)
        .holes("left-partition", LEFT, 5)
        .holes("right-partition", RIGHT, 5)
        .fasten("brads", "back", FRONT, "back-stretcher", false, "brad", 5);
    for (String rail : new String[] {"front-stretcher", "back-stretcher"}) {
      piece
          .pocketHoles(rail, BOTTOM, LEFT)
          .fasten("pocket-screws", rail, LEFT, "left-side", false, "pocket-screw", 2)
          .fasten("pocket-screws", rail, RIGHT, "right-side", false, "pocket-screw", 2)
          .fasten("screws", rail, BOTTOM, "left-partition", false, "long-screw", 2)
          .fasten("screws", rail, BOTTOM, "right-partition", false, "long-screw", 2)
          .fasten("fastened-top", "top", BOTTOM, rail, false, "top-fastener", 4);
    }
    piece
        .fasten("butt", "left-side", FRONT, "frame.left-stile", true, "", 0)
        .fasten("butt", "right-side", FRONT, "frame.right-stile", true, "", 0)
        .fasten("butt", "bottom", FRONT, "frame.bottom-rail", true, "", 0)
        .fasten("butt", "front-stretcher", FRONT, "frame.top-rail", true, "", 0);
    for (String foot : new String[] {"left-front", "right-front", "left-back", "right-back"}) {
      piece.fasten("screws", foot + "-foot", TOP, "bottom", true, "long-screw", 2);
    }
  }
}
