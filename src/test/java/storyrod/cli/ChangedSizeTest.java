package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bench four inches shorter: what hangs on its width follows, and nothing else. */
class ChangedSizeTest {
  private static final long FOUR_INCHES = 101_600;

  // The bays keep their width, so the drawer between them takes the four inches up.
  private static final List<String> SHORTER =
      List.of(
          "bottom",
          "front-stretcher",
          "back",
          "top",
          "frame.top-rail",
          "frame.bottom-rail",
          "drawer.box-front",
          "drawer.box-back",
          "drawer.panel",
          "drawer.face");

  @TempDir static Path folder;
  private static Map<String, byte[]> wide;
  private static Map<String, byte[]> narrow;

  @BeforeAll
  static void build() {
    Path project = folder.resolve("bench/project.yaml");
    Shell.write(project, Shell.bench("width: 54 ", "width: 54 "));
    wide = Shell.built(project, folder.resolve("wide"));
    Shell.write(project, Shell.bench("width: 54 ", "width: 50 "));
    narrow = Shell.built(project, folder.resolve("narrow"));
  }

  @Test
  void lengthsThatHangOnItShrinkByFourInches() {
    Map<String, Long> before = lengths(wide);
    Map<String, Long> expected = new LinkedHashMap<>(before);
    SHORTER.forEach(name -> expected.merge(name, -FOUR_INCHES, Long::sum));
    assertTrue(before.keySet().containsAll(SHORTER));
    assertEquals(expected, lengths(narrow));
  }

  @Test
  void otherSizesStay() {
    assertEquals(sizes(wide, "width"), sizes(narrow, "width"));
    assertEquals(sizes(wide, "thickness"), sizes(narrow, "thickness"));
  }

  @Test
  void cutListFollows() {
    assertEquals("54", finished(wide, "Top"));
    assertEquals("50", finished(narrow, "Top"));
    // 50 - 2 x 3/4 over, - 2 x 23/32 of the sides, + 2 x 5/16 in the dados
    assertEquals("47 11/16", finished(narrow, "Bottom"));
  }

  @Test
  void onlyDrawingsOfPartsThatChangedChange() {
    for (JsonNode part : parts(narrow)) {
      String name = part.get("name").asString();
      String file = "drawings/part-" + part.get("mark").asString() + ".svg";
      boolean same = Arrays.equals(wide.get(file), narrow.get(file));
      assertEquals(!SHORTER.contains(name), same, name);
    }
    assertFalse(
        Arrays.equals(wide.get("drawings/exploded.svg"), narrow.get("drawings/exploded.svg")));
  }

  @Test
  void printedPlanForgetsTheOldLength() throws IOException {
    assertTrue(text(wide).contains("54 × 17 1/2 × 18 1/2 in"));
    assertTrue(text(narrow).contains("50 × 17 1/2 × 18 1/2 in"));
    assertFalse(text(narrow).contains("54 × "));
    assertFalse(text(narrow).contains("51 23/32"));
  }

  @Test
  void layoutsPlaceTheShorterParts() {
    assertEquals(placed(wide, "bottom") - FOUR_INCHES, placed(narrow, "bottom"));
    assertEquals(placed(wide, "back") - FOUR_INCHES, placed(narrow, "back"));
  }

  @Test
  void stepsStayInTheirStagesAndTakeNoLonger() {
    assertEquals(stages(wide), stages(narrow));
    assertTrue(minutes(narrow) <= minutes(wide));
  }

  private static List<String> stages(Map<String, byte[]> files) {
    return Rows.of(files.get("steps.csv")).stream().map(row -> row.get("stage")).toList();
  }

  private static int minutes(Map<String, byte[]> files) {
    return Rows.of(files.get("steps.csv")).stream()
        .mapToInt(row -> Integer.parseInt(row.get("minutes")))
        .sum();
  }

  private static List<JsonNode> parts(Map<String, byte[]> files) {
    return JsonMapper.shared().readTree(files.get("plan.json")).get("parts").valueStream().toList();
  }

  private static Map<String, Long> lengths(Map<String, byte[]> files) {
    return sizes(files, "length");
  }

  private static Map<String, Long> sizes(Map<String, byte[]> files, String size) {
    Map<String, Long> sizes = new LinkedHashMap<>();
    parts(files)
        .forEach(
            part -> sizes.put(part.get("name").asString(), part.get(size).get("um").longValue()));
    return sizes;
  }

  private static String finished(Map<String, byte[]> files, String part) {
    return Rows.of(files.get("cut-list.csv")).stream()
        .filter(row -> row.get("part").equals(part))
        .map(row -> row.get("length"))
        .findFirst()
        .orElseThrow();
  }

  private static long placed(Map<String, byte[]> files, String part) {
    return JsonMapper.shared()
        .readTree(files.get("plan.json"))
        .get("layouts")
        .valueStream()
        .flatMap(layout -> layout.get("sheets").valueStream())
        .flatMap(sheet -> sheet.get("placed").valueStream())
        .filter(piece -> piece.get("part").asString().equals(part))
        .mapToLong(
            piece ->
                Math.max(piece.get("length_um").longValue(), piece.get("width_um").longValue()))
        .findFirst()
        .orElseThrow();
  }

  private static String text(Map<String, byte[]> files) throws IOException {
    try (PDDocument document = Loader.loadPDF(files.get("plan-set.pdf"))) {
      return new PDFTextStripper().getText(document);
    }
  }
}
