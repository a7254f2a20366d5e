package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.piece.Pieces;

/**
 * A bar of 6 by 19 mm has a diagonal of 19.92 mm and so fits a hole of 20 mm; one of 19.2 mm, with
 * 20.12 mm, does not.
 */
class BarInBoreTest {
  private static final String BAR =
      """
      parts:
        side: {stock: ply18, x: 0 to 18, y: 0 to 100, z: 0 to 100, grain: z}
        bar: {stock: ply6, x: 18 - DEEP to 200, y: 47 to 53, z: 50 - HIGH / 2 to 50 + HIGH / 2, grain: x}
      cuts:
        - holes: {in: side.right, at: {y: 50, z: 50}, diameter: 20, depth: 10}
      """;

  private static List<String> overlaps(String deep, String high) {
    return new PartsOverlap()
        .findings(Pieces.of(BAR.replace("DEEP", deep).replace("HIGH", high))).stream()
            .map(each -> each.code())
            .toList();
  }

  @Test
  void aBarThatFitsItsHoleIsNoOverlap() {
    assertEquals(List.of(), overlaps("10", "19"));
  }

  @Test
  void aBarThatIsTooLongForItsHoleIsAnOverlap() {
    assertEquals(List.of("parts-overlap"), overlaps("10.1", "19"));
  }

  @Test
  void aBarThatIsTooHighForItsHoleIsAnOverlap() {
    assertEquals(List.of("parts-overlap"), overlaps("10", "19.2"));
  }
}
