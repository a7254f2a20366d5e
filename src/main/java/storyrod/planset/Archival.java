package storyrod.planset;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/**
 * What makes a PDF one to keep: what its colours are, and what it says of itself as XMP. With files
 * inside it is PDF/A-3 (ISO 19005-3), else PDF/A-2 (ISO 19005-2), its texts readable as Unicode.
 */
record Archival(PdfPages.About about) {
  private static final String SRGB = "sRGB";
  private static final String XMP =
      """
      <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
      <x:xmpmeta xmlns:x="adobe:ns:meta/">
      <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
      <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
       xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
      <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
      <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>%s%s
      <pdfaid:part>%d</pdfaid:part><pdfaid:conformance>U</pdfaid:conformance>
      </rdf:Description></rdf:RDF></x:xmpmeta>
      <?xpacket end="r"?>""";

  void addTo(PdfWriter writer) {
    writer.setXmpMetadata(xmp().getBytes(StandardCharsets.UTF_8));
    writer.getExtraCatalog().put(new PdfName("OutputIntents"), new PdfArray(intent(writer)));
  }

  private String xmp() {
    return XMP.formatted(
        escaped(about.title()),
        escaped(about.language()),
        author(),
        about.date().map(Archival::created).orElse(""),
        about.files().isEmpty() ? 2 : 3);
  }

  private String author() {
    return Optional.of(about.author())
        .filter(author -> !author.isEmpty())
        .map(
            author ->
                "\n<dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>"
                    .formatted(escaped(author)))
        .orElse("");
  }

  private static String created(LocalDate date) {
    return "\n<xmp:CreateDate>%sT00:00:00Z</xmp:CreateDate>".formatted(date);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static PdfDictionary intent(PdfWriter writer) {
    try {
      PdfStream profile = new PdfStream(SrgbProfile.bytes());
      profile.put(PdfName.N, new PdfNumber(3));
      profile.flateCompress();
      PdfDictionary intent = new PdfDictionary(new PdfName("OutputIntent"));
      intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
      intent.put(new PdfName("OutputConditionIdentifier"), new PdfString(SRGB));
      intent.put(new PdfName("Info"), new PdfString(SRGB));
      intent.put(
          new PdfName("DestOutputProfile"), writer.addToBody(profile).getIndirectReference());
      return intent;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
