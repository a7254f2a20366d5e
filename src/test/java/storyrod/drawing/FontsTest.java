package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Fonts.Run;
import storyrod.drawing.Fonts.Weight;

class FontsTest {
  @Test
  void weightsAreThreeFacesOfOneFamily() {
    for (Weight weight : Weight.values()) {
      assertTrue(Fonts.awt(weight, 12).getPSName().startsWith("Roboto-"));
    }
    assertTrue(Fonts.width(Weight.BOLD, 10, "rod") > Fonts.width(Weight.LIGHT, 10, "rod"));
  }

  @Test
  void signsThatTheFamilyLacksGoToTheStandIn() {
    assertTrue(Fonts.covers("Ø 23/32 × 5"));
    assertFalse(Fonts.covers("☐ done"));
    assertEquals(
        List.of(new Run("a ", false), new Run("☐→", true), new Run(" b", false)),
        Fonts.runs("a ☐→ b"));
  }

  @Test
  void aSignThatNoFaceHasIsABug() {
    assertThrows(IllegalStateException.class, () -> Fonts.runs("a \uD83E\uDE91 b"));
  }

  /** Widths scale with the size and add up: nothing is hinted or kerned. */
  @Test
  void widthsScaleAndAddUp() {
    double one = Fonts.width(Weight.REGULAR, 1, "To 27");
    assertEquals(2.6 * one, Fonts.width(Weight.REGULAR, 2.6, "To 27"), 1e-9);
    double parts = Fonts.width(Weight.REGULAR, 1, "To ") + Fonts.width(Weight.REGULAR, 1, "27");
    assertEquals(one, parts, 1e-6);
  }

  /** Digits of one width, so that figures stand under each other: Roboto's are 1151 of 2048. */
  @Test
  void figuresAreTabular() {
    for (char digit = '0'; digit <= '9'; digit++) {
      assertEquals(1151 / 2048.0, Fonts.width(Weight.REGULAR, 1, "" + digit), 1e-3);
    }
  }

  @Test
  void aFractionIsSetInStretchesThatReadAsTheText() {
    TextSetting setting = TextSetting.of(TextStyle.NOTE, "2 of 27 23/32, and/or 1:4, 3.5/8");
    assertEquals(
        "2 of 27 23/32, and/or 1:4, 3.5/8",
        String.join("", setting.stretches().stream().map(TextSetting.Stretch::text).toList()));
    assertEquals(
        List.of("2 of 27 ", "23", "/", "32", ", and/or 1:4, 3.5/8"),
        setting.stretches().stream().map(TextSetting.Stretch::text).toList());
    assertTrue(setting.stretches().get(1).rise() > 0);
    assertTrue(setting.stretches().get(3).rise() < setting.stretches().get(1).rise());
  }
}
