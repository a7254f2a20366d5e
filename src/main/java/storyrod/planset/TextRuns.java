package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Prepares a page tree's texts for the layout: fractions become small raised and lowered figures
 * that still read as {@code 27 23/32}, and runs that Roboto has no glyphs for get the font that
 * has.
 *
 * <p>The layout writes an element's own texts before those of the elements inside it. So that a PDF
 * reads in the order of the page, a text beside elements becomes an element too.
 */
final class TextRuns {
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\d/.])(?:(\\[?\\d+) )?(\\d{1,3})/(\\d{1,3})(?![\\d/])");

  private final Document document;

  private TextRuns(Document document) {
    this.document = document;
  }

  static void prepare(Document document) {
    TextRuns runs = new TextRuns(document);
    List<Text> texts = new ArrayList<>();
    collect(document.getDocumentElement(), texts);
    texts.forEach(runs::prepare);
  }

  private static void collect(Node node, List<Text> texts) {
    if (node instanceof Text text) {
      texts.add(text);
      return;
    }
    if (node.getNodeName().equals("head")) {
      return;
    }
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      collect(child, texts);
    }
  }

  private void prepare(Text node) {
    String text = node.getData();
    Matcher kept = Together.PATTERN.matcher(text);
    boolean hasKept = kept.find();
    if (!hasKept && isAlone(node) && text.codePoints().allMatch(TextRuns::inRoboto)) {
      return;
    }
    Node parent = node.getParentNode();
    int done = 0;
    while (hasKept) {
      glyphs(text.substring(done, kept.start()), parent, node);
      parent.insertBefore(kept(kept.group()), node);
      done = kept.end();
      hasKept = kept.find();
    }
    glyphs(text.substring(done), parent, node);
    parent.removeChild(node);
  }

  private static boolean isAlone(Text node) {
    return node.getPreviousSibling() == null && node.getNextSibling() == null
        || node.getData().isBlank();
  }

  private Element kept(String text) {
    Element whole = span("kept-together");
    Node end = whole.appendChild(document.createTextNode(""));
    Matcher fraction = FRACTION.matcher(text);
    int done = 0;
    while (fraction.find()) {
      glyphs(text.substring(done, fraction.start()), whole, end);
      whole.insertBefore(fraction(fraction), end);
      done = fraction.end();
    }
    glyphs(text.substring(done), whole, end);
    whole.removeChild(end);
    return whole;
  }

  private Element fraction(Matcher found) {
    Element whole = span("fraction");
    if (found.group(1) != null) {
      whole.appendChild(document.createTextNode(found.group(1)));
      append(whole, "thin", " ");
    }
    append(whole, "over", found.group(2));
    append(whole, "slash", "/");
    append(whole, "under", found.group(3));
    return whole;
  }

  /** Characters in a row that Roboto has, or that another font has to print. */
  record Run(String text, boolean roboto) {}

  /**
   * A text split where the font changes.
   *
   * @throws UnprintableTextException if a character has no glyph in either font
   */
  static List<Run> split(String text) {
    List<Run> runs = new ArrayList<>();
    int start = 0;
    while (start < text.length()) {
      boolean roboto = inRoboto(text.codePointAt(start));
      int end = start;
      while (end < text.length() && inRoboto(text.codePointAt(end)) == roboto) {
        requirePrintable(text.codePointAt(end), text);
        end += Character.charCount(text.codePointAt(end));
      }
      runs.add(new Run(text.substring(start, end), roboto));
      start = end;
    }
    return runs;
  }

  /** Puts a text before a node, split where the font changes. */
  private void glyphs(String text, Node parent, Node before) {
    split(text).forEach(run -> parent.insertBefore(element(run), before));
  }

  private Element element(Run run) {
    Element span = run.roboto() ? document.createElement("span") : span("fallback");
    span.appendChild(document.createTextNode(run.text()));
    return span;
  }

  private void append(Element parent, String type, String text) {
    Element span = span(type);
    span.appendChild(document.createTextNode(text));
    parent.appendChild(span);
  }

  private Element span(String type) {
    Element span = document.createElement("span");
    span.setAttribute("class", type);
    return span;
  }

  private static boolean inRoboto(int codePoint) {
    if (codePoint < 0x7F) {
      return true;
    }
    return PdfFonts.REGULAR.has(codePoint)
        && PdfFonts.LIGHT.has(codePoint)
        && PdfFonts.BOLD.has(codePoint);
  }

  static boolean isPrintable(int codePoint) {
    return inRoboto(codePoint) || PdfFonts.FALLBACK.has(codePoint);
  }

  private static void requirePrintable(int codePoint, String text) {
    if (!isPrintable(codePoint)) {
      throw new UnprintableTextException(codePoint, text.strip());
    }
  }
}
