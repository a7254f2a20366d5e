package storyrod.planset;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Nothing in the file tells on which machine, by whom and when it was made. */
final class TraceChecks {
  private TraceChecks() {}

  static List<String> traces(FinishedPdf pdf) throws IOException {
    List<String> faults = new ArrayList<>();
    try (PDDocument document = PdfText.open(pdf.bytes())) {
      addPaths(new String(pdf.bytes(), StandardCharsets.ISO_8859_1), faults);
      for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
        if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSStream stream) {
          byte[] bytes = stream.createInputStream().readAllBytes();
          addPaths(new String(bytes, StandardCharsets.ISO_8859_1), faults);
        }
      }
      addInfo(document, pdf, faults);
    }
    return faults;
  }

  private static void addPaths(String text, List<String> faults) {
    Stream.of(
            System.getProperty("user.home") + "/",
            System.getProperty("java.home"),
            Path.of("").toAbsolutePath().toString(),
            "file:")
        .filter(text::contains)
        .forEach(faults::add);
  }

  /** The only time in the file is the day that the project states. */
  private static void addInfo(PDDocument document, FinishedPdf pdf, List<String> faults) {
    var info = document.getDocumentInformation();
    for (String key : info.getMetadataKeys()) {
      String value = info.getCustomMetadataValue(key);
      String user = System.getProperty("user.name");
      if (!key.equals("CreationDate") && value.matches(".*\\b\\Q" + user + "\\E\\b.*")) {
        faults.add(key + ": " + value);
      }
    }
    Optional<LocalDate> date = pdf.set().piece().description().about().date();
    if (!Optional.ofNullable(info.getCreationDate()).map(TraceChecks::day).equals(date)) {
      faults.add("made at " + info.getCreationDate());
    }
    if (info.getModificationDate() != null) {
      faults.add("changed at " + info.getModificationDate());
    }
  }

  private static LocalDate day(Calendar calendar) {
    if (calendar.get(Calendar.HOUR_OF_DAY) + calendar.get(Calendar.MINUTE) != 0) {
      throw new AssertionError("a time of day: " + calendar.getTime());
    }
    return LocalDate.of(
        calendar.get(Calendar.YEAR),
        calendar.get(Calendar.MONTH) + 1,
        calendar.get(Calendar.DAY_OF_MONTH));
  }
}
