package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.drawing.AllProjects;
import storyrod.piece.HardwareUse;
import storyrod.words.Words;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** The lists of all projects, read back by a CSV reader that the writer knows nothing of. */
class SpreadsheetListsTest {
  private static final List<String> LISTS =
      List.of("cut-list.csv", "hardware.csv", "shopping.csv", "steps.csv", "labels.csv");

  private static final byte[] UTF_8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  /** What spreadsheets read as a day, such as 3/4 or 1-2. */
  private static final String DATE = "\\d{1,4}[/-]\\d{1,4}([/-]\\d{1,4})?";

  private static List<Map<String, String>> rows(byte[] csv) {
    CsvSchema header = CsvSchema.emptySchema().withHeader();
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper().readerForMapOf(String.class).with(header).readValues(csv)) {
      return rows.readAll();
    }
  }

  private static Map<String, List<Map<String, String>>> lists(AllProjects.Sample project) {
    Map<String, byte[]> files = new PlanSetWriter(Words.ENGLISH).write(project.set());
    Map<String, List<Map<String, String>>> lists = new LinkedHashMap<>();
    LISTS.forEach(name -> lists.put(name, rows(files.get(name))));
    return lists;
  }

  @TestFactory
  List<DynamicTest> eachListOpensWithItsLettersNumbersAndNoTraceOfTheMachine() {
    return AllProjects.each(
        project -> {
          Map<String, byte[]> files = new PlanSetWriter(Words.ENGLISH).write(project.set());
          for (String name : LISTS) {
            byte[] csv = files.get(name);
            assertArrayEquals(UTF_8_MARK, Arrays.copyOf(csv, 3), name);
            rows(csv).forEach(row -> row.values().forEach(SpreadsheetListsTest::assertNoDate));
          }
          files.keySet().stream()
              .filter(name -> !name.endsWith(".pdf"))
              .forEach(name -> assertNoTrace(new String(files.get(name), StandardCharsets.UTF_8)));
        });
  }

  private static void assertNoDate(String cell) {
    assertFalse(cell.matches(DATE), () -> "a spreadsheet reads a day: " + cell);
  }

  private static void assertNoTrace(String text) {
    for (String key : List.of("user.dir", "user.home", "java.io.tmpdir", "java.home")) {
      String path = System.getProperty(key);
      assertFalse(text.contains(path + "/") || text.contains("\"" + path), () -> key + ": " + path);
    }
    assertFalse(text.contains(System.getProperty("java.version")));
  }

  @TestFactory
  List<DynamicTest> everyPieceOfWoodHasALabelOfItsOwn() {
    return AllProjects.each(
        project -> {
          Map<String, List<Map<String, String>>> lists = lists(project);
          Map<String, List<Map<String, String>>> labels =
              lists.get("labels.csv").stream()
                  .collect(
                      Collectors.groupingBy(
                          row -> row.get("mark"), TreeMap::new, Collectors.toList()));
          for (Map<String, String> row : lists.get("cut-list.csv")) {
            assertLabels(row, labels.remove(row.get("mark")));
          }
          assertEquals(Map.of(), labels, "labels of no mark");
        });
  }

  private static void assertLabels(Map<String, String> row, List<Map<String, String>> labels) {
    assertEquals(
        IntStream.rangeClosed(1, Integer.parseInt(row.get("count"))).boxed().toList(),
        labels.stream().map(each -> Integer.valueOf(each.get("number"))).toList());
    for (Map<String, String> label : labels) {
      List.of("length", "width", "thickness", "stock", "grain")
          .forEach(key -> assertEquals(row.get(key), label.get(key), key));
      assertEquals(row.get("part"), label.get("name"));
      assertEquals(row.get("count"), label.get("of"));
    }
    String hands = row.get("handed");
    long mirrored = labels.stream().filter(each -> !each.get("hand").isEmpty()).count();
    assertEquals(
        hands.isEmpty() ? 0 : Long.parseLong(hands.replaceFirst(".*\\+ ", "")), mirrored, hands);
  }

  @TestFactory
  List<DynamicTest> eachLabelNamesTheStepThatBringsItsPiece() {
    return AllProjects.each(
        project -> {
          Map<String, List<Map<String, String>>> lists = lists(project);
          Map<String, Map<String, String>> steps = new TreeMap<>();
          lists.get("steps.csv").forEach(row -> steps.put(row.get("number"), row));
          for (Map<String, String> label : lists.get("labels.csv")) {
            String parts = steps.get(label.get("first_step")).get("parts");
            assertTrue(
                List.of(parts.split(" ")).contains(label.get("mark")), () -> label + ": " + parts);
          }
          Set<String> faces = Set.of("", "left", "right", "front", "back", "underside", "top");
          lists
              .get("labels.csv")
              .forEach(
                  label -> assertTrue(faces.contains(label.get("show_face")), label::toString));
        });
  }

  @TestFactory
  List<DynamicTest> hardwareIsBoughtAsOftenAsItIsUsed() {
    return AllProjects.each(
        project -> {
          Map<String, List<Map<String, String>>> lists = lists(project);
          List<String> needed =
              lists.get("shopping.csv").stream()
                  .filter(row -> row.get("list").equals("Hardware"))
                  .map(row -> row.get("needed") + " " + row.get("to_buy"))
                  .toList();
          assertEquals(
              lists.get("hardware.csv").stream()
                  .map(row -> row.get("count") + " " + row.get("packs"))
                  .toList(),
              needed);
          lists.get("hardware.csv").forEach(row -> assertFalse(row.get("steps").isEmpty()));
        });
  }

  /** The mark that stands in balloons leads to the item, in the file as on the page. */
  @TestFactory
  List<DynamicTest> hardwareHasTheMarksOfTheDrawings() {
    return AllProjects.each(
        project -> {
          HardwareUse use = HardwareUse.of(project.set().piece());
          Map<String, String> titles = new LinkedHashMap<>();
          use.counts()
              .keySet()
              .forEach(
                  item ->
                      titles.put(
                          use.mark(item), project.set().piece().item(item).orElseThrow().title()));
          Map<String, String> listed = new LinkedHashMap<>();
          lists(project).get("hardware.csv").forEach(r -> listed.put(r.get("mark"), r.get("item")));
          assertEquals(titles, listed);
        });
  }

  @TestFactory
  List<DynamicTest> shoppingAsksForEveryBoardSheetAndCan() {
    return AllProjects.each(
        project -> {
          Shopping list =
              Shopping.of(
                  project.set(),
                  new Texts(project.set().piece().description().format(), Words.ENGLISH));
          Map<String, Long> rows =
              lists(project).get("shopping.csv").stream()
                  .collect(Collectors.groupingBy(row -> row.get("list"), Collectors.counting()));
          assertEquals(list.boards().size(), rows.getOrDefault("Boards", 0L));
          assertEquals(list.sheets().size(), rows.getOrDefault("Sheet goods", 0L));
          assertEquals(list.items().size(), rows.getOrDefault("Hardware", 0L));
          assertEquals(
              list.supplies().rows().size(), rows.getOrDefault("Glue, finish and sandpaper", 0L));
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "\uFF1D1"})
  void formulaStaysTextInEveryColumn(String formula) {
    byte[] csv = new Csv("a", "b").row(List.of(formula, "x," + formula)).spreadsheet();
    Map<String, String> row = rows(csv).getFirst();
    assertEquals("'" + formula, row.get("a"));
    assertEquals("x," + formula, row.get("b"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "-2+3", "@SUM(A1)", "a \"b\", c", "Größe ₂ ½"})
  void titleOfTheMakerIsTheSameTextInEveryList(String title) {
    Map<String, byte[]> files =
        new PlanSetWriter(Sample::words, Words.ENGLISH).write(Sample.titled(title).planSet());
    String cell = "=-@".indexOf(title.charAt(0)) >= 0 ? "'" + title : title;
    assertEquals(cell, rows(files.get("cut-list.csv")).getFirst().get("part"));
    assertEquals(cell, rows(files.get("labels.csv")).getFirst().get("name"));
  }

  @Test
  void bareFractionReadsAsANumberAndOthersAsPrinted() {
    // common practice: a spreadsheet reads 3/4 as a day in March, and 0 3/4 as a number
    assertEquals(
        List.of("0 3/4", "27 23/32", "18", "18.5", ""),
        Stream.of("3/4", "27 23/32", "18", "18.5", "").map(Csv::size).toList());
  }
}
