package storyrod.planset;

import org.openpdf.text.Document;
import org.openpdf.text.pdf.PRStream;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfPageEventHelper;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.PdfTemplate;
import org.openpdf.text.pdf.PdfWriter;

/**
 * The place for a stamp: one empty form that every page shows under its foot. What is put into it
 * later is on all pages at once.
 */
final class StampPlace extends PdfPageEventHelper {
  private static final float POINTS_PER_MM = 72 / 25.4f;
  static final float HEIGHT = 9;

  /** The lower edge of the form above that of the paper. */
  private static final float BELOW_MM = 8.8f;

  private static final float SIDE_MM = (float) Paper.A4.sideMm();

  /** A name of our own in the catalog, where the form is found (ISO 32000-1, annex E). */
  private static final PdfName NAME = new PdfName("XXStamp");

  private PdfTemplate form;

  @Override
  public void onOpenDocument(PdfWriter writer, Document document) {
    float width = document.getPageSize().getWidth() - 2 * SIDE_MM * POINTS_PER_MM;
    form = writer.getDirectContent().createTemplate(width, HEIGHT);
    writer.getExtraCatalog().put(NAME, form.getIndirectReference());
  }

  @Override
  public void onEndPage(PdfWriter writer, Document document) {
    writer.getDirectContent().addTemplate(form, SIDE_MM * POINTS_PER_MM, BELOW_MM * POINTS_PER_MM);
  }

  /** The place for a stamp in a PDF that was written with one. */
  static PRStream in(PdfReader reader) {
    return (PRStream) reader.getCatalog().getDirectObject(NAME);
  }
}
