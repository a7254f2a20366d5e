package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Setting;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemKind;
import storyrod.geometry.Face;
import storyrod.measure.Length;
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

  private static List<Setting> settings(double front) {
    Piece piece = piece(front, 16);
    return Slides.of(piece, entry(piece));
  }

  private static HardwareEntry entry(Piece piece) {
    return piece.description().hardware().getFirst();
  }

  private static Setting setting(String key, String part, Length value) {
    return new Setting(key, Optional.of(part), value);
  }

  @Test
  void lineRunsAlongTheMiddleOfTheDrawersSideAndUpFromTheFloorBesideIt() {
    assertEquals(
        List.of(
            setting("slide-line-drawer", "drawer.side", Length.mm(50)),
            setting("slide-line-floor.B", "wall", Length.mm(70))),
        settings(0));
  }

  @Test
  void drawerThatIsNotFlushSaysHowFarItsFrontLies() {
    assertEquals(setting("slide-behind", "wall", Length.mm(20)), settings(20).getLast());
    assertEquals(setting("slide-before", "wall", Length.mm(5)), settings(-5).getLast());
  }

  /** With a strip, 20 thick, glued over the wall's edge, that edge is a seam and no front. */
  @Test
  void frontIsThatOfWhatCoversTheWallsEdge() {
    assertEquals(setting("slide-seam", "strip", Length.mm(20)), covered(0).getLast());
    assertEquals(setting("slide-behind-face", "strip", Length.mm(23)), covered(3).getLast());
  }

  private static List<Setting> covered(double front) {
    Piece piece =
        new TestPiece()
            .item("slide", "Slide", ItemKind.SLIDE)
            .screw("screw", 16, 3.5)
            .part("wall", "Wall", "A", "ply", 0, 18, 0, 400, 0, 300)
            .part("strip", "Strip", "B", "ash", 0, 18, -20, 0, 0, 300)
            .part("drawer.side", "Drawer side", "C", "ash", 31, 43, front, front + 350, 20, 120)
            .fasten("butt", "strip", Face.BACK, "wall", true, "", 0)
            .mount("slide", 1, Optional.of("screw"), 6, "drawer.side", "wall")
            .piece();
    return Slides.of(piece, entry(piece));
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
