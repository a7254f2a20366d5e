package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Editions, papers and templates of a project's own, from the shell. */
class EditionsTest {
  private static final Path STOOL = Path.of("projects/step-stool");

  private static final List<String> SIZES =
      List.of("length", "width", "rough_length", "rough_width");

  /** Amounts, times and the numbers of pages in a preview. */
  private static final String AMOUNT =
      "(?m)([\\d.]+ (to [\\d.]+ )?(board feet|m³|sheets|fl oz|qt|ml|l|lb|kg|h|days|min)\\b)"
          + "|\\d+$|\\d+ of \\d+";

  @TempDir Path folder;

  private Shell build(Path project, String... options) {
    return Shell.run(
        Stream.concat(
                Stream.of("build", project.toString(), "--out", folder.resolve("out").toString()),
                Stream.of(options))
            .toArray(String[]::new));
  }

  private Map<String, byte[]> built(Path project, String... options) {
    Shell shell = build(project, options);
    assertEquals(0, shell.code(), shell.toString());
    return Shell.files(folder.resolve("out"));
  }

  /** A copy of the stool, with its photo, and with one template of its own. */
  private Path with(String template, String text) throws IOException {
    Path project = Files.createDirectories(folder.resolve("stool"));
    Files.createDirectories(project.resolve("pictures"));
    for (String each : List.of("project.yaml", "pictures/test-piece.png")) {
      Files.copy(STOOL.resolve(each), project.resolve(each));
    }
    Path file = project.resolve("templates").resolve(template);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return project;
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void eachEditionHasTheSectionsThatItsFileNames() throws IOException {
    Map<String, byte[]> files = built(STOOL, "--edition", "publish,helper");
    String publish = text(files.get("plan-set.pdf"));
    String helper = text(files.get("plan-set-helper.pdf"));
    assertTrue(publish.contains("Shopping list") && publish.contains("Cost"));
    assertFalse(helper.contains("Shopping list") || helper.contains("Cost"));
    assertTrue(helper.contains("Cut list") && helper.contains("Stage 1"));
  }

  /** Weight, time and amounts are no sizes; every other figure is held to the cut list. */
  @ParameterizedTest
  @ValueSource(strings = {"window-bench", "nightstand"})
  void aPreviewTellsNoSizeOfAnyPart(String name) throws IOException {
    Map<String, byte[]> files = built(Path.of("projects", name), "--edition", "publish,preview");
    String preview = text(files.get("plan-set-preview.pdf"));
    assertFalse(preview.contains("Overall size"));
    List<String> sizes = sizes(files);
    assertTrue(sizes.size() > 20, sizes.toString());
    String figures = preview.replaceAll(AMOUNT, "");
    sizes.forEach(
        size -> {
          String alone = "(?<![\\d/])" + Pattern.quote(size) + "(?![\\d/])";
          assertFalse(Pattern.compile(alone).matcher(figures).find(), size + " in " + preview);
        });
  }

  /** All sizes that the cut list prints, finished and rough. */
  private static List<String> sizes(Map<String, byte[]> files) {
    return Rows.of(files.get("cut-list.csv")).stream()
        .flatMap(row -> SIZES.stream().map(row::get))
        .filter(size -> !size.isBlank())
        .distinct()
        .toList();
  }

  /** Whoever has the hammer for the glides needs no choice of a hammer or a brad nailer. */
  @Test
  void previewNamesNoToolTwice() throws IOException {
    Map<String, byte[]> files = built(Path.of("projects", "nightstand"), "--edition", "preview");
    String preview = text(files.get("plan-set-preview.pdf")).replaceAll("\\s+", " ");
    assertTrue(preview.contains("Hammer;"), preview);
    assertFalse(preview.contains("Hammer or brad nailer"), preview);
  }

  @Test
  void eachPageOfAPreviewIsMarkedAndTellsWhatThePlanTakes() throws IOException {
    byte[] pdf = built(STOOL, "--edition", "preview").get("plan-set-preview.pdf");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper page = new PDFTextStripper();
      for (int at = 1; at <= document.getNumberOfPages(); at++) {
        page.setStartPage(at);
        page.setEndPage(at);
        assertTrue(page.getText(document).contains("not for building"), "page " + at);
      }
    }
    String text = text(pdf);
    assertTrue(text.contains("Working time") && text.contains("Screws"), text);
    assertTrue(text.contains("Table saw") && text.contains("about 5 board feet"), text);
  }

  @Test
  void nothingWithSizesIsWrittenBesideAPreview() {
    Map<String, byte[]> files = built(STOOL, "--edition", "preview", "--png");
    assertEquals(
        Set.of("plan-set-preview.pdf", "drawings/cover.svg", "drawings/cover.png"), files.keySet());
  }

  /** Whatever is asked for first, lists and drawings are there, and stay when a preview is made. */
  @Test
  void listsAndDrawingsComeWithTheOtherEditions() {
    Map<String, byte[]> files = built(STOOL, "--edition", "preview,publish");
    assertTrue(files.keySet().containsAll(Set.of("plan.json", "drawings/part-A.svg")));
    assertTrue(files.keySet().containsAll(Set.of("plan-set.pdf", "plan-set-preview.pdf")));
    assertEquals(files.keySet(), built(STOOL, "--edition", "preview").keySet());
  }

  @Test
  void aPlanInAnotherUnitLeavesThatInTheOwnOneAsItWas() throws IOException {
    byte[] inches = built(STOOL).get("plan-set.pdf");
    Map<String, byte[]> files = built(STOOL, "--units", "mm", "--language", "de");
    assertArrayEquals(inches, files.get("plan-set.pdf"));
    assertTrue(text(files.get("plan-set-mm-de.pdf")).contains("mm"));
  }

  @Test
  void theEditionToSellHasTheLicenceOrSaysThatNoneIsGiven() throws IOException {
    Map<String, byte[]> bench =
        built(Path.of("projects/window-bench"), "--edition", "publish,helper");
    String allowed = "Whoever holds this plan may build the bench";
    assertTrue(text(bench.get("plan-set.pdf")).contains(allowed));
    assertFalse(text(bench.get("plan-set-helper.pdf")).contains(allowed));
    String none = "The maker has given no licence with this plan.";
    Map<String, byte[]> stool = built(STOOL, "--edition", "publish,helper");
    assertTrue(text(stool.get("plan-set.pdf")).contains(none));
    assertFalse(text(stool.get("plan-set-helper.pdf")).contains(none));
    assertFalse(text(bench.get("plan-set.pdf")).contains(none));
  }

  @Test
  void eachPaperIsLaidOutForItself() throws IOException {
    Map<String, byte[]> files = built(STOOL, "--paper", "letter,a3");
    try (PDDocument letter = Loader.loadPDF(files.get("plan-set-letter.pdf"));
        PDDocument a3 = Loader.loadPDF(files.get("plan-set-a3.pdf"))) {
      assertEquals(612, letter.getPage(1).getMediaBox().getWidth(), 0.1);
      assertEquals(842, a3.getPage(1).getMediaBox().getWidth(), 1);
      assertTrue(a3.getNumberOfPages() < letter.getNumberOfPages());
    }
  }

  /** One alone is named as one of several is, so a second run writes over no other paper. */
  @Test
  void eachThingAskedForStandsInTheName() throws IOException {
    Map<String, byte[]> files =
        built(STOOL, "--edition", "helper", "--paper", "a4", "--units", "mm", "--language", "de");
    assertTrue(files.containsKey("plan-set-helper-a4-mm-de.pdf"), files.keySet()::toString);
  }

  @Test
  void aProjectLaysItsOwnTemplateOverThatOfTheTool() throws IOException {
    Path project =
        with("cover/page.ftl", "<div class='cover' id='cover'><h1>Own ${cover.name}</h1></div>");
    assertTrue(text(built(project).get("plan-set.pdf")).startsWith("Own Step stool"));
  }

  @Test
  void aProjectHasAnEditionAndASectionOfItsOwn() throws IOException {
    Path project = with("editions/mine.properties", "sections=thanks cover\n");
    Path templates = project.resolve("templates");
    Files.createDirectories(templates.resolve("thanks"));
    Files.createDirectories(templates.resolve("words"));
    Files.writeString(
        templates.resolve("thanks/page.ftl"), "<h1 id='thanks'>${say('thanks.title')}</h1>");
    Files.writeString(templates.resolve("words/en.properties"), "thanks.title=Many thanks\n");
    String text = text(built(project, "--edition", "mine").get("plan-set-mine.pdf"));
    assertTrue(text.indexOf("Many thanks") < text.indexOf("Step stool"), text);
    assertFalse(text.contains("Cut list"));
  }

  @Test
  void aFaultOfATemplateNamesTemplateLineAndValue() throws IOException {
    Shell shell = build(with("cover/page.ftl", "<div>\n${cover.colour}\n</div>"));
    assertEquals(1, shell.code());
    assertTrue(
        shell.err().contains("template cover/page.ftl, line 2 at the value cover.colour"),
        shell.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void aTemplateThatDoesNotParseIsNamedWithItsLine() throws IOException {
    Shell shell = build(with("cover/page.ftl", "<div>\n\n<#if>\n</div>"));
    assertTrue(shell.err().contains("template cover/page.ftl, line 3"), shell.err());
  }

  @Test
  void aTemplateThatMakesNoXhtmlIsNamed() throws IOException {
    Shell shell = build(with("cover/page.ftl", "<div><p></div>"));
    assertTrue(shell.err().contains("cover/page.ftl") && !shell.err().contains("bug"), shell.err());
  }

  @Test
  void anEditionNamesOnlySectionsThatThereAre() throws IOException {
    Path project = with("editions/mine.properties", "sections=cover poems\n");
    Shell shell = build(project, "--edition", "mine");
    assertTrue(shell.err().contains("editions/mine.properties"), shell.err());
    assertTrue(shell.err().contains("poems"), shell.err());
  }

  @Test
  void aTemplateReachesNoClassOfJava() throws IOException {
    String trick = "<#assign x = 'freemarker.template.utility.Execute'?new()>${x('id')}";
    Shell shell = build(with("cover/page.ftl", trick));
    assertEquals(1, shell.code());
    assertTrue(shell.err().contains("cover/page.ftl, line 1"), shell.err());
  }

  @Test
  void aHelperGetsTheStagesThatAreChosenAndTheirPartsOnly() throws IOException {
    String all = text(built(STOOL, "--edition", "helper").get("plan-set-helper.pdf"));
    String some =
        text(built(STOOL, "--edition", "helper", "--stages", "1").get("plan-set-helper.pdf"));
    assertTrue(all.contains("Stage 2") && !some.contains("Stage 2"), some);
    assertTrue(some.contains("Stage 1") && some.contains("CAUTION"));
    assertTrue(some.contains("Initials, date"));
  }

  @Test
  void partsAreChosenByTheirMarks() throws IOException {
    String some = text(built(STOOL, "--parts", "A", "--steps", "1-20").get("plan-set.pdf"));
    assertTrue(some.length() < text(built(STOOL).get("plan-set.pdf")).length());
  }

  @Test
  void whatCannotBeChosenIsToldWithWhatCan() {
    assertTrue(build(STOOL, "--stages", "poems").err().contains("there is no stage 'poems'"));
    assertTrue(build(STOOL, "--steps", "999").err().contains("there is no step 999"));
    assertTrue(build(STOOL, "--steps", "x").err().contains("3,7-12"));
    assertTrue(build(STOOL, "--parts", "ZZ").err().contains("no part has the mark 'ZZ'"));
  }

  @Test
  void anUnknownNameIsToldWithThoseThatThereAre() {
    assertTrue(build(STOOL, "--edition", "poem").err().contains("publish"));
    assertTrue(build(STOOL, "--paper", "b5").err().contains("tabloid"));
  }
}
