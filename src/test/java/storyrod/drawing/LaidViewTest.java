package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import storyrod.geometry.Face;

/** A piece that lies on a face is drawn with that face down, and never mirrored. */
class LaidViewTest {
  @ParameterizedTest
  @EnumSource(Face.class)
  void theFaceOnWhichItLiesIsDownOnThePaperAndTheOthersKeepTheirTurn(Face down) {
    View view = View.USUAL.laidOn(down);
    for (Face face : Face.values()) {
      if (face != down) {
        assertTrue(
            view.project(face.normal()).y() < view.project(down.normal()).y() + 1e-9,
            () -> face + " is no lower than " + down);
      }
    }
    assertTrue(view.toViewer().dot(down.normal()) < 0, "seen from above");
    assertEquals(0, view.right().cross(view.up()).subtract(view.toViewer()).norm(), 1e-9);
  }
}
