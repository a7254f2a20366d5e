package storyrod.planset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import storyrod.planset.PdfText.Glyph;
import storyrod.words.Words;

/**
 * A finished plan set as an independent reader finds it; pages count from 1, sizes are in mm.
 *
 * @param papers the sheet of each page, upright or turned
 * @param pages the glyphs of each page but spaces
 * @param bookmarks those of the first level and all below, in order
 */
record FinishedPdf(
    byte[] bytes,
    PlanSet set,
    List<Paper> papers,
    Map<Integer, List<Glyph>> pages,
    List<Link> links,
    List<Link> bookmarks,
    List<PDFont> fonts) {
  private static final double MM_PER_POINT = 25.4 / 72;
  private static final double LINK_MM = 0.6;

  /**
   * Something that leads somewhere.
   *
   * @param page where it stands; 0 for a bookmark
   * @param level 0 for a link or a section's bookmark, 1 for what is within
   * @param text what it says, without spaces
   * @param target the page to which it leads; 0 if to none
   */
  record Link(int page, int level, String text, int target) {}

  static FinishedPdf of(byte[] bytes, PlanSet set, Paper paper) throws IOException {
    Map<Integer, List<Glyph>> pages =
        PdfText.glyphs(bytes).stream()
            .filter(each -> !each.text().isBlank())
            .collect(Collectors.groupingBy(Glyph::page, TreeMap::new, Collectors.toList()));
    try (PDDocument document = PdfText.open(bytes)) {
      List<Link> bookmarks = new ArrayList<>();
      addBookmarks(document, document.getDocumentCatalog().getDocumentOutline(), 0, bookmarks);
      List<PDFont> fonts = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        addFonts(page.getResources(), fonts);
      }
      List<Paper> papers = PdfText.papers(document, paper);
      return new FinishedPdf(bytes, set, papers, pages, links(document, pages), bookmarks, fonts);
    }
  }

  Paper paper(int page) {
    return papers.get(page - 1);
  }

  /** How many pages there are; each has a glyph. */
  int count() {
    return pages.size();
  }

  /** A page's text without spaces, as it is written. */
  String text(int page) {
    return text(pages.getOrDefault(page, List.of()));
  }

  static String text(List<Glyph> glyphs) {
    return squeezed(glyphs.stream().map(Glyph::text).collect(Collectors.joining()));
  }

  /** Those in which it is told. */
  Words words() {
    return set.piece().description().words();
  }

  /** A preview has neither contents nor lists; every other edition begins with them. */
  boolean isPreview() {
    String preview = squeezed(words().say("preview.title"));
    return bookmarks().stream().anyMatch(each -> each.text().equals(preview));
  }

  static String squeezed(String text) {
    return text.replaceAll("[\\s\u00a0\u2060\u200b]+", "").replace('⁄', '/');
  }

  private static List<Link> links(PDDocument document, Map<Integer, List<Glyph>> pages)
      throws IOException {
    List<Link> links = new ArrayList<>();
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      for (PDAnnotation each : document.getPage(page - 1).getAnnotations()) {
        if (each instanceof PDAnnotationLink link) {
          String text = text(under(link, document.getPage(page - 1), pages.get(page)));
          links.add(new Link(page, 0, text, target(document, link)));
        }
      }
    }
    return links;
  }

  /** The glyphs whose middle lies in the place of a link. */
  private static List<Glyph> under(PDAnnotationLink link, PDPage page, List<Glyph> glyphs) {
    PDRectangle at = link.getRectangle();
    double height = page.getMediaBox().getHeight();
    double top = (height - at.getUpperRightY()) * MM_PER_POINT - LINK_MM;
    double bottom = (height - at.getLowerLeftY()) * MM_PER_POINT + LINK_MM;
    return glyphs.stream()
        .filter(each -> middle(each.top(), each.bottom()) > top)
        .filter(each -> middle(each.top(), each.bottom()) < bottom)
        .filter(each -> middle(each.left(), each.right()) > at.getLowerLeftX() * MM_PER_POINT)
        .filter(each -> middle(each.left(), each.right()) < at.getUpperRightX() * MM_PER_POINT)
        .toList();
  }

  private static double middle(double from, double to) {
    return (from + to) / 2;
  }

  private static int target(PDDocument document, PDAnnotationLink link) throws IOException {
    return link.getAction() instanceof PDActionGoTo go
        ? page(document, go.getDestination())
        : page(document, link.getDestination());
  }

  private static int page(PDDocument document, PDDestination to) {
    return to instanceof PDPageDestination page
        ? document.getPages().indexOf(page.getPage()) + 1
        : 0;
  }

  private static void addBookmarks(
      PDDocument document, PDOutlineNode node, int level, List<Link> found) throws IOException {
    for (PDOutlineItem item : node.children()) {
      PDPage page = item.findDestinationPage(document);
      int target = page == null ? 0 : document.getPages().indexOf(page) + 1;
      found.add(new Link(0, level, squeezed(item.getTitle()), target));
      addBookmarks(document, item, level + 1, found);
    }
  }

  private static void addFonts(PDResources resources, List<PDFont> fonts) throws IOException {
    for (COSName name : resources.getFontNames()) {
      fonts.add(resources.getFont(name));
    }
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDFormXObject form) {
        addFonts(form.getResources(), fonts);
      }
    }
  }
}
