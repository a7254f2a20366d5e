package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stamped copies from the shell. */
class BuyersTest {
  private static final Path STOOL = Shell.PROJECTS.resolve("step-stool");

  @TempDir Path folder;

  private Shell build(String... options) {
    Path out = folder.resolve("out");
    String[] words = {"build", STOOL.toString(), "--out", out.toString()};
    String[] all = java.util.Arrays.copyOf(words, words.length + options.length);
    System.arraycopy(options, 0, all, words.length, options.length);
    return Shell.run(all);
  }

  private Shell buildFor(String list) {
    return build("--for-each", Shell.write(folder.resolve("buyers.csv"), list).toString());
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void oneCopyBesideThePlanSet() throws IOException {
    Shell shell = build("--for", "Zoë O'Neil & Søn <b>", "--number", "12");
    assertEquals(0, shell.code(), shell.err());
    Map<String, byte[]> files = Shell.files(folder.resolve("out"));
    byte[] copy = files.get("copies/0012-zoe-o-neil-s-n-b.pdf");
    assertTrue(text(copy).contains("Copy 12, for Zoë O'Neil & Søn <b>"));
    assertFalse(text(files.get("plan-set.pdf")).contains("Copy 12"));
  }

  @Test
  void aCopyForEachRowOfAList() throws IOException {
    Shell shell = buildFor("number,name\n7,Ada Miller\n,\"Shop, Ltd\"\n9,Ωμέγα\n");
    assertEquals(0, shell.code(), shell.err());
    Map<String, byte[]> files = Shell.files(folder.resolve("out/copies"));
    assertEquals(
        java.util.Set.of("0007-ada-miller.pdf", "0008-shop-ltd.pdf", "0009.pdf"), files.keySet());
    assertTrue(text(files.get("0008-shop-ltd.pdf")).contains("Copy 8, for Shop, Ltd"));
    assertTrue(text(files.get("0009.pdf")).contains("Copy 9, for Ωμέγα"));
  }

  @Test
  void theSameListGivesTheSameCopies() {
    buildFor("name\nAda Miller\n");
    Map<String, byte[]> first = Shell.files(folder.resolve("out/copies"));
    buildFor("name\nAda Miller\n");
    assertArrayEquals(
        first.get("0001-ada-miller.pdf"),
        Shell.files(folder.resolve("out/copies")).get("0001-ada-miller.pdf"));
  }

  @Test
  void aNameThatCannotBePrintedIsAFaultOfTheCommandLine() {
    assertEquals(2, build("--for", "木").code());
    assertEquals(2, build("--for", " ").code());
    assertEquals(2, build("--for", "Ada", "--number", "0").code());
    assertEquals(2, build("--for", "Ada", "--for-each", "x.csv").code());
  }
}
