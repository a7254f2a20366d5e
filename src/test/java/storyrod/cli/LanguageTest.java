package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language of a plan set, from the shell. */
class LanguageTest {
  private static final Path NIGHTSTAND = Path.of("projects/nightstand");

  @TempDir Path folder;

  private Shell build(String language) {
    return Shell.run(
        "build",
        NIGHTSTAND.toString(),
        "--templates",
        folder.resolve("templates").toString(),
        "--language",
        language,
        "--for",
        "Jo",
        "--out",
        folder.resolve("out").toString());
  }

  private void put(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  /** The nightstand with a few words and one template in a language that the tool does not have. */
  private Map<String, byte[]> builtInOwnLanguage() throws IOException {
    put(
        "templates/words/nl.properties",
        "decimal-mark=,\ngrain=vezel\nlayout.offcut-word=rest\nstamp.line=Nr {0}, {1}\n");
    put("templates/frame/foot_nl.ftl", "<div class=\"foot\">voet</div>");
    Shell shell = build("nl");
    assertEquals(0, shell.code(), shell.toString());
    return Shell.files(folder.resolve("out"));
  }

  @Test
  void pagesDrawingsAndFiguresAreInTheLanguageAskedFor() throws IOException {
    Map<String, byte[]> files = builtInOwnLanguage();
    try (PDDocument document = Loader.loadPDF(files.get("plan-set-nl.pdf"))) {
      String text = new PDFTextStripper().getText(document);
      assertEquals("nl", document.getDocumentCatalog().getLanguage());
      assertTrue(text.contains("voet"), text);
      assertTrue(text.contains("Cut list"), "what it has no words for is said in English");
      assertTrue(text.matches("(?s).*\\d,5 mm.*"), text);
    }
    String drawings =
        files.keySet().stream()
            .filter(name -> name.endsWith(".svg"))
            .map(name -> new String(files.get(name), StandardCharsets.UTF_8))
            .reduce("", String::concat);
    assertFalse(drawings.matches("(?s).*>\\d+\\.\\d+</text>.*"));
  }

  @Test
  void aLanguageWithoutWordsIsRefusedAndThoseThereAreAreNamed() throws IOException {
    Files.createDirectories(folder.resolve("templates"));
    Shell shell = build("xx");
    assertEquals(2, shell.code());
    assertTrue(shell.toString().contains("'xx': --language takes"), shell.toString());
    assertTrue(shell.toString().contains("en,"), shell.toString());
  }
}
