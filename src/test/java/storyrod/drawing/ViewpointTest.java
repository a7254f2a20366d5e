package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.geometry.Face;
import storyrod.words.Words;

/** What is said of where a picture is seen from. */
class ViewpointTest {
  @ParameterizedTest
  @CsvSource({
    "1, -1, 1, BOTTOM, ''",
    "-1, -1, 1, BOTTOM, ''",
    "1, 1, 1, BOTTOM, Seen from behind.",
    "1, -1, -1, BOTTOM, Seen from below.",
    "-1, 1, -1, BOTTOM, Seen from behind and below.",
    "1, -1, 1, BACK, It lies on its back.",
    "1, -1, 1, FRONT, It lies on its front.",
    "1, -1, 1, TOP, Its underside is up."
  })
  void whatIsNotUsualIsSaid(int x, int y, int z, Face down, String said) {
    View view = View.isometric(x, y, z).laidOn(down);
    assertEquals(said, new Viewpoint(view, down).caption(Words.ENGLISH));
  }
}
