package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that lays out plain lists: what it writes and what it says. */
class LayoutCommandTest {
  private static final String PARTS =
      "item,width,height,quantity,grain\nside,760,560,4,1\nshelf,862,540,3,1\ncleat,860,80,4,0\n";
  private static final String STOCK =
      "stock,width,height,available,cost,kerf,trim_left,trim_right,trim_bottom,trim_top\n"
          + "ply,2440,1220,-1,84.50,3,10,10,10,10\n";

  @TempDir Path folder;

  private Shell layout(String parts, String stock, String... options) {
    List<String> words = new ArrayList<>(List.of("layout"));
    words.add(Shell.write(folder.resolve("parts.csv"), parts).toString());
    words.add(Shell.write(folder.resolve("stock.csv"), stock).toString());
    words.addAll(List.of(options));
    if (!words.contains("--seconds")) {
      words.addAll(List.of("--seconds", "0.1"));
    }
    return Shell.run(words.toArray(String[]::new));
  }

  private Map<String, byte[]> files(String parts, String stock, String... options) {
    Path out = folder.resolve("out");
    List<String> all = new ArrayList<>(List.of("--out", out.toString()));
    all.addAll(List.of(options));
    Shell shell = layout(parts, stock, all.toArray(String[]::new));
    assertEquals(0, shell.code(), shell.toString());
    return Shell.files(out);
  }

  /** The rows of a list without quotes in it, by the names of its columns. */
  private static List<Map<String, String>> rows(byte[] csv) {
    List<String> lines = new String(csv, java.nio.charset.StandardCharsets.UTF_8).lines().toList();
    String[] head = lines.getFirst().split(",");
    return lines.stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .map(
            cells -> {
              Map<String, String> row = new LinkedHashMap<>();
              IntStream.range(0, head.length).forEach(i -> row.put(head[i], cells[i]));
              return row;
            })
        .toList();
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  @Test
  void everyPartIsListedAtItsSizeOnTheTrimmedSheet() {
    List<Map<String, String>> rows = rows(files(PARTS, STOCK).get("parts.csv"));
    Map<String, Long> counts =
        rows.stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.get("part"),
                    Collectors.summingLong(row -> Long.parseLong(row.get("copies")))));
    assertEquals(Map.of("side", 4L, "shelf", 3L, "cleat", 4L), counts);
    for (Map<String, String> row : rows) {
      assertTrue(number(row, "x") >= 10 && number(row, "y") >= 10, row.toString());
      assertTrue(number(row, "x") + number(row, "length") <= 2430, row.toString());
      assertTrue(number(row, "y") + number(row, "width") <= 1210, row.toString());
      if (row.get("part").equals("side")) {
        assertEquals("760 x 560", row.get("length") + " x " + row.get("width"));
      }
    }
  }

  /** Replayed from the list alone: each cut is made in a piece that an earlier one has left. */
  @Test
  void theCutsListedGiveEveryPart() {
    Map<String, byte[]> files = files(PARTS, STOCK);
    Map<String, List<Map<String, String>>> sheets =
        rows(files.get("cuts.csv")).stream()
            .collect(Collectors.groupingBy(row -> row.get("layout")));
    List<String> given = new ArrayList<>();
    sheets.forEach((layout, cuts) -> given.addAll(marksGiven(cuts)));
    List<String> placed =
        rows(files.get("parts.csv")).stream().map(row -> row.get("mark")).sorted().toList();
    assertEquals(placed, given.stream().sorted().toList());
  }

  private static List<String> marksGiven(List<Map<String, String>> cuts) {
    Set<String> there = new TreeSet<>(Set.of("sheet"));
    List<String> marks = new ArrayList<>();
    for (Map<String, String> cut : cuts) {
      assertTrue(there.contains(cut.get("from")), cut.toString());
      for (String side : List.of("gives", "leaves")) {
        String what = cut.get(side);
        if (what.startsWith("piece")) {
          there.add(what);
        } else if (what.matches("[A-Z]+")) {
          marks.add(what);
        }
      }
      if (!cut.get("leaves").isEmpty()) {
        there.remove(cut.get("from"));
      }
    }
    return marks;
  }

  @Test
  void sheetsThatAreAlikeAreDrawnOnceWithTheirNumber() {
    Map<String, byte[]> files =
        files(
            "item,width,height,quantity\npanel,2400,1200,5\n",
            STOCK.replace("10,10,10,10", "0,0,0,0"));
    assertEquals(
        Set.of("cuts.csv", "drawings/layout-1-1.svg", "layouts.pdf", "parts.csv"), files.keySet());
    assertEquals("5", rows(files.get("parts.csv")).getFirst().get("copies"));
  }

  @Test
  void drawingsOfAnEarlierRunAreTakenOut() {
    Path old = Shell.write(folder.resolve("out/drawings/layout-9-9.svg"), "old");
    Path foreign = Shell.write(folder.resolve("out/drawings/mine.svg"), "mine");
    files(PARTS, STOCK);
    assertFalse(Files.exists(old));
    assertTrue(Files.exists(foreign));
  }

  @Test
  void theSameListsGiveTheSameFiles() {
    Map<String, byte[]> once = files(PARTS, STOCK, "--seconds", "0");
    Same.assertSame(once, files(PARTS, STOCK, "--seconds", "0"));
  }

  @Test
  void lengthsAreShownSeveralOnAPage() {
    Map<String, byte[]> files =
        files("item,length,quantity\nrail,850,5\nleg,710,9\n", "stock,length,kerf\nash,2400,3\n");
    assertTrue(rows(files.get("parts.csv")).size() >= 5);
    assertTrue(files.containsKey("drawings/layout-1-1.svg"));
  }

  @Test
  void theSummaryHasARowForEachInstance() {
    Path summary = folder.resolve("summary.csv");
    String parts =
        "instance,item,width,height,quantity\nA,panel,2000,1000,3\n\"B, 2\",top,600,400,2\n";
    Shell shell = layout(parts, STOCK, "--summary", summary.toString());
    assertEquals(0, shell.code(), shell.toString());
    List<String> lines = Shell.read(summary).lines().toList();
    assertEquals("instance,pieces,cost,lower_bound,proved,seconds", lines.getFirst());
    assertTrue(lines.get(1).matches("A,3,253\\.50,3,1,\\d+\\.\\d{3}"), lines.get(1));
    assertTrue(lines.get(2).matches("\"B, 2\",1,84\\.50,1,1,\\d+\\.\\d{3}"), lines.get(2));
    assertEquals(3, lines.size());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void anInstanceWithTooLittleStockHasARowWithoutPieces() {
    Path summary = folder.resolve("summary.csv");
    String parts = "instance,item,width,height,quantity\nA,panel,2000,1000,3\nB,top,600,400,2\n";
    Shell shell = layout(parts, STOCK.replace("-1", "2"), "--summary", summary.toString());
    assertEquals(1, shell.code());
    List<String> lines = Shell.read(summary).lines().toList();
    assertTrue(lines.get(1).startsWith("A,,,,0,"), lines.get(1));
    assertTrue(lines.get(2).startsWith("B,1,84.50,1,1,"), lines.get(2));
    assertTrue(shell.err().contains("with 1 more of 'ply'"), shell.err());
  }

  @Test
  void severalInstancesHaveAFolderEach() {
    String parts = "instance,item,width,height\nA/1,panel,2000,1000\nA_1,top,600,400\n";
    Set<String> names = files(parts, STOCK).keySet();
    assertTrue(names.contains("A_1/layouts.pdf"), names.toString());
    assertTrue(names.contains("A_1-2/layouts.pdf"), names.toString());
  }

  @Test
  void partsTurnUnlessToldOtherwise() {
    String parts = "item,width,height\npanel,1100,2300\n";
    for (String[] on : new String[][] {{}, {"--turn", "on"}, {"--turn"}, {"--turn=yes"}}) {
      assertEquals(0, layout(parts, STOCK, with(on)).code(), String.join(" ", on));
    }
    for (String[] off : new String[][] {{"--turn", "off"}, {"--no-turn"}, {"--turn=false"}}) {
      assertEquals(1, layout(parts, STOCK, with(off)).code(), String.join(" ", off));
    }
  }

  @Test
  void pagesAndWhatIsToldAreInTheLanguageAskedFor() throws IOException {
    String out = folder.resolve("out").toString();
    Shell shell = layout(PARTS, STOCK, "--language", "de", "--out", out);
    assertEquals(0, shell.code(), shell.toString());
    assertTrue(shell.out().contains("Dateien in " + out), shell.out());
    assertFalse(shell.out().matches("(?s).*(piece|fewer|needed|files).*"), shell.out());
    byte[] pdf = Shell.files(folder.resolve("out")).get("layouts.pdf");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals("de", document.getDocumentCatalog().getLanguage());
      assertTrue(new PDFTextStripper().getText(document).contains("Platte"));
    }
    assertTrue(layout(PARTS, STOCK, "--language", "xx").err().contains("takes de, en"));
  }

  private String[] with(String... options) {
    List<String> all = new ArrayList<>(List.of(options));
    all.addAll(List.of("--summary", folder.resolve("s.csv").toString()));
    return all.toArray(String[]::new);
  }

  @Test
  void theSwitchTakesNoListForItsValue() {
    Path parts = Shell.write(folder.resolve("parts.csv"), PARTS);
    Path stock = Shell.write(folder.resolve("stock.csv"), STOCK);
    Shell shell =
        Shell.run(
            "layout",
            "--turn",
            parts.toString(),
            stock.toString(),
            "--seconds",
            "0",
            "--summary",
            folder.resolve("s.csv").toString());
    assertEquals(0, shell.code(), shell.toString());
  }

  @Test
  void theLeastCostTakesTheFreeOffcutFirst() {
    String stock = STOCK + "rest,1000,700,1,0,3,0,0,0,0\n";
    Path summary = folder.resolve("s.csv");
    Shell shell =
        layout(
            "item,width,height\npanel,900,600\n",
            stock,
            "--least",
            "cost",
            "--summary",
            summary.toString());
    assertEquals(0, shell.code(), shell.toString());
    assertTrue(Shell.read(summary).contains("\n,1,0.00,0.00,1,"), Shell.read(summary));
  }

  @Test
  void aWrongWordOfAnOptionIsAWrongCommandLine() {
    for (String wrong :
        List.of("--unit=furlong", "--least=time", "--seed=x", "--paper=a0", "--turn=maybe")) {
      Shell shell = layout(PARTS, STOCK, wrong);
      assertEquals(2, shell.code(), wrong);
      assertFalse(shell.err().contains("Exception"), shell.err());
    }
  }

  @Test
  void tenThousandPartsAreLaidOutInReasonableTime() {
    StringBuilder parts = new StringBuilder("item,width,height,quantity\n");
    for (int i = 0; i < 2_000; i++) {
      parts.append("part-%d,%d,%d,5\n".formatted(i, 100 + i * 37 % 900, 50 + i * 53 % 500));
    }
    Path summary = folder.resolve("s.csv");
    long start = System.nanoTime();
    Shell shell = layout(parts.toString(), STOCK, "--summary", summary.toString());
    assertEquals(0, shell.code(), shell.toString());
    assertTrue(System.nanoTime() - start < 60e9);
  }

  @Test
  void aListThatIsNotThereIsTold() {
    Shell shell = Shell.run("layout", folder.resolve("no.csv").toString(), "none.csv");
    assertEquals(1, shell.code());
    assertTrue(shell.err().contains("no.csv:1:1: error: there is no such file [no-list]"));
    assertTrue(shell.err().contains("none.csv:1:1: error: there is no such file [no-list]"));
  }
}
