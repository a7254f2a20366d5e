package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.planset.Labels.Label;
import storyrod.words.Words;

/** The label pages, laid out alone and read by an independent reader of PDF. */
class LabelPagesTest {
  private static final int PER_PAGE = LabelPages.COLUMNS * LabelPages.ROWS;

  private static byte[] pdf(Labels labels, PlanSet set, Paper paper) {
    Print print = Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
    StepWriter writer = new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build());
    Map<String, Object> data = new LinkedHashMap<>(Pages.of(set, print, writer::write).data());
    data.put("paper", paper);
    data.putAll(LabelPages.of(labels, paper).data());
    String page = part(data, "/style/style.ftl");
    String xhtml =
        "<html><head><title>Labels</title><style type=\"text/css\">"
            + page
            + "</style></head><body>"
            + part(data, "/labels/page.ftl")
            + "</body></html>";
    return PdfPages.write(
        xhtml, Map.of(), new PdfPages.About("Labels", "", "en", Optional.empty()));
  }

  private static String part(Map<String, Object> data, String template) {
    return Templates.SHARED.render(template, Words.ENGLISH, data);
  }

  private static Labels labels(PlanSet set) {
    return Labels.of(set, new Texts(set.piece().description().format(), Words.ENGLISH));
  }

  @TestFactory
  List<DynamicTest> everyPieceHasItsLabelAndEachGridItsPage() {
    return AllProjects.each(
        project -> {
          Labels labels = labels(project.set());
          for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
            byte[] pdf = pdf(labels, project.set(), paper);
            keep(project.name(), pdf);
            assertPages(labels, pdf);
          }
        });
  }

  private static void keep(String name, byte[] pdf) {
    try {
      Path folder = Path.of("target/labels");
      Files.createDirectories(folder);
      Files.write(folder.resolve(name + ".pdf"), pdf);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static void assertPages(Labels labels, byte[] pdf) throws IOException {
    int pages = Math.ceilDiv(labels.all().size(), PER_PAGE);
    try (var document = PdfText.open(pdf)) {
      assertEquals(pages, document.getNumberOfPages());
    }
    for (int page = 1; page <= pages; page++) {
      String text = PdfText.text(pdf, page).replaceAll("\\s+", "");
      int from = (page - 1) * PER_PAGE;
      for (Label label :
          labels.all().subList(from, Math.min(from + PER_PAGE, labels.all().size()))) {
        String counted = label.mark() + label.number() + "of" + label.of();
        assertTrue(text.contains(counted), () -> counted + " not in " + text);
        String sizes =
            label.size().length() + "×" + label.size().width() + "×" + label.size().thickness();
        assertTrue(text.contains(sizes.replace(" ", "")), () -> sizes + " not in " + text);
      }
    }
  }

  @Test
  void longNamesKeepToTheirLabelsOnBothPapers() throws IOException {
    PlanSet set = AllProjects.named("step-stool");
    Label long80 =
        new Label(
            "AB",
            11,
            12,
            "Adjustable shelf behind the left door of the upper cabinet with its own edge band",
            "mirrored",
            new CutList.Sizes("127 31/32", "14 31/32", "23/32"),
            "127 31/32 × 14 31/32 × 23/32 [3250.4 × 380.2 × 18.3]",
            "Ash",
            "along length",
            true,
            "underside",
            "108");
    Labels labels = new Labels(IntStream.range(0, PER_PAGE + 1).mapToObj(i -> long80).toList());
    for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
      byte[] pdf = pdf(labels, set, paper);
      try (var document = PdfText.open(pdf)) {
        assertEquals(2, document.getNumberOfPages());
      }
      double label = LabelPages.of(labels, paper).heightMm() + 0.15;
      List<Double> tops =
          PdfText.glyphs(pdf).stream()
              .filter(each -> each.page() == 1 && each.size() > 20 && each.text().equals("A"))
              .map(PdfText.Glyph::top)
              .distinct()
              .sorted()
              .collect(Collectors.toList());
      assertEquals(LabelPages.ROWS, tops.size());
      for (int i = 1; i < tops.size(); i++) {
        assertEquals(label, tops.get(i) - tops.get(i - 1), 0.4, "rows as high as the grid says");
      }
    }
  }
}
