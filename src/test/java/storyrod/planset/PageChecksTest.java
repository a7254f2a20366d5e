package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import storyrod.cli.PrintedProjects;
import storyrod.cli.PrintedProjects.Printed;
import storyrod.measure.Units;

/**
 * The finished PDFs as an independent reader finds them. The usual run takes the smallest project
 * in each edition on every paper; the slow ones take all of them.
 */
class PageChecksTest {
  private static final List<String> EDITIONS = List.of("publish", "helper", "preview", "record");
  private static final String SMALLEST = "step-stool";

  /** How many faults of a kind are told. */
  private static final int TOLD = 5;

  private static Stream<String> projects() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("projects"))) {
      return folders.map(each -> each.getFileName().toString()).sorted().toList().stream();
    }
  }

  @TestFactory
  Stream<DynamicTest> everyProjectOnItsUsualPaper() throws IOException {
    return projects()
        .flatMap(
            project ->
                EDITIONS.stream().map(edition -> test(project, edition, usualPaper(project))));
  }

  @TestFactory
  Stream<DynamicTest> theSmallestProjectOnEveryPaper() {
    return onEveryPaper(SMALLEST);
  }

  @TestFactory
  Stream<DynamicTest> everyProjectInGerman() throws IOException {
    return projects().map(project -> inGerman(project, "publish"));
  }

  /** A step whose lists and sentences reach down to the end of its page. */
  @TestFactory
  Stream<DynamicTest> aStepThatFillsItsPageInGerman() {
    return Stream.of(inGerman("step-stool", "record"));
  }

  /** One written in inches, one in millimetres; what is wide in both units is widest in tables. */
  @TestFactory
  Stream<DynamicTest> inOtherUnits() {
    return Stream.of("step-stool", "nightstand")
        .flatMap(project -> inOtherUnits(project, List.of("publish", "record")));
  }

  @Tag("slow")
  @TestFactory
  Stream<DynamicTest> everyOtherEditionInGerman() throws IOException {
    return projects()
        .flatMap(
            project ->
                Stream.of("helper", "preview", "record")
                    .map(edition -> inGerman(project, edition)));
  }

  /**
   * "Werkzeug" is longer than "Tools": where it takes a line more, two steps that fill a page, the
   * pictures below their lists made as high as they can be, must not run on to an empty one.
   */
  @TestFactory
  Stream<DynamicTest> stepsThatFillTheirPagesInGermanMillimetres() throws IOException {
    return projects()
        .map(
            project ->
                DynamicTest.dynamicTest(
                    project + " publish German mm", () -> checkGermanMillimetres(project)));
  }

  private static void checkGermanMillimetres(String project) throws Exception {
    PrintedProjects german = PrintedProjects.named(project, "de", Units.MM);
    Paper paper = german.usualPaper();
    Printed printed = german.on(paper, "publish");
    assertEquals("", faults(FinishedPdf.of(printed.pdf(), printed.set(), paper)));
  }

  private static DynamicTest inGerman(String project, String edition) {
    return DynamicTest.dynamicTest(
        String.join(" ", project, edition, "German"),
        () -> {
          PrintedProjects german = PrintedProjects.named(project, "de");
          Paper paper = german.usualPaper();
          Printed printed = german.on(paper, edition);
          assertEquals("", faults(FinishedPdf.of(printed.pdf(), printed.set(), paper)));
        });
  }

  @Tag("slow")
  @TestFactory
  Stream<DynamicTest> everyProjectInOtherUnits() throws IOException {
    return projects().flatMap(project -> inOtherUnits(project, EDITIONS));
  }

  private static Stream<DynamicTest> inOtherUnits(String project, List<String> editions) {
    return Stream.of(Units.INCH, Units.MM, Units.BOTH)
        .filter(units -> !PrintedProjects.named(project).isOwn(units))
        .flatMap(
            units ->
                editions.stream()
                    .map(
                        edition ->
                            DynamicTest.dynamicTest(
                                String.join(" ", project, edition, units.word()),
                                () -> check(project, edition, units))));
  }

  private static void check(String project, String edition, Units units) throws Exception {
    PrintedProjects in = PrintedProjects.named(project, units);
    Printed printed = in.on(in.usualPaper(), edition);
    assertEquals("", faults(FinishedPdf.of(printed.pdf(), printed.set(), in.usualPaper())));
  }

  /** A lead of four lines above a template, and a step whose lists are higher than its page. */
  @TestFactory
  Stream<DynamicTest> pagesThatWereOnceTooShort() {
    return Stream.of(
        test("bookcase", "publish", "a4"),
        test("window-bench", "helper", "a4"),
        test("nightstand", "publish", "letter"));
  }

  @Tag("slow")
  @TestFactory
  Stream<DynamicTest> everyProjectOnEveryPaper() throws IOException {
    return projects().flatMap(PageChecksTest::onEveryPaper);
  }

  private static Stream<DynamicTest> onEveryPaper(String project) {
    return EDITIONS.stream()
        .flatMap(
            edition -> Paper.BY_NAME.keySet().stream().map(paper -> test(project, edition, paper)));
  }

  private static String usualPaper(String project) {
    Paper usual = PrintedProjects.named(project).usualPaper();
    return Paper.BY_NAME.keySet().stream()
        .filter(name -> Paper.BY_NAME.get(name).equals(usual))
        .findFirst()
        .orElseThrow();
  }

  private static DynamicTest test(String project, String edition, String paper) {
    return DynamicTest.dynamicTest(
        String.join(" ", project, edition, paper),
        () -> {
          Paper size = Paper.BY_NAME.get(paper);
          Printed printed = PrintedProjects.named(project).on(size, edition);
          assertEquals("", faults(FinishedPdf.of(printed.pdf(), printed.set(), size)));
        });
  }

  /** What is wrong with a finished file, a line each; nothing if all is well. */
  static String faults(FinishedPdf pdf) throws Exception {
    return faults(pdf, PageCheck.ALL);
  }

  /** The same by some of the checks. */
  static String faults(FinishedPdf pdf, List<PageCheck> checks) throws Exception {
    List<String> told = new ArrayList<>();
    for (PageCheck check : checks) {
      List<String> faults = check.find().in(pdf);
      faults.stream().limit(TOLD).forEach(each -> told.add(check.name() + ": " + each));
      if (faults.size() > TOLD) {
        told.add("… " + faults.size() + " in all");
      }
    }
    return String.join("\n", told);
  }
}
