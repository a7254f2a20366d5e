package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openpdf.pdf.ITextOutputDevice;
import storyrod.words.Words;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The files beside the PDF, and what a hostile description can do to any of them: nothing. */
@Isolated("It sets the default locale.")
class PlanSetFilesTest {
  private static final PlanSetWriter WRITER = new PlanSetWriter(Sample::words, Words.ENGLISH);

  @Test
  void filesComeInAFixedOrder() {
    assertEquals(
        List.of(
            "plan-set.pdf",
            "drawings/cover.svg",
            "drawings/exploded.svg",
            "drawings/part-A.svg",
            "drawings/part-B.svg",
            "drawings/part-C.svg",
            "drawings/part-D.svg",
            "cut-list.csv",
            "hardware.csv",
            "shopping.csv",
            "steps.csv",
            "labels.csv",
            "plan.json"),
        List.copyOf(WRITER.write(Sample.inches().planSet()).keySet()));
  }

  @Test
  void theCoverIsAPictureOfItsOwnThatBearsTheName() {
    PlanSet set = Sample.titled("Low shelf").planSet();
    String svg = new String(WRITER.write(set).get("drawings/cover.svg"), StandardCharsets.UTF_8);
    assertTrue(svg.contains(">Low shelf<"), svg);
    assertTrue(PlanSetWriter.pictures(set).get("drawings/cover.png").length > 1000);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<b>bold</b>",
        "Tom & Jerry",
        "${x}",
        "#{x}",
        "<#list 1..3 as x>",
        "=1+1",
        "]]>",
        "<!-- x",
        "&lt;b&gt;",
        "../../etc/passwd",
        "\"quoted\", and more",
        "-2+3",
        "@SUM(A1)",
        "&#65;",
        "<img src='http://127.0.0.1:9/x'/>",
        "<style>* { display: none }</style>"
      })
  void hostileTitleStaysText(String title) {
    Map<String, byte[]> files = WRITER.write(Sample.titled(title).planSet());
    String pdf = PdfText.text(files.get("plan-set.pdf"), 0).replaceAll("\\s+", "");
    assertTrue(pdf.contains(title.replaceAll("\\s+", "")), title);
    JsonNode json = new JsonMapper().readTree(files.get("plan.json"));
    assertEquals(title, json.path("project").path("title").asString());
    assertEquals(title, json.path("parts").path(0).path("title").asString());
    String csv = text(files, "cut-list.csv");
    String cell = "=+-@".indexOf(title.charAt(0)) >= 0 ? "'" + title : title;
    boolean quoted = cell.matches("(?s).*[,\"\r\n].*");
    assertTrue(
        csv.contains("\r\nA," + (quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell) + ","),
        csv);
    files
        .keySet()
        .forEach(name -> assertTrue(name.matches("(drawings/)?[A-Za-z-]+\\.[a-z]+"), name));
  }

  @Test
  void cutListCountsWithPlainNumbersAndTellsHandsApart() {
    Map<String, byte[]> files = WRITER.write(Sample.inches().planSet());
    List<String> rows = text(files, "cut-list.csv").lines().toList();
    assertTrue(rows.getFirst().startsWith("mark,part,count,handed,stock,"), rows.getFirst());
    assertTrue(rows.get(1).startsWith("A,Side,2,1 + 1,"), rows.get(1));
    assertTrue(rows.get(2).matches("B,[^,]*,\\d+,,.*"), rows.get(2));
  }

  @Test
  void defaultLocaleWithOtherDigitsChangesNothing() {
    Map<String, byte[]> plain = WRITER.write(Sample.inches().planSet());
    Locale before = Locale.getDefault(Locale.Category.FORMAT);
    Locale arabic = Locale.forLanguageTag("ar-EG-u-nu-arab");
    try {
      Locale.setDefault(Locale.Category.FORMAT, arabic);
      assertArrayEquals(
          plain.get("plan-set.pdf"), WRITER.write(Sample.inches().planSet()).get("plan-set.pdf"));
      assertEquals(arabic, Locale.getDefault(Locale.Category.FORMAT));
    } finally {
      Locale.setDefault(Locale.Category.FORMAT, before);
    }
  }

  @Test
  void csvFollowsRfc4180() {
    // RFC 4180, section 2: CRLF, quotes round a comma, a quote or a line break, quotes doubled
    String csv =
        new String(
            new Csv("a", "b")
                .row(List.of("x,y", "say \"no\""))
                .row(List.of(1, "two\nlines"))
                .bytes(),
            StandardCharsets.UTF_8);
    assertEquals("a,b\r\n\"x,y\",\"say \"\"no\"\"\"\r\n1,\"two\nlines\"\r\n", csv);
  }

  @Test
  void formulasAreDefusedAndNumbersAreNot() {
    String csv =
        new String(
            new Csv("a").row(List.of("=1+1")).row(List.of("\t=1")).row(List.of(-3)).bytes(),
            StandardCharsets.UTF_8);
    assertEquals("a\r\n'=1+1\r\n'\t=1\r\n-3\r\n", csv);
  }

  @Test
  void stepsAndHardwareHaveTheirColumns() {
    Map<String, byte[]> files = WRITER.write(Sample.inches().planSet());
    assertTrue(
        text(files, "steps.csv")
            .startsWith(
                "number,stage,title,parts,hardware,minutes,waits,start,finish,float,critical\r\n"));
    assertTrue(
        text(files, "steps.csv")
            .contains(
                "\r\n5,Case & joinery,Glue the left side to the bottom,A B,6 Wood screw #8 x 1 3/4 in,17,60,58,75,"));
    assertEquals(
        "mark,item,count,packs,pack_size,parts,steps\r\n"
            + "H1,Wood screw #8 x 1 3/4 in,6,1,20,\"A, B\",\"5, 6\"\r\n"
            + "H2,Shelf pin 1/4 in,8,1,20,C,\r\n",
        text(files, "hardware.csv"));
  }

  @Test
  void jsonHoldsTheScheduleAsAGraph() {
    JsonNode json = json();
    JsonNode schedule = json.path("schedule");
    assertEquals(480, schedule.path("day_minutes").asInt());
    // 13 + 14 + 15 + 16 + 17 + 18 minutes of work, and an hour until the last glue has set
    assertEquals(93, schedule.path("work_minutes").asInt());
    assertEquals(153, schedule.path("elapsed_minutes").asInt());
    assertEquals(1, schedule.path("days").asInt());
    JsonNode last = json.path("steps").path(5);
    assertEquals(75, last.path("start").asInt());
    assertEquals(93, last.path("finish").asInt());
    assertEquals(153, last.path("dry").asInt());
    assertEquals("[6]", schedule.path("critical_path").toString());
    assertEquals(0, last.path("earliest_start").asInt());
    assertEquals(0, last.path("float").asInt());
    assertTrue(last.path("critical").asBoolean());
    JsonNode first = json.path("steps").path(0);
    assertEquals(0, first.path("needs").size());
    // it takes 13 minutes, and may end with the rest, 78 minutes after the start
    assertEquals(65, first.path("float").asInt());
    assertEquals(65, first.path("latest_start").asInt());
  }

  @Test
  void jsonHoldsExactAndPrintedSizes() {
    JsonNode json = json();
    JsonNode side = json.path("parts").path(0);
    // 28 in = 711.2 mm; 23/32 in = 18.25625 mm
    assertEquals(711_200, side.path("length").path("um").asLong());
    assertEquals("28", side.path("length").path("printed").asString());
    assertEquals(18_256, side.path("thickness").path("um").asLong());
    assertEquals("23/32", side.path("thickness").path("printed").asString());
    assertEquals(2, side.path("count").asInt());
    assertEquals(1, side.path("mirrored").asInt());
    assertEquals(711.2 * 393.7 * 18.25625, side.path("volume_mm3").asDouble(), 1);
    // five holes 1 1/4 in = 31.75 mm apart
    JsonNode centres = side.path("cuts").path(0).path("centres_um");
    assertEquals(5, centres.size());
    assertEquals(31_750, centres.path(1).path(2).asLong() - centres.path(0).path(2).asLong());
  }

  @Test
  void jsonNamesFindingsByTheFileWithoutItsFolders() {
    JsonNode finding = json().path("findings").path(0);
    assertEquals("shelf-sag", finding.path("code").asString());
    assertEquals("warning", finding.path("severity").asString());
    assertEquals("project.yaml", finding.path("file").asString());
    assertEquals(1, finding.path("line").asInt());
    assertEquals(1, finding.path("hints").size());
  }

  @Test
  void jsonKeepsTheOrderOfItsKeys() {
    assertEquals(
        List.of(
            "format",
            "project",
            "units",
            "parts",
            "glue_ups",
            "kept_cutouts",
            "joints",
            "supplies",
            "hardware",
            "findings",
            "steps",
            "schedule",
            "needs",
            "layouts"),
        List.copyOf(json().propertyNames()));
  }

  @Test
  void filesAreTheSameUnderATurkishLocale() {
    Map<String, byte[]> usual = WRITER.write(Sample.inches().planSet());
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      Map<String, byte[]> turkish =
          new PlanSetWriter(Sample::words, Words.ENGLISH).write(Sample.inches().planSet());
      usual.forEach(
          (name, bytes) ->
              org.junit.jupiter.api.Assertions.assertArrayEquals(bytes, turkish.get(name), name));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void documentTypesAreRefused() {
    String hostile =
        "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><html><body>&x;</body></html>";
    IllegalStateException e = assertThrows(IllegalStateException.class, () -> Xhtml.parse(hostile));
    assertTrue(e.getMessage().contains("DOCTYPE"), e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://127.0.0.1:9/a.css", "file:///etc/hostname", "data:text/css,*{}"})
  void pagesCanFetchNoAddress(String uri) {
    ClosedUserAgent agent = new ClosedUserAgent(new ITextOutputDevice(1), 1);
    assertThrows(IllegalStateException.class, () -> agent.getCSSResource(uri));
    assertThrows(IllegalStateException.class, () -> agent.getImageResource(uri));
    assertThrows(IllegalStateException.class, () -> agent.getBinaryResource(uri));
    assertThrows(IllegalStateException.class, () -> agent.getXMLResource(uri));
  }

  @Test
  void preparedTextsReadAsBefore() {
    String text = "27 23/32 by 3/4, not 1/2/3 or 2026/11, and 15 x 9";
    var document = Xhtml.parse("<html><body><p>" + text + "</p></body></html>");
    TextRuns.prepare(document);
    assertEquals(text, document.getDocumentElement().getTextContent());
    long fractions =
        java.util.stream.IntStream.range(0, document.getElementsByTagName("span").getLength())
            .mapToObj(i -> (org.w3c.dom.Element) document.getElementsByTagName("span").item(i))
            .filter(span -> span.getAttribute("class").equals("fraction"))
            .count();
    assertEquals(2, fractions);
  }

  private static JsonNode json() {
    return new JsonMapper().readTree(WRITER.write(Sample.inches().planSet()).get("plan.json"));
  }

  private static String text(Map<String, byte[]> files, String name) {
    String text = new String(files.get(name), StandardCharsets.UTF_8);
    assertEquals('\uFEFF', text.charAt(0), name + " is marked as UTF-8");
    return text.substring(1);
  }
}
