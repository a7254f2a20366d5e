package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A board glued up from a number of staves that is said. The pieces are invented. */
class StavesTest {
  private static final String BOARD =
      """
      project: Board
      units: mm
      sizes: {depth: 380, widest: 100}
      stock:
        oak: {kind: solid, species: "oak, European", thickness: 20, bought-as: 27}
      shop: {extra-length: 25, extra-width: 6, planer-width: 300}
      parts:
        board:
          stock: oak
          staves: STAVES
          x: 0 to 900
          y: 0 to depth
          z: 0 to 20
          grain: x
      """;

  @TempDir Path folder;

  private Map<String, String> row(String staves) {
    byte[] list = built(staves).get("cut-list.csv");
    return Rows.of(list).getFirst();
  }

  private Map<String, byte[]> built(String staves) {
    Path project = folder.resolve("board");
    Shell.write(project.resolve("project.yaml"), BOARD.replace("STAVES", staves));
    return Shell.built(project, folder.resolve("out"));
  }

  private static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void roughSizeIsThatOfOneStave() {
    // 380 mm and 6 mm to rip off the panel in 4 staves are 96.5 mm each; 6 mm more to joint them
    Map<String, String> row = row("round-up(depth / widest)");
    assertEquals("380", row.get("width"));
    assertEquals("102.5", row.get("rough_width"));
    assertEquals("glued up from 4 staves of the rough size", row.get("note"));
  }

  @Test
  void stepSaysHowManyStavesAndHowWide() {
    String text = text(built("5").get("plan-set.pdf"));
    assertTrue(text.contains("Saw five staves for the board (A) to the rough size"), () -> text);
    assertTrue(text.contains("jointed, each must still be at least 77.2 mm wide"), () -> text);
  }

  @Test
  void ringsOfStavesLieInTurnUnlessTheMakerMatchesThem() {
    String text = text(built("4").get("plan-set.pdf"));
    assertTrue(
        text.contains("4 staves 925 × 96.5 × 20 925 × 386 × 20 up and down in turn"),
        () -> text.substring(text.indexOf("Glue-ups")));
    assertTrue(
        text.contains("Turn every second board of"),
        () -> text.substring(text.indexOf("Glue-ups")));
    String matched = text(built("4\n    staves-laid: matched").get("plan-set.pdf"));
    assertTrue(matched.contains("matched by looks"), () -> matched);
    assertFalse(matched.contains("Turn every second board"), () -> matched);
  }

  /** 380 mm and 6 mm to rip off, as the cut list asks for in the rough. */
  @Test
  void panelOfWhateverBoardsGiveIsGluedUpToItsRoughSize() {
    Path project = folder.resolve("board");
    Shell.write(project.resolve("project.yaml"), BOARD.replace("    staves: STAVES\n", ""));
    Map<String, byte[]> files = Shell.built(project, folder.resolve("out"));
    Map<String, String> row = Rows.of(files.get("cut-list.csv")).getFirst();
    assertEquals("386", row.get("rough_width"));
    assertEquals("925", row.get("rough_length"));
    String text = text(files.get("plan-set.pdf"));
    assertTrue(
        text.contains("staves as boards give 925 × any × 20 925 × 386 × 20"),
        () -> text.substring(text.indexOf("Glue-ups")));
  }

  @Test
  void oneStaveIsABoardAndNoGlueUp() {
    Map<String, String> row = row("1");
    assertEquals("386", row.get("rough_width"));
    assertEquals("", row.get("note"));
    assertFalse(text(built("1").get("plan-set.pdf")).contains("Glue up the boards"));
  }
}
