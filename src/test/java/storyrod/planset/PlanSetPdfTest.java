package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.api.Test;
import storyrod.measure.Unit;
import storyrod.words.Words;

/** The PDF as PDFBox reads it. */
class PlanSetPdfTest {
  private static final PlanSetWriter WRITER = new PlanSetWriter(Sample::words, Words.ENGLISH);
  private static final Map<String, byte[]> FILES = WRITER.write(Sample.inches().planSet());
  private static final byte[] PDF = FILES.get("plan-set.pdf");
  private static final double MM_PER_POINT = 25.4 / 72;

  @Test
  void inchProjectsArePrintedOnUsLetter() throws IOException {
    // ASME Y14.1, sheet A: 8.5 x 11 in
    assertEveryPageMeasures(PDF, 215.9, 279.4);
  }

  @Test
  void millimetreProjectsArePrintedOnA4() throws IOException {
    // ISO 216: 210 x 297 mm
    assertEveryPageMeasures(pdf(Sample.inches().in(Unit.MM)), 210, 297);
  }

  private static void assertEveryPageMeasures(byte[] pdf, double width, double height)
      throws IOException {
    try (PDDocument document = PdfText.open(pdf)) {
      for (PDPage page : document.getPages()) {
        PDRectangle box = page.getMediaBox();
        assertEquals(width, box.getWidth() * MM_PER_POINT, 0.1);
        assertEquals(height, box.getHeight() * MM_PER_POINT, 0.1);
        assertEquals(0, page.getRotation());
      }
    }
  }

  @Test
  void cutListInThePdfIsTheCutListInTheCsv() {
    String text = PdfText.text(PDF, 0);
    List<String> rows = csv("cut-list.csv").lines().skip(1).toList();
    assertEquals(4, rows.size());
    for (String row : rows) {
      List<String> cell = List.of(row.split(",", -1));
      String line =
          String.join(
              " ",
              List.of(
                  cell.get(0),
                  cell.get(1),
                  cell.get(3).isEmpty() ? cell.get(2) : cell.get(3),
                  printedSize(cell.get(5)),
                  printedSize(cell.get(6)),
                  printedSize(cell.get(7)),
                  printedSize(cell.get(8)),
                  printedSize(cell.get(9)),
                  printedSize(cell.get(10)),
                  cell.get(4),
                  cell.get(11)));
      assertTrue(text.contains("\n" + line + "\n"), line + "\nis not in\n" + text);
    }
  }

  /** The list writes 0 3/4, so that no spreadsheet takes it for a day. */
  private static String printedSize(String cell) {
    return cell.replaceFirst("^0 (?=\\d+/)", "");
  }

  @Test
  void fractionsAreSmallFiguresThatReadAsWritten() {
    List<PdfText.Glyph> glyphs = PdfText.glyphs(PDF);
    String sentence = "diagonals: 41 11/32 in";
    String all = glyphs.stream().map(PdfText.Glyph::text).reduce("", String::concat);
    int at = all.indexOf(sentence);
    assertTrue(at >= 0);
    PdfText.Glyph whole = glyphs.get(at + sentence.indexOf("41"));
    PdfText.Glyph over = glyphs.get(at + sentence.indexOf("11/"));
    PdfText.Glyph under = glyphs.get(at + sentence.indexOf("32 in"));
    assertEquals("1", over.text());
    assertEquals("3", under.text());
    assertTrue(over.size() < 0.8 * whole.size() && under.size() < 0.8 * whole.size());
    assertTrue(over.bottom() < whole.bottom() - 0.3, "the numerator is raised");
    assertTrue(under.bottom() >= whole.bottom(), "the denominator is not raised");
  }

  @Test
  void everyFontIsOneOfOursAndEmbedded() throws IOException {
    List<PDFont> fonts = new ArrayList<>();
    try (PDDocument document = PdfText.open(PDF)) {
      for (PDPage page : document.getPages()) {
        collect(page.getResources(), fonts);
      }
      assertFalse(fonts.isEmpty());
      for (PDFont font : fonts) {
        assertTrue(font.isEmbedded(), font.getName());
        assertTrue(font.getName().matches("[A-Z]{6}\\+(Roboto-.*|DejaVuSans)"), font.getName());
      }
    }
  }

  private static void collect(PDResources resources, List<PDFont> fonts) throws IOException {
    for (COSName name : resources.getFontNames()) {
      fonts.add(resources.getFont(name));
    }
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDFormXObject form) {
        collect(form.getResources(), fonts);
      }
    }
  }

  @Test
  void noGlyphIsMissing() {
    List<PdfText.Glyph> glyphs = PdfText.glyphs(PDF);
    assertTrue(glyphs.size() > 3000);
    assertEquals(List.of(), glyphs.stream().filter(each -> each.glyph() == 0).toList());
  }

  @Test
  void signThatRobotoLacksComesFromDejaVu() {
    byte[] pdf = pdf(Sample.titled("Tick \u2713 and go \u2794"));
    assertTrue(PdfText.text(pdf, 1).contains("Tick \u2713 and go \u2794"), PdfText.text(pdf, 1));
    PdfText.Glyph tick =
        PdfText.glyphs(pdf).stream()
            .filter(each -> each.text().equals("\u2713"))
            .findFirst()
            .orElseThrow();
    assertTrue(tick.font().endsWith("DejaVuSans"), tick.font());
    assertFalse(tick.glyph() == 0);
  }

  @Test
  void signThatNoFontHasIsToldApartFromABug() {
    UnprintableTextException e =
        assertThrows(
            UnprintableTextException.class, () -> pdf(Sample.titled("A \uD83E\uDDF0 box")));
    assertEquals(0x1F9F0, e.codePoint());
    assertTrue(e.text().contains("box"), e.text());
  }

  @Test
  void controlCharacterIsToldApartFromABug() {
    UnprintableTextException e =
        assertThrows(UnprintableTextException.class, () -> pdf(Sample.titled("A\u0001B")));
    assertEquals(1, e.codePoint());
  }

  @Test
  void noTextReachesIntoTheMargins() {
    for (Unit unit : Unit.values()) {
      Paper paper = Paper.usualFor(unit);
      List<PdfText.Glyph> outside =
          PdfText.glyphs(pdf(Sample.inches().in(unit).withShelves(9))).stream()
              .filter(
                  each ->
                      each.left() < 15
                          || each.right() > paper.widthMm() - 15
                          || each.top() < 14
                          || each.bottom() > paper.heightMm() - 14)
              .toList();
      assertEquals(List.of(), outside);
    }
  }

  @Test
  void everyPageButTheCoverStatesItsNumberAndTheirCount() throws IOException {
    int pages = pages(PDF);
    for (int page = 2; page <= pages; page++) {
      String text = PdfText.text(PDF, page);
      assertTrue(text.contains(page + " of " + pages), text);
    }
  }

  @Test
  void noPageIsEmptyAndNoHeadingEndsOne() throws IOException {
    byte[] pdf = pdf(Sample.inches().withShelves(13));
    Map<Integer, List<PdfText.Glyph>> byPage = new LinkedHashMap<>();
    PdfText.glyphs(pdf)
        .forEach(each -> byPage.computeIfAbsent(each.page(), key -> new ArrayList<>()).add(each));
    assertEquals(pages(pdf), byPage.size());
    byPage.forEach(
        (page, glyphs) -> {
          List<PdfText.Glyph> body =
              glyphs.stream().filter(each -> each.top() > 25 && each.bottom() < 257).toList();
          assertTrue(body.size() > 60, "page " + page + " has only " + body.size() + " glyphs");
          PdfText.Glyph last =
              body.stream().max(Comparator.comparing(PdfText.Glyph::bottom)).orElseThrow();
          assertTrue(
              last.size() < 20,
              () -> "page " + page + " ends with a heading: " + PdfText.text(pdf, page));
        });
  }

  @Test
  void longCutListRepeatsItsHeadOnEveryPage() {
    byte[] pdf = pdf(Sample.inches().withShelves(49));
    List<Integer> pages =
        IntStream.rangeClosed(4, 8)
            .filter(page -> PdfText.text(pdf, page).contains("Mark Part No."))
            .boxed()
            .toList();
    assertTrue(pages.size() > 1, pages.toString());
  }

  @Test
  void contentsNameThePageThatASectionStartsOn() {
    java.util.regex.Matcher line =
        java.util.regex.Pattern.compile("\nPart drawings (\\d+)\n").matcher(PdfText.text(PDF, 3));
    assertTrue(line.find());
    assertTrue(PdfText.text(PDF, Integer.parseInt(line.group(1))).contains("Part drawings · A"));
  }

  @Test
  void twoRunsGiveEqualBytes() {
    Map<String, byte[]> again =
        new PlanSetWriter(Sample::words, Words.ENGLISH).write(Sample.inches().planSet());
    assertEquals(List.copyOf(FILES.keySet()), List.copyOf(again.keySet()));
    FILES.forEach((name, bytes) -> assertArrayEquals(bytes, again.get(name), name));
  }

  @Test
  void documentSaysWhatItIsAndNothingOfTheMachine() throws IOException {
    try (PDDocument document = PdfText.open(PDF)) {
      var info = document.getDocumentInformation();
      assertEquals("Low bookcase", info.getTitle());
      assertEquals("Fernhill Workshop, demo", info.getAuthor());
      assertEquals(2026, info.getCreationDate().get(java.util.Calendar.YEAR));
      assertEquals("en", document.getDocumentCatalog().getLanguage());
      assertEquals(
          new TreeSet<>(List.of("Author", "CreationDate", "Producer", "Title")),
          new TreeSet<>(info.getMetadataKeys()));
      assertEquals(
          "Cover", document.getDocumentCatalog().getDocumentOutline().getFirstChild().getTitle());
    }
    String raw = new String(PDF, StandardCharsets.ISO_8859_1);
    assertFalse(raw.contains(System.getProperty("user.home") + "/"));
    assertFalse(raw.contains("file:"));
  }

  @Test
  void checkBarsAreAsLongAsTheySay() {
    // 4 in are 101.6 mm by the definition of the inch
    var bar =
        CheckBar.drawing(
            new Texts(Sample.inches().planSet().piece().description().format(), Words.ENGLISH));
    List<Double> lengths =
        bar.elements().stream()
            .filter(
                each ->
                    each instanceof storyrod.drawing.Drawing.Line line
                        && line.role() == storyrod.drawing.Drawing.Role.VISIBLE)
            .map(each -> (storyrod.drawing.Drawing.Line) each)
            .map(line -> line.points().getFirst().distance(line.points().getLast()))
            .toList();
    assertEquals(2, lengths.size());
    assertEquals(100, lengths.get(0), 1e-9);
    assertEquals(101.6, lengths.get(1), 1e-9);
  }

  private static int pages(byte[] pdf) throws IOException {
    try (PDDocument document = PdfText.open(pdf)) {
      return document.getNumberOfPages();
    }
  }

  private static byte[] pdf(Sample sample) {
    return WRITER.write(sample.planSet()).get("plan-set.pdf");
  }

  private static String csv(String name) {
    return new String(FILES.get(name), StandardCharsets.UTF_8);
  }
}
