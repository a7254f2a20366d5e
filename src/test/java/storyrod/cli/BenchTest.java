package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bench from the shell, all its files read back by other readers than ours. */
class BenchTest {
  @TempDir static Path folder;
  private static Shell shell;
  private static Map<String, byte[]> files;
  private static JsonNode plan;

  @BeforeAll
  static void build() {
    shell = Shell.build(Shell.BENCH, folder);
    files = Shell.files(folder);
    plan = JsonMapper.shared().readTree(files.get("plan.json"));
  }

  @Test
  void buildSucceedsAndSaysWhereThePlanSetIs() {
    assertEquals(0, shell.code(), shell.err());
    assertTrue(shell.out().contains("plan-set.pdf"), shell.out());
  }

  @Test
  void thereIsADrawingForEachMarkAndNoFileMore() {
    Set<String> expected =
        new TreeSet<>(
            List.of(
                "plan-set.pdf",
                "drawings/exploded.svg",
                "drawings/exploded-drawer.svg",
                "drawings/exploded-frame.svg",
                "drawings/exploded-left-shelf.svg",
                "drawings/general-front.svg",
                "drawings/general-side-section.svg",
                "drawings/exploded-hardware.svg",
                "drawings/cover.svg",
                "drawings/general-drawer.svg",
                "drawings/template-A.svg",
                "drawings/template-C.svg",
                "cut-list.csv",
                "hardware.csv",
                "shopping.csv",
                "steps.csv",
                "labels.csv",
                "plan.json"));
    each("parts").forEach(part -> expected.add("drawings/part-" + word(part, "mark") + ".svg"));
    assertEquals(expected, files.keySet());
  }

  @Test
  void thereAreAtLeastTwentyFiveParts() {
    assertTrue(each("parts").stream().mapToInt(part -> number(part, "count")).sum() >= 25);
  }

  @Test
  void everyPartHasItsFields() {
    for (JsonNode part : each("parts")) {
      require(part, "name", "mark", "count", "stock", "volume_mm3", "cuts");
      for (String size : List.of("length", "width", "thickness")) {
        assertTrue(part.get(size).get("um").isIntegralNumber(), part::toString);
        assertTrue(part.get(size).get("printed").isString(), part::toString);
      }
      assertTrue(part.get("volume_mm3").doubleValue() > 0, part::toString);
      assertTrue(part.get("cuts").isArray(), part::toString);
    }
  }

  @Test
  void everythingElseHasItsFields() {
    each("joints").forEach(joint -> require(joint, "type", "first", "second"));
    each("hardware").forEach(item -> require(item, "item", "count"));
    each("findings")
        .forEach(f -> require(f, "code", "severity", "file", "line", "column", "message"));
    each("steps")
        .forEach(
            step ->
                require(step, "number", "stage", "title", "parts", "hardware", "minutes", "waits"));
    each("layouts").forEach(layout -> require(layout, "stock", "pieces_used", "lower_bound"));
  }

  @Test
  void noLayoutUsesFewerSheetsThanItsLowerBound() {
    for (JsonNode layout : each("layouts")) {
      assertEquals(layout.get("sheets").size(), number(layout, "pieces_used"));
      assertTrue(number(layout, "pieces_used") >= number(layout, "lower_bound"));
    }
  }

  @Test
  void cutListCountsThePartsOfThePlan() {
    Map<String, Integer> listed = new TreeMap<>();
    Rows.of(files.get("cut-list.csv"))
        .forEach(row -> listed.put(row.get("mark"), Integer.valueOf(row.get("count"))));
    Map<String, Integer> planned = new TreeMap<>();
    each("parts").forEach(part -> planned.put(word(part, "mark"), number(part, "count")));
    assertEquals(planned, listed);
  }

  @Test
  void everyPartIsNamedOnceAndByAName() {
    List<String> names =
        each("parts").stream()
            .flatMap(part -> part.get("names").valueStream())
            .map(JsonNode::asString)
            .toList();
    assertEquals(names.size(), Set.copyOf(names).size());
    assertEquals(
        each("parts").stream().mapToInt(part -> number(part, "count")).sum(), names.size());
  }

  @Test
  void sheetPartsLieOnTheLayoutsOnce() {
    Map<String, Integer> placed = new TreeMap<>();
    each("layouts").stream()
        .flatMap(layout -> layout.get("sheets").valueStream())
        .flatMap(sheet -> sheet.get("placed").valueStream())
        .forEach(piece -> placed.merge(word(piece, "mark"), 1, Integer::sum));
    Set<String> sheets =
        each("layouts").stream().map(each -> word(each, "stock")).collect(Collectors.toSet());
    Map<String, Integer> expected = new TreeMap<>();
    each("parts").stream()
        .filter(part -> sheets.contains(word(part, "stock")))
        .forEach(part -> expected.put(word(part, "mark"), number(part, "count")));
    assertEquals(expected, placed);
  }

  private static final Pattern COUNTED = Pattern.compile("(\\d+) (.+)");

  @Test
  void stepsUseUpTheHardwareToTheLastScrew() {
    Map<String, Integer> used = new TreeMap<>();
    for (Map<String, String> step : Rows.of(files.get("steps.csv"))) {
      for (String item : step.get("hardware").split("; ")) {
        Matcher counted = COUNTED.matcher(item);
        if (counted.matches()) {
          used.merge(counted.group(2), Integer.valueOf(counted.group(1)), Integer::sum);
        }
      }
    }
    Map<String, Integer> bought = new TreeMap<>();
    Rows.of(files.get("hardware.csv"))
        .forEach(row -> bought.put(row.get("item"), Integer.valueOf(row.get("count"))));
    assertEquals(bought, used);
  }

  @Test
  void cutListInThePdfReadsAsTheCutListInTheCsv() throws IOException {
    String pages = spaceless(pdfText());
    for (Map<String, String> row : Rows.of(files.get("cut-list.csv"))) {
      String printed =
          String.join(
              " ",
              row.get("mark"),
              row.get("part"),
              printedCount(row),
              printedSize(row, "length"),
              printedSize(row, "width"),
              printedSize(row, "thickness"),
              printedSize(row, "rough_length"),
              printedSize(row, "rough_width"),
              printedSize(row, "rough_thickness"),
              row.get("stock"),
              row.get("grain"));
      assertTrue(pages.contains(spaceless(printed)), printed);
    }
  }

  /** The list writes 0 3/4, so that no spreadsheet takes it for a day. */
  private static String printedSize(Map<String, String> row, String column) {
    return row.get(column).replaceFirst("^0 (?=\\d+/)", "");
  }

  @Test
  void everyDrawingIsXmlAndNamesItsPart() throws Exception {
    for (JsonNode part : each("parts")) {
      String mark = word(part, "mark");
      assertTrue(texts("drawings/part-" + mark + ".svg").contains(mark), mark);
    }
  }

  @Test
  void explodedViewNamesEveryMark() throws Exception {
    List<String> texts = new ArrayList<>();
    for (String file : files.keySet()) {
      if (file.startsWith("drawings/exploded")) {
        texts.addAll(texts(file));
      }
    }
    each("parts").forEach(part -> assertTrue(texts.contains(word(part, "mark")), part::toString));
  }

  // ISO 5455 clause 4: 1:1, 1:2, 1:5, 1:10, 1:20, 1:50, 1:100. Scales of US practice for inches:
  // 1/4 to the inch is 1:4, 1 1/2 in to the foot 1:8, 1 in 1:12, 3/4 in 1:16.
  private static final Set<String> SCALES =
      Set.of("1:1", "1:2", "1:4", "1:5", "1:8", "1:10", "1:12", "1:16", "1:20", "1:50", "1:100");

  @Test
  void partsAreDrawnToScalesThatARuleHas() throws IOException {
    List<String> scales =
        Pattern.compile("(?<![\\d:])\\d+:\\d+(?![\\d:])")
            .matcher(pdfText())
            .results()
            .map(found -> found.group())
            .toList();
    assertTrue(scales.size() >= each("parts").size(), scales::toString);
    scales.forEach(scale -> assertTrue(SCALES.contains(scale), scale));
  }

  @Test
  void nothingOfThisMachineIsInTheFiles() {
    String home = System.getProperty("user.dir");
    files.forEach(
        (name, bytes) ->
            assertFalse(
                new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).contains(home),
                name));
  }

  private static String pdfText() throws IOException {
    try (PDDocument document = Loader.loadPDF(files.get("plan-set.pdf"))) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static String spaceless(String text) {
    return text.replaceAll("\\s", "");
  }

  private static List<String> texts(String name)
      throws ParserConfigurationException, SAXException, IOException {
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(files.get(name)));
    NodeList texts = document.getElementsByTagName("text");
    return java.util.stream.IntStream.range(0, texts.getLength())
        .mapToObj(i -> texts.item(i).getTextContent().strip())
        .toList();
  }

  private static List<JsonNode> each(String list) {
    return plan.get(list).valueStream().toList();
  }

  private static String word(JsonNode node, String key) {
    return node.get(key).asString();
  }

  private static int number(JsonNode node, String key) {
    return node.get(key).intValue();
  }

  /** Where left and right differ, the page tells how many of each. */
  private static String printedCount(Map<String, String> row) {
    return row.get("handed").isEmpty() ? row.get("count") : row.get("handed");
  }

  private static void require(JsonNode node, String... keys) {
    for (String key : keys) {
      assertTrue(node.hasNonNull(key), () -> key + " is missing in " + node);
    }
  }
}
