package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.drawing.Drawings;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlanner;
import storyrod.words.Words;

/** The pages of whole plan sets, made from descriptions: the bench's and a single board's. */
class BenchPagesTest {
  private static final Vocabulary VOCABULARY =
      new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
  private static final PlanSet BENCH = planSet(read("projects/window-bench/project.yaml"));
  private static final byte[] PDF = pdf(BENCH);
  private static final List<PdfText.Glyph> GLYPHS = PdfText.glyphs(PDF);
  private static final Paper PAPER = Paper.LETTER;

  private static final String BOARD =
      """
      project: Bread board
      units: inch
      stock:
        oak: {kind: solid, species: "oak, white", thickness: 3/4}
      parts:
        board: {stock: oak, x: 0 to 14, y: 0 to 9, z: 0 to 3/4, grain: x}
      """;

  private static String read(String path) {
    try {
      return Files.readString(Path.of(path));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static PlanSet planSet(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Piece piece =
        new DescriptionReader(VOCABULARY)
            .read(new SourceText("project.yaml", text), diagnostics)
            .flatMap(description -> PieceBuilder.build(description, diagnostics))
            .orElseThrow(() -> new AssertionError(diagnostics.sorted()));
    StockPlan stock = StockPlanner.plan(piece, diagnostics).orElseThrow();
    BuildPlan build = Planner.plan(piece, diagnostics).orElseThrow();
    Drawings drawings = Drawings.of(piece, stock, build, PageRooms.of(piece, build, Words.ENGLISH));
    return new PlanSet(piece, List.of(), stock, build, drawings, Figures.of(piece));
  }

  private static byte[] pdf(PlanSet set) {
    return new PlanSetWriter(Words.ENGLISH).write(set).get("plan-set.pdf");
  }

  /** For each page after the cover, how far down ink reaches, as a share of the room for text. */
  private static List<Double> fills(byte[] pdf) throws IOException {
    List<Double> fills = new ArrayList<>();
    try (PDDocument document = PdfText.open(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      List<Paper> papers = PdfText.papers(document, PAPER);
      for (int page = 1; page < document.getNumberOfPages(); page++) {
        fills.add(
            FillChecks.fill(renderer.renderImageWithDPI(page, FillChecks.DPI), papers.get(page)));
      }
    }
    return fills;
  }

  @Test
  void pagesAreWellFilled() throws IOException {
    List<Double> fills = fills(PDF);
    List<Double> butLast = fills.subList(0, fills.size() - 1);
    assertTrue(butLast.stream().allMatch(fill -> fill > 0.4), fills.toString());
    double mean = butLast.stream().mapToDouble(fill -> fill).average().orElseThrow();
    assertTrue(mean > 0.75, mean + " " + fills);
  }

  @Test
  void pagesOfASmallPieceAreWellFilledToo() throws IOException {
    byte[] stool = pdf(planSet(read("src/test/resources/projects/step-stool/project.yaml")));
    List<Double> fills = fills(stool);
    assertTrue(fills.stream().allMatch(fill -> fill > 0.4), fills.toString());
  }

  @Test
  void headingsStandWithTheFirstRowsOfTheirTables() throws IOException {
    Texts texts = new Texts(BENCH.piece().description().format(), Words.ENGLISH);
    Shopping shopping = Shopping.of(BENCH, texts);
    int sheets = pageWith("\n" + Words.ENGLISH.say("shopping.sheets") + "\n");
    assertTrue(PdfText.text(PDF, sheets).contains(shopping.sheets().getFirst().size()));
    int items = pageWith("\n" + Words.ENGLISH.say("shopping.hardware") + "\n");
    assertTrue(PdfText.text(PDF, items).contains(shopping.items().getFirst().item()));
    for (Layouts.Stock stock : Layouts.of(BENCH, texts, PAPER).stocks()) {
      String page = PdfText.text(PDF, pageWith("\n" + stock.title() + "\n" + stock.size()));
      assertTrue(page.contains(Words.ENGLISH.say("column.fence")), page);
    }
  }

  /** A front of 3/4 in, a box of 15/32 in and 3/8 in in the pull. */
  @Test
  void pullsAreBoughtWithScrewsThatReachThem() {
    assertNoted(": screws about 1 19/32 in long");
  }

  /** Drawers are made for one sort of slides: with another they do not run. */
  @Test
  void slidesAreBoughtForTheRoomThatTheDrawerLeaves() {
    assertNoted(": for 1/2 in of room at each side of the drawer");
  }

  private static void assertNoted(String note) {
    Texts texts = new Texts(BENCH.piece().description().format(), Words.ENGLISH);
    List<String> notes =
        Shopping.of(BENCH, texts).items().stream().map(Shopping.Item::note).toList();
    assertTrue(notes.contains(note), notes::toString);
  }

  @Test
  void nothingReachesIntoTheMargins() throws IOException {
    List<Paper> papers = PdfText.papers(PDF, PAPER);
    assertTrue(papers.contains(PAPER.turned()), "the bench has a turned page");
    List<PdfText.Glyph> outside =
        GLYPHS.stream().filter(each -> reachesOut(each, papers.get(each.page() - 1))).toList();
    assertEquals(List.of(), outside);
  }

  private static boolean reachesOut(PdfText.Glyph glyph, Paper paper) {
    return glyph.left() < 15
        || glyph.right() > paper.widthMm() - 15
        || glyph.top() < 14
        || glyph.bottom() > paper.heightMm() - 14;
  }

  @Test
  void noPartIsDrawnOutOfScale() {
    assertFalse(PdfText.text(PDF, 0).contains(Words.ENGLISH.say("scale.none")));
  }

  @Test
  void marksLeadToTheDrawingsOfTheirParts() throws IOException {
    int first = pageWith("Build · Stage 1");
    List<String> targets = new ArrayList<>();
    try (PDDocument document = PdfText.open(PDF)) {
      for (PDAnnotation each : document.getPage(first - 1).getAnnotations()) {
        int page = target(document, (PDAnnotationLink) each);
        targets.add(PdfText.text(PDF, page));
      }
    }
    Map<String, Mark> marks =
        BENCH.piece().marks().stream().collect(Collectors.toMap(Mark::mark, mark -> mark));
    StepEntry step = entry(BENCH);
    assertFalse(step.parts().isEmpty());
    for (int i = 0; i < step.parts().size(); i++) {
      String title = marks.get(step.parts().get(i).mark()).title();
      assertTrue(targets.get(i).contains("\n" + step.parts().get(i).mark()), targets.get(i));
      assertTrue(targets.get(i).contains(title), title + " is not on\n" + targets.get(i));
    }
  }

  private static Print print(PlanSet set) {
    return Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
  }

  private static StepEntry entry(PlanSet set) {
    Wording wording =
        new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build())::write;
    return StepPages.of(set, new StepPages.Sheet(print(set), wording))
        .pages()
        .getFirst()
        .steps()
        .getFirst()
        .step();
  }

  private static int target(PDDocument document, PDAnnotationLink link) throws IOException {
    var destination =
        link.getAction() instanceof PDActionGoTo action
            ? action.getDestination()
            : link.getDestination();
    return ((PDPageDestination) destination).retrievePageNumber() + 1;
  }

  private static int pageWith(String text) throws IOException {
    try (PDDocument document = PdfText.open(PDF)) {
      for (int page = 2; page <= document.getNumberOfPages(); page++) {
        if (PdfText.text(PDF, page).contains(text)) {
          return page;
        }
      }
    }
    throw new AssertionError("no page with " + text);
  }

  @Test
  void everyPartStageAndStepHasABookmark() throws IOException {
    List<String> titles = new ArrayList<>();
    try (PDDocument document = PdfText.open(PDF)) {
      collect(document.getDocumentCatalog().getDocumentOutline(), titles);
    }
    for (Mark mark : BENCH.piece().marks()) {
      assertTrue(titles.contains(mark.mark() + "  " + mark.title()), mark.mark());
    }
    long steps = titles.stream().filter(title -> title.matches("\\d+  .*")).count();
    assertEquals(BENCH.build().steps().size(), steps);
  }

  private static void collect(PDOutlineNode node, List<String> titles) {
    for (PDOutlineItem item : node.children()) {
      titles.add(item.getTitle());
      collect(item, titles);
    }
  }

  @Test
  void singleBoardHasNoEmptySections() throws IOException {
    byte[] pdf = pdf(planSet(BOARD));
    String text = PdfText.text(pdf, 0);
    for (String key :
        List.of("hardware.title", "layouts.title", "finish.title", "findings.title")) {
      assertFalse(text.contains(Words.ENGLISH.say(key)), key);
    }
    assertFalse(text.contains("\n" + Words.ENGLISH.say("shopping.sheets") + "\n"), text);
    assertTrue(fills(pdf).stream().allMatch(fill -> fill > 0.1), fills(pdf).toString());
  }

  @Test
  void longNamesWrapInsideThePage() throws IOException {
    String name = "Board for bread and cheese with a groove for crumbs that runs along three sides";
    byte[] pdf = pdf(planSet(BOARD.replace("stock: oak,", "title: " + name + ", stock: oak,")));
    List<Paper> papers = PdfText.papers(pdf, PAPER);
    assertTrue(
        PdfText.glyphs(pdf).stream()
            .noneMatch(each -> reachesOut(each, papers.get(each.page() - 1))));
  }
}
