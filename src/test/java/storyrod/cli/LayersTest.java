package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A thick top glued up face to face, of staves or of single boards. The piece is invented. */
class LayersTest {
  private static final String TOP =
      """
      project: Top
      units: mm
      stock:
        oak: {kind: solid, species: "oak, European", thickness: 60, bought-as: 27, boards: 2400 x 250}
      glue: {product: PVA wood glue, kind: pva}
      shop: {extra-length: 25, extra-width: 6, planer-width: 300}
      parts:
        top:
          stock: oak
          layers: 3
          staves: STAVES
          x: 0 to 900
          y: 0 to 120
          z: 0 to 60
          grain: x
      """;

  @TempDir Path folder;

  private Map<String, byte[]> built(String staves) {
    Path project = folder.resolve("top");
    Shell.write(project.resolve("project.yaml"), TOP.replace("STAVES", staves));
    return Shell.built(project, folder.resolve("out"));
  }

  private static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode plan(Map<String, byte[]> files) {
    return JsonMapper.shared().readTree(files.get("plan.json"));
  }

  private static long laidOut(JsonNode plan) {
    return StreamSupport.stream(plan.get("layouts").get(0).get("sheets").spliterator(), false)
        .mapToLong(sheet -> sheet.get("placed").size())
        .sum();
  }

  @Test
  void everyLayerIsSawnFromAThinnerBoard() {
    // 120 mm and 6 mm to rip off what is glued up, and 6 mm more to joint each board.
    Map<String, byte[]> files = built("1");
    Map<String, String> row = Rows.of(files.get("cut-list.csv")).getFirst();
    assertEquals("132", row.get("rough_width"));
    assertEquals("27", row.get("rough_thickness"));
    assertEquals("glued up from 3 layers of the rough size", row.get("note"));
    assertEquals(3, laidOut(plan(files)));
  }

  @Test
  void layersOfStavesAreBlanksOfTheirOwn() {
    Map<String, byte[]> files = built("2");
    Map<String, String> row = Rows.of(files.get("cut-list.csv")).getFirst();
    assertEquals("69", row.get("rough_width"));
    assertEquals("glued up from 3 layers of 2 staves of the rough size", row.get("note"));
    assertEquals(6, laidOut(plan(files)));
  }

  @Test
  void glueCoversTheFacesOfLayersAndTheEdgesOfStaves() {
    // Two faces of 900 x 120 mm and, in each layer, one seam of 900 x 60 / 3 mm.
    assertEquals(0.216 + 0.054, glued(built("2")), 0.001);
    assertEquals(0.216, glued(built("1")), 0.001);
  }

  private static double glued(Map<String, byte[]> files) {
    return plan(files).get("supplies").get(0).get("square_metres").asDouble();
  }

  @Test
  void planTellsEveryGlueUpAndTheStepSaysHow() {
    Map<String, byte[]> files = built("1");
    JsonNode glueUp = plan(files).get("glue_ups").get(0);
    assertEquals(3, glueUp.get("layers").asInt());
    assertEquals(20_000, glueUp.get("board_thickness_um").asInt());
    assertEquals(126_000, glueUp.get("width_um").asInt());
    String text = text(files.get("plan-set.pdf"));
    assertTrue(text.contains("from three layers, at least 20 mm thick when planed"), () -> text);
    assertTrue(text.contains("3 layers 925 × 126 × 20 925 × 126 × 60 heart sides out"), () -> text);
  }
}
