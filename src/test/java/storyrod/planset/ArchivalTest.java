package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import storyrod.cli.PrintedProjects;
import storyrod.words.Words;

/** Every PDF is one to keep: no rule of PDF/A is broken that an independent validator knows. */
class ArchivalTest {
  private static final float CLOSE = 0.002f;

  private static byte[] printed(String project, String language, String edition) {
    return PrintedProjects.named(project, language).on(Paper.A4, edition).pdf();
  }

  @ParameterizedTest
  @CsvSource({
    "sewing-box,en,publish",
    "nightstand,de,publish",
    "step-stool,en,helper",
    "window-bench,en,preview"
  })
  void noRuleOfPartTwoIsBroken(String project, String language, String edition) throws Exception {
    byte[] pdf = printed(project, language, edition);
    assertEquals(Map.of(), ArchivalRules.broken(pdf, PDFAFlavour.PDFA_2_B));
    assertEquals(Map.of(), ArchivalRules.broken(pdf, PDFAFlavour.PDFA_2_U));
  }

  /** With and without a photo; files inside ask for the third part. */
  @ParameterizedTest
  @ValueSource(strings = {"step-stool", "nightstand"})
  void filesInsideAskForPartThree(String project) throws Exception {
    byte[] pdf = printed(project, "en", "record");
    assertEquals(Map.of(), ArchivalRules.broken(pdf, PDFAFlavour.PDFA_3_U));
    assertFalse(ArchivalRules.broken(pdf, PDFAFlavour.PDFA_2_U).isEmpty());
  }

  @Test
  void aStampedCopyKeepsToTheRules() throws Exception {
    byte[] pdf = printed("sewing-box", "en", "publish");
    byte[] copy = new StampedCopies(pdf, Words.ENGLISH).copy(new Stamp("Ада Миллер ✓", 17));
    assertEquals(Map.of(), ArchivalRules.broken(copy, PDFAFlavour.PDFA_2_U));
  }

  @Test
  void titleAndMakerStandInItAsTheyAreWritten() throws Exception {
    PdfPages.About about = new PdfPages.About("A <b> & more", "Ада", "en", Optional.empty());
    byte[] pdf =
        PdfPages.write(
            "<html><head><title></title></head><body><p>1</p></body></html>", Map.of(), about);
    assertEquals(Map.of(), ArchivalRules.broken(pdf, PDFAFlavour.PDFA_2_U));
    String text = new String(pdf, StandardCharsets.UTF_8);
    assertTrue(text.contains(">A &lt;b&gt; &amp; more</rdf:li>"), text);
    assertTrue(text.contains("<rdf:li>Ада</rdf:li>"), text);
  }

  /** Against the profile that comes with Java, on a grid of colours. */
  @Test
  void theColoursAreThoseOfSrgb() {
    ICC_ColorSpace ours = new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()));
    ColorSpace theirs = ColorSpace.getInstance(ColorSpace.CS_sRGB);
    for (int i = 0; i < 125; i++) {
      float[] colour = {i % 5 / 4f, i / 5 % 5 / 4f, i / 25 / 4f};
      assertArrayEquals(theirs.toCIEXYZ(colour), ours.toCIEXYZ(colour), CLOSE);
    }
  }
}
