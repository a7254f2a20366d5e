package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The edition to keep, from the shell. */
class RecordEditionTest {
  private static final String PDF = "plan-set-record.pdf";

  @TempDir Path folder;

  private Map<String, byte[]> built(Path project, String edition) {
    Path out = folder.resolve("out-" + project.getFileName());
    Shell shell =
        Shell.run("build", project.toString(), "--edition", edition, "--out", out.toString());
    assertEquals(0, shell.code(), shell.toString());
    return Shell.files(out);
  }

  /** The files inside a PDF by their names, and what each is to it. */
  private static Map<String, byte[]> inside(byte[] pdf) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Map<String, PDComplexFileSpecification> all =
          new PDDocumentNameDictionary(document.getDocumentCatalog()).getEmbeddedFiles().getNames();
      for (PDComplexFileSpecification each : all.values()) {
        String name = each.getFileUnicode();
        files.put(name, each.getEmbeddedFileUnicode().toByteArray());
        String role = each.getCOSObject().getNameAsString("AFRelationship");
        assertEquals(name.equals("plan.json") ? "Data" : "Source", role);
      }
      int associated =
          document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.getPDFName("AF")).size();
      assertEquals(files.size(), associated);
    }
    return files;
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replace('\u2044', '/');
    }
  }

  /** With a photo, with further files beside the description, and with neither. */
  @ParameterizedTest
  @ValueSource(strings = {"step-stool", "sideboard"})
  void theFilesInsideMakeTheSamePlan(String name) throws IOException {
    Map<String, byte[]> first = built(Path.of("projects", name), "record");
    Map<String, byte[]> inside = inside(first.get(PDF));
    assertArrayEquals(first.get("plan.json"), inside.get("plan.json"));
    Path again = folder.resolve("again").resolve(name);
    for (Map.Entry<String, byte[]> each : inside.entrySet()) {
      if (!each.getKey().equals("plan.json")) {
        Path file = again.resolve(each.getKey());
        Files.createDirectories(file.getParent());
        Files.write(file, each.getValue());
      }
    }
    Map<String, byte[]> second = built(again, "record");
    assertArrayEquals(inside.get("plan.json"), second.get("plan.json"));
    assertArrayEquals(first.get(PDF), second.get(PDF));
  }

  @Test
  void furtherFilesLieInsideUnderTheNamesByWhichTheyAreFound() throws IOException {
    Map<String, byte[]> files = inside(built(Path.of("projects/sideboard"), "record").get(PDF));
    assertEquals("[hardware.yaml, plan.json, project.yaml, shop.yaml]", files.keySet().toString());
  }

  @Test
  void plannedStandsBesideDone() throws IOException {
    String text = text(built(Path.of("projects/step-stool"), "record").get(PDF));
    assertTrue(text.contains("The stretcher sits 1 in higher and is crowned."), text);
    assertTrue(text.contains("A yard two villages away. From one plank"), text);
    assertTrue(text.contains("Shines in spots. Not this way."), text);
    assertTrue(
        text.contains(
            "Planned: hard wax oil, 3 coats in all, over wood sanded to grit 180; on offcuts of"
                + " white ash."),
        text);
    assertTrue(text.contains("The second test piece, bare on the left"), text);
    assertTrue(text.matches("(?s).*Hardware 6\\.80 6\\.80 0\\.00.*"), text);
    assertTrue(text.matches("(?s).*Planed once more.*\u22121/32.*"), text);
  }

  /** The contents, which stand before the revisions, name all that the record has. */
  @Test
  void eachSectionOfTheRecordStandsInTheContents() throws IOException {
    String text = text(built(Path.of("projects/step-stool"), "record").get(PDF));
    String contents = text.substring(text.indexOf("Contents"), text.indexOf("What has changed"));
    for (String title :
        new String[] {
          "Hours", "Costs", "Wood and its story", "Test pieces", "Planned and made", "Photos"
        }) {
      assertTrue(contents.matches("(?s).*\\n" + title + " \\d+\\n.*"), title + " in " + contents);
    }
  }

  @Test
  void nothingRecordedLeavesLinesToFillIn() throws IOException {
    Map<String, byte[]> files = built(Path.of("projects/sewing-box"), "publish,record");
    String text = text(files.get(PDF));
    assertTrue(text.contains("What has changed") && text.contains("Verdict"), text);
    assertFalse(text.contains("Photos"), text);
    assertFalse(text(files.get("plan-set.pdf")).contains("What has changed"));
  }

  @Test
  void theEditionToSellTellsItsRevisionsAndHoldsNoFiles() throws IOException {
    byte[] pdf = built(Path.of("projects/step-stool"), "publish").get("plan-set.pdf");
    String text = text(pdf);
    assertTrue(text.contains("Revisions") && text.contains("2026-11-02"), text);
    assertFalse(text.contains("Test pieces"), text);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals(
          null,
          document
              .getDocumentCatalog()
              .getCOSObject()
              .getDictionaryObject(COSName.getPDFName("AF")));
    }
  }

  private Shell withPhoto(Path file) throws IOException {
    Path project = Files.createDirectories(folder.resolve("stool/pictures")).getParent();
    Files.copy(Path.of("projects/step-stool/project.yaml"), project.resolve("project.yaml"));
    Files.createSymbolicLink(project.resolve("pictures/test-piece.png"), file.toAbsolutePath());
    return Shell.run("check", project.toString());
  }

  @Test
  void aLinkThatLeadsOutIsNotFollowed() throws IOException {
    Path outside = folder.resolve("photo.png");
    Files.copy(Path.of("projects/step-stool/pictures/test-piece.png"), outside);
    Shell shell = withPhoto(outside);
    assertEquals(1, shell.code());
    assertTrue(shell.toString().contains("[photo-outside]"), shell.toString());
  }

  @Test
  void aLinkInsideTheFolderIsTaken() throws IOException {
    Path inside = Files.createDirectories(folder.resolve("stool")).resolve("photo.png");
    Files.copy(Path.of("projects/step-stool/pictures/test-piece.png"), inside);
    assertEquals(0, withPhoto(inside).code());
  }

  @Test
  void aFileOfManyBytesIsNotRead() throws IOException {
    Path project = Files.createDirectories(folder.resolve("stool/pictures")).getParent();
    Files.copy(Path.of("projects/step-stool/project.yaml"), project.resolve("project.yaml"));
    byte[] large = new byte[(16 << 20) + 1];
    Files.write(project.resolve("pictures/test-piece.png"), large);
    Shell shell = Shell.run("check", project.toString());
    assertTrue(shell.toString().contains("larger than 16 MiB"), shell.toString());
    assertFalse(shell.toString().contains(new String(large, 0, 4, StandardCharsets.US_ASCII)));
  }
}
