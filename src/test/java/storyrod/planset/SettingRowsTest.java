package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.planset.StepText.SettingText;

class SettingRowsTest {
  private static final SettingText BIT_P = new SettingText("Pilot bit", "P", "2.8 mm");
  private static final SettingText BIT_T = new SettingText("Pilot bit", "T", "2.8 mm");
  private static final SettingText BIT_X = new SettingText("Pilot bit", "X", "2 mm");
  private static final SettingText FENCE = new SettingText("Fence", "", "40 mm");

  @Test
  void theSameForSeveralPartsIsOneRowWithTheirMarks() {
    assertEquals(
        List.of(new SettingText("Pilot bit", "P, T", "2.8 mm"), BIT_X),
        SettingRows.of(List.of(BIT_P, BIT_X, BIT_T)));
  }

  @Test
  void whatIsForTheWholeStepStaysApartFromWhatIsForAPart() {
    SettingText ofPart = new SettingText("Fence", "P", "40 mm");
    assertEquals(List.of(FENCE, ofPart), SettingRows.of(List.of(FENCE, ofPart)));
  }

  @Test
  void otherNamesAndValuesStayAsTheyAre() {
    SettingText depth = new SettingText("Pilot depth", "P", "2.8 mm");
    assertEquals(List.of(BIT_P, depth, BIT_X), SettingRows.of(List.of(BIT_P, depth, BIT_X)));
  }
}
