package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import storyrod.cli.PrintedProjects;
import storyrod.cli.PrintedProjects.Printed;

/** Pieces made up to be too much: long lists, long names, full steps, titles in other letters. */
class LongListsTest {
  private static final int NAME = 80;
  private static final int MANY = 300;
  private static final int FULL_STEP = 40;

  private static final String REST =
      "-of-the-long-rack-whose-names-were-made-as-long-as-a-name-can-sensibly-ever-be-made";

  private static String name(int number) {
    return ("slat-%03d".formatted(number) + REST).substring(0, NAME);
  }

  /** A board with slats of different heights on it, each with a mark of its own. */
  private static String rack(String title, int slats) {
    String parts =
        IntStream.rangeClosed(1, slats).mapToObj(LongListsTest::slat).collect(Collectors.joining());
    String joints =
        IntStream.rangeClosed(1, slats)
            .mapToObj(i -> "  - butt: {end: %s.bottom, to: base, glue: yes}\n".formatted(name(i)))
            .collect(Collectors.joining());
    return """
        project: %s
        units: mm
        stock:
          board: {kind: solid, species: "ash, white", thickness: 20}
        parts:
          base: {stock: board, x: 0 to %d, y: 0 to 60, z: 0 to 20, grain: x}
        %sjoints:
        %sfinish: {product: hard wax oil, tried-on: white ash offcut}
        """
        .formatted(title, slats * 25 + 10, parts, joints);
  }

  private static String slat(int number) {
    int x = number * 25 - 15;
    return "  %s: {stock: board, x: %d to %d, y: 0 to 60, z: 20 to %d, grain: z}\n"
        .formatted(name(number), x, x + 20, 120 + number);
  }

  private static Stream<DynamicTest> onBothPapers(String text, String edition) {
    return Stream.of("letter", "a4")
        .map(
            paper ->
                DynamicTest.dynamicTest(
                    edition + " " + paper, () -> check(text, edition, Paper.BY_NAME.get(paper))));
  }

  /** A step that is higher than a page too goes on over pages of which none is nearly empty. */
  private static void check(String text, String edition, Paper paper) throws Exception {
    Printed printed = PrintedProjects.madeUp(text).on(paper, edition);
    FinishedPdf pdf = FinishedPdf.of(printed.pdf(), printed.set(), paper);
    assertEquals("", PageChecksTest.faults(pdf));
  }

  @TestFactory
  Stream<DynamicTest> aStepWithFortyPartsAndNamesOfEightyCharacters() {
    assertEquals(NAME, name(1).length());
    String text = rack("Forty slats", FULL_STEP);
    return Stream.of("publish", "helper").flatMap(edition -> onBothPapers(text, edition));
  }

  @Tag("slow")
  @TestFactory
  Stream<DynamicTest> threeHundredRows() {
    return onBothPapers(rack("Three hundred slats", MANY), "publish");
  }

  /** Letters that the family has, and those that only the face has that stands in for it. */
  @TestFactory
  Stream<DynamicTest> titlesInOtherLetters() {
    return Stream.of(
            "Книжный шкаф",
            "Ντουλάπι τοίχου",
            "Գրապահարան",
            "წიგნის კარადა",
            "Bücherregal für Ærø, İzmir und Łódź")
        .map(title -> DynamicTest.dynamicTest(title, () -> assertPrinted(title)));
  }

  private static void assertPrinted(String title) throws Exception {
    String text = rack(title, 2);
    Printed printed = PrintedProjects.madeUp(text).on(Paper.A4, "publish");
    FinishedPdf pdf = FinishedPdf.of(printed.pdf(), printed.set(), Paper.A4);
    assertEquals("", PageChecksTest.faults(pdf));
    String cover = FinishedPdf.squeezed(PdfText.text(printed.pdf(), 1));
    assertTrue(cover.contains(FinishedPdf.squeezed(title)), cover);
  }
}
