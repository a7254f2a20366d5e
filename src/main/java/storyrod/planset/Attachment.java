package storyrod.planset;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfFileSpecification;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfWriter;

/**
 * A file inside the PDF (ISO 32000-2, 7.11 and 14.13).
 *
 * @param name its path from the project's folder, with slashes
 * @param type its media type
 * @param relationship what it is to the plan set: {@code Source} or {@code Data}
 * @param says what a reader shows beside its name
 */
record Attachment(String name, String type, String relationship, String says, byte[] bytes) {
  private static final PdfName RELATIONSHIP = new PdfName("AFRelationship");

  /** Puts files into a PDF, to be found by name and from the document as a whole. */
  static void attach(List<Attachment> all, PdfWriter writer) {
    PdfArray associated = new PdfArray();
    for (Attachment each : all) {
      associated.add(each.attach(writer));
    }
    if (!all.isEmpty()) {
      writer.getExtraCatalog().put(PdfName.AF, associated);
    }
  }

  private org.openpdf.text.pdf.PdfIndirectReference attach(PdfWriter writer) {
    try {
      PdfFileSpecification file =
          PdfFileSpecification.fileEmbedded(
              writer, name, name, bytes, type, new PdfDictionary(), PdfStream.DEFAULT_COMPRESSION);
      file.setUnicodeFileName(name, true);
      file.addDescription(says, true);
      file.put(RELATIONSHIP, new PdfName(relationship));
      writer.addFileAttachment(name, file);
      return file.getReference();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
