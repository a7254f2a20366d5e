package storyrod.planset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PRStream;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfLiteral;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.PdfStamper;
import org.openpdf.text.pdf.PdfTemplate;
import storyrod.words.Words;

/**
 * Copies of one PDF, each with a buyer's name and a number on every page. Nothing is laid out
 * again: the PDF shows one form on all its pages, and a copy is the PDF with that form's content
 * appended. The same stamp gives the same bytes.
 */
public final class StampedCopies {
  private static final float SIZE = 7;
  private static final float DESCENT = 2;
  private static final int STAMP_BYTES = 100_000;
  private static final PdfName LINE = new PdfName("Line");

  private final byte[] pdf;
  private final Words words;

  /**
   * @param pdf as {@link PlanSetWriter} writes it
   */
  public StampedCopies(byte[] pdf, Words words) {
    this.pdf = pdf.clone();
    this.words = words;
  }

  /**
   * A copy.
   *
   * @throws UnprintableTextException if the name holds a character that no font has
   */
  public byte[] copy(Stamp stamp) {
    String line = words.say("stamp.line", stamp.number(), stamp.name());
    ByteArrayOutputStream out = new ByteArrayOutputStream(pdf.length + STAMP_BYTES);
    try (PdfReader reader = new PdfReader(pdf)) {
      PdfStamper stamper = new PdfStamper(reader, out, null, true);
      stamper.setUpdateDocInfo(false);
      stamper.setUpdateMetadata(false);
      stamper.setOverrideFileId(identifier(line));
      fill(StampPlace.in(reader), line, stamper);
      stamper.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void fill(PRStream place, String line, PdfStamper stamper) {
    PdfDictionary forms = new PdfDictionary();
    float width = place.getAsArray(PdfName.BBOX).getAsNumber(2).floatValue();
    forms.put(LINE, form(line, width, stamper).getIndirectReference());
    PdfDictionary resources = new PdfDictionary();
    resources.put(PdfName.XOBJECT, forms);
    place.put(PdfName.RESOURCES, resources);
    place.setData((LINE + " Do").getBytes(StandardCharsets.US_ASCII));
    stamper.markUsed(place);
  }

  /** The line as a form, set narrower if it would not keep to the paper. */
  private static PdfTemplate form(String line, float width, PdfStamper stamper) {
    PdfTemplate form = PdfTemplate.createTemplate(stamper.getWriter(), width, StampPlace.HEIGHT);
    form.beginText();
    form.setTextMatrix(0, DESCENT);
    form.setHorizontalScaling(Math.min(1, width / width(line)) * 100);
    for (TextRuns.Run run : TextRuns.split(line)) {
      form.setFontAndSize(font(run), SIZE);
      form.showText(run.text());
    }
    form.endText();
    return form;
  }

  private static BaseFont font(TextRuns.Run run) {
    return (run.roboto() ? PdfFonts.REGULAR : PdfFonts.FALLBACK).font();
  }

  /** The width of a line in points at its full size. */
  private static float width(String line) {
    float width = 0;
    for (TextRuns.Run run : TextRuns.split(line)) {
      width += font(run).getWidthPoint(run.text(), SIZE);
    }
    return width;
  }

  /**
   * What stands for the copy as a file's identifier. The library takes the changing half of it, and
   * the other half from the PDF.
   */
  private PdfLiteral identifier(String line) {
    String own = Identity.hex(pdf, line.getBytes(StandardCharsets.UTF_8));
    return new PdfLiteral("[<" + own + "><" + own + ">]");
  }
}
