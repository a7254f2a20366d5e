package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.ScrewHoles;

/** A drawer's side, 100 high and 12 thick, beside a wall, 18 thick, that stands in a floor at 0. */
class SlidesTest {
  private static Piece piece(double front, double screwLength) {
    return new TestPiece()
        .item("slide", "Slide", ItemKind.SLIDE)
        .screw("screw", screwLength, 3.5)
        .part("wall", "Wall", "A", "ply", 0, 18, 0, 400, 0, 300)
        .part("floor", "Floor", "B", "ply", 0, 500, 0, 400, -18, 0)
        .letIn("dado", "wall", Face.BOTTOM, "floor", 6, true)
        .part("drawer.side", "Drawer side", "C", "ash", 31, 43, front, front + 350, 20, 120)
        .mount("slide", 1, Optional.of("screw"), 6, "drawer.side", "wall")
        .piece();
  }

  private static Slides.Row row(double front) {
    Piece piece = piece(front, 16);
    return Slides.of(piece, entry(piece)).getFirst();
  }

  private static HardwareEntry entry(Piece piece) {
    return piece.description().hardware().getFirst();
  }

  private static Setting setting(String key, String part, Length value) {
    return new Setting(key, Optional.of(part), value);
  }

  @Test
  void lineRunsAlongTheMiddleOfTheDrawersSideAndUpFromTheFloorBesideIt() {
    Slides.Row row = row(0);
    assertEquals(List.of("drawer.side", "wall"), List.of(row.side().name(), row.wall().name()));
    assertEquals(Length.mm(50), row.onSide());
    assertEquals(Optional.of("floor"), row.floor().map(Part::name));
    assertEquals(Length.mm(70), row.onWall());
  }

  /** The wall goes 6 into the floor: its own end lies that much lower, and no floor is there. */
  @Test
  void wallOnTheBenchIsMeasuredFromItsOwnEnd() {
    Slides.Row row = row(20).onBench();
    assertEquals(Optional.empty(), row.floor());
    assertEquals(Length.mm(76), row.onWall());
    assertEquals(set("wall", 20, false), set(row));
  }

  private static List<Object> set(String front, int behind, boolean seam) {
    return List.of(front, Length.mm(behind), seam);
  }

  private static List<Object> set(Slides.Row row) {
    return List.of(row.front().name(), row.behind(), row.seam());
  }

  @Test
  void drawerThatIsNotFlushSaysHowFarItsFrontLies() {
    assertEquals(set("wall", 0, false), set(row(0)));
    assertEquals(set("wall", 20, false), set(row(20)));
    assertEquals(set("wall", -5, false), set(row(-5)));
  }

  /** With a strip, 20 thick, glued over the wall's edge, that edge is a seam and no front. */
  @Test
  void frontIsThatOfWhatCoversTheWallsEdge() {
    assertEquals(set("strip", 20, true), set(covered(0)));
    assertEquals(set("strip", 23, false), set(covered(3)));
  }

  /** A rail that is glued to another part only hides the wall's edge just as well. */
  @Test
  void frontIsThatOfWhatLiesBeforeTheWallWithoutAJoint() {
    Piece piece =
        drawerBeside(0)
            .part("rail", "Rail", "B", "ash", 0, 500, -20, 0, 60, 90)
            .part("low", "Low rail", "D", "ash", 0, 500, -20, 0, 0, 60)
            .fasten("butt", "low", Face.BACK, "wall", true, "", 0)
            .fasten("butt", "rail", Face.BOTTOM, "low", true, "", 0)
            .piece();
    assertEquals(set("rail", 20, true), set(Slides.of(piece, entry(piece)).getFirst()));
  }

  private static TestPiece drawerBeside(double front) {
    return new TestPiece()
        .item("slide", "Slide", ItemKind.SLIDE)
        .screw("screw", 16, 3.5)
        .part("wall", "Wall", "A", "ply", 0, 18, 0, 400, 0, 300)
        .part("drawer.side", "Drawer side", "C", "ash", 31, 43, front, front + 350, 20, 120)
        .mount("slide", 1, Optional.of("screw"), 6, "drawer.side", "wall");
  }

  private static Slides.Row covered(double front) {
    Piece piece =
        drawerBeside(front)
            .part("strip", "Strip", "B", "ash", 0, 18, -20, 0, 0, 300)
            .fasten("butt", "strip", Face.BACK, "wall", true, "", 0)
            .piece();
    return Slides.of(piece, entry(piece)).getFirst();
  }

  @Test
  void pilotsFitTheWoodAndStayShortOfTheScrewAndOfTheFarFace() {
    ScrewHoles holes = ScrewHoles.forShank(Length.nearest(3.5));
    Piece longScrew = piece(0, 30);
    assertEquals(
        List.of(
            setting("pilot-diameter", "drawer.side", holes.pilotHard()),
            setting("pilot-depth", "drawer.side", Length.mm(12).minus(Length.inch(1, 8))),
            setting("pilot-diameter", "wall", holes.pilotSoft()),
            setting("pilot-depth", "wall", Length.mm(18).minus(Length.inch(1, 8)))),
        new MountHoles(longScrew).of(entry(longScrew), Set.of()));
    Piece shortScrew = piece(0, 10);
    assertEquals(
        setting("pilot-depth", "wall", Length.mm(10).minus(Length.inch(1, 16))),
        new MountHoles(shortScrew).of(entry(shortScrew), Set.of()).getLast());
  }
}
