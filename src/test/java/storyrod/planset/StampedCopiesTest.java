package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import storyrod.words.Words;

/** Stamped copies as PDFBox reads them. */
class StampedCopiesTest {
  private static final byte[] PDF =
      new PlanSetWriter(Sample::words, Words.ENGLISH)
          .write(Sample.inches().planSet())
          .get("plan-set.pdf");
  private static final StampedCopies COPIES = new StampedCopies(PDF, Words.ENGLISH);
  private static final String LONGEST = "W".repeat(80);

  @Test
  void standsOnEveryPageOnce() {
    byte[] copy = COPIES.copy(new Stamp("Ada Miller", 17));
    for (int page = 1; page <= pages(copy); page++) {
      assertEquals(2, PdfText.text(copy, page).split("Copy 17, for Ada Miller", -1).length);
    }
  }

  @Test
  void leavesThePagesAsTheyAre() {
    byte[] copy = COPIES.copy(new Stamp("Ada Miller", 17));
    assertEquals(
        PdfText.text(PDF, 0), PdfText.text(copy, 0).replace("Copy 17, for Ada Miller\n", ""));
    assertArrayEquals(PDF, Arrays.copyOf(copy, PDF.length));
  }

  @Test
  void keepsToThePaperAndClearOfTheFootWithTheLongestName() {
    List<PdfText.Glyph> all = PdfText.glyphs(COPIES.copy(new Stamp(LONGEST, 99_999)));
    List<PdfText.Glyph> stamp =
        all.stream().filter(glyph -> glyph.size() == 7 && glyph.text().equals("W")).toList();
    assertEquals(80 * pages(PDF), stamp.size());
    double top = stamp.getFirst().top();
    assertTrue(stamp.stream().allMatch(glyph -> glyph.right() < 215.9 - 17 + 0.1));
    double lowest =
        PdfText.glyphs(PDF).stream().mapToDouble(PdfText.Glyph::bottom).max().orElseThrow();
    assertTrue(lowest < top, lowest + " and " + top);
  }

  @Test
  void namesInOtherScriptsAreReadAsTheyAre() {
    String name = "Zoë Ωμέγα Жуков ✓";
    assertTrue(PdfText.text(COPIES.copy(new Stamp(name, 1)), 2).contains(name));
  }

  @Test
  void aCharacterWithoutGlyphIsRefused() {
    Stamp stamp = new Stamp("木工", 1);
    assertThrows(UnprintableTextException.class, () -> COPIES.copy(stamp));
  }

  @Test
  void sameStampGivesTheSameBytesAndAnotherOneAnotherIdentifier() throws IOException {
    byte[] first = COPIES.copy(new Stamp("Ada Miller", 17));
    String own = identifier(first, 1);
    assertArrayEquals(first, COPIES.copy(new Stamp("Ada Miller", 17)));
    assertFalse(own.equals(identifier(COPIES.copy(new Stamp("Ada Miller", 18)), 1)));
    assertEquals(identifier(PDF, 0), identifier(first, 0));
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    try (PDDocument document = PdfText.open(COPIES.copy(new Stamp("Ωμέγα ✓", 1)))) {
      for (PDPage page : document.getPages()) {
        for (var name : page.getResources().getXObjectNames()) {
          assertTrue(page.getResources().getXObject(name) != null);
        }
        for (var name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
        }
      }
    }
  }

  private static int pages(byte[] pdf) {
    try (PDDocument document = PdfText.open(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String identifier(byte[] pdf, int which) throws IOException {
    try (PDDocument document = PdfText.open(pdf)) {
      return document.getDocument().getDocumentID().get(which).toString();
    }
  }
}
