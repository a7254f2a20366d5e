package storyrod.planset;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openpdf.pdf.ITextOutputDevice;
import org.openpdf.pdf.ITextRenderer;
import org.openpdf.pdf.PDFCreationListener;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.util.XRLog;
import org.w3c.dom.Document;
import storyrod.drawing.Drawing;

/** Lays out XHTML as a PDF; the same text and drawings give the same bytes. */
final class PdfPages {
  private static final float DOTS_PER_POINT = 80f / 3f;
  private static final int DOTS_PER_PIXEL = 20;
  private static final int TRAILER = 1024;
  private static final Pattern IDENTIFIER =
      Pattern.compile("/ID ?\\[<(\\p{XDigit}{32})> ?<(\\p{XDigit}{32})>\\]");

  static {
    XRLog.setLoggingEnabled(false);
  }

  private PdfPages() {}

  /**
   * What a PDF says of itself.
   *
   * @param author empty if it has none
   * @param date becomes its creation date
   * @param files what lies inside it
   */
  record About(
      String title,
      String author,
      String language,
      Optional<LocalDate> date,
      List<Attachment> files) {
    About {
      files = List.copyOf(files);
    }

    /** Of a PDF without files inside it. */
    About(String title, String author, String language, Optional<LocalDate> date) {
      this(title, author, language, date, List.of());
    }
  }

  static byte[] write(String xhtml, Map<String, Drawing> drawings, About about) {
    return write(Xhtml.parse(xhtml), drawings, about);
  }

  static byte[] write(Document document, Map<String, Drawing> drawings, About about) {
    return write(document, new Pictures(drawings, Map.of()), about);
  }

  static byte[] write(Document document, Pictures pictures, About about) {
    return writer(document, pictures, about).get();
  }

  /**
   * What writes the pages.
   *
   * @throws UnprintableTextException now and not when it writes
   */
  static Supplier<byte[]> writer(Document document, Pictures pictures, About about) {
    TextRuns.prepare(document);
    return () -> laidOut(document, pictures, about);
  }

  private static byte[] laidOut(Document document, Pictures pictures, About about) {
    ITextRenderer renderer = renderer(pictures);
    renderer.setListener(new Imprint(about));
    renderer.setDocument(document, "");
    renderer.layout();
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
    renderer.createPDF(out);
    return identified(out.toByteArray());
  }

  /** Puts a file identifier that stands for the content where the writer put a random one. */
  private static byte[] identified(byte[] pdf) {
    int from = Math.max(0, pdf.length - TRAILER);
    String end = new String(pdf, from, pdf.length - from, StandardCharsets.ISO_8859_1);
    Matcher found = IDENTIFIER.matcher(end);
    if (!found.find()) {
      throw new IllegalStateException("bug: the PDF has no identifier where it is looked for");
    }
    byte[] before = Arrays.copyOf(pdf, from + found.start(1));
    byte[] hex = Identity.hex(before).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(hex, 0, pdf, from + found.start(1), hex.length);
    System.arraycopy(hex, 0, pdf, from + found.start(2), hex.length);
    return pdf;
  }

  private static ITextRenderer renderer(Pictures pictures) {
    ITextOutputDevice device = new ITextOutputDevice(DOTS_PER_POINT);
    ClosedUserAgent agent = new ClosedUserAgent(device, DOTS_PER_PIXEL);
    ITextRenderer renderer =
        new ITextRenderer(DOTS_PER_POINT, DOTS_PER_PIXEL, device, agent, new FontChoice());
    renderer.getSharedContext().setReplacedElementFactory(new DrawingElements(pictures));
    return renderer;
  }

  /** Writes the document's own data, and takes out what would differ from run to run. */
  private record Imprint(About about) implements PDFCreationListener {
    @Override
    public void preOpen(ITextRenderer renderer) {
      renderer.getWriter().setPageEvent(new StampPlace());
    }

    @Override
    public void preWrite(ITextRenderer renderer, int pages) {}

    @Override
    public void onClose(ITextRenderer renderer) {
      Attachment.attach(about.files(), renderer.getWriter());
      PdfDictionary info = renderer.getWriter().getInfo();
      info.remove(PdfName.CREATIONDATE);
      info.remove(PdfName.MODDATE);
      info.remove(PdfName.CREATOR);
      info.put(PdfName.TITLE, text(about.title()));
      if (!about.author().isEmpty()) {
        info.put(PdfName.AUTHOR, text(about.author()));
      }
      about
          .date()
          .map(date -> "D:" + DateTimeFormatter.BASIC_ISO_DATE.format(date) + "000000Z")
          .ifPresent(date -> info.put(PdfName.CREATIONDATE, new PdfString(date)));
      renderer.getWriter().getExtraCatalog().put(PdfName.LANG, new PdfString(about.language()));
    }

    private static PdfString text(String value) {
      return new PdfString(value, PdfObject.TEXT_UNICODE);
    }
  }
}
