package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** No text of any page of any project lies on another or comes too near to it. */
class NoTextOnTextTest {
  @TestFactory
  List<DynamicTest> noTextLiesOnAnother() {
    return AllProjects.each(
        project -> {
          byte[] pdf = new PlanSetWriter(Words.ENGLISH).write(project.set()).get("plan-set.pdf");
          Map<Integer, List<PdfText.Glyph>> pages =
              PdfText.glyphs(pdf).stream()
                  .filter(each -> !each.text().isBlank())
                  .collect(Collectors.groupingBy(PdfText.Glyph::page));
          List<String> faults = new ArrayList<>();
          pages.forEach((page, glyphs) -> addOverlaps(glyphs, faults));
          pages.forEach((page, glyphs) -> addTooNear(glyphs, faults));
          assertEquals(List.of(), faults);
        });
  }

  private static void addOverlaps(List<PdfText.Glyph> glyphs, List<String> faults) {
    for (int i = 0; i < glyphs.size(); i++) {
      for (int j = i + 1; j < glyphs.size(); j++) {
        if (overlap(glyphs.get(i), glyphs.get(j))) {
          faults.add(glyphs.get(i) + " on " + glyphs.get(j));
        }
      }
    }
  }

  /** Whether more than 0.4 mm of each lie on the other, so that kerning counts for nothing. */
  private static boolean overlap(PdfText.Glyph a, PdfText.Glyph b) {
    return Math.min(a.right(), b.right()) - Math.max(a.left(), b.left()) > 0.4
        && Math.min(a.bottom(), b.bottom()) - Math.max(a.top(), b.top()) > 0.4;
  }

  /** The sizes of a step's text and of the lists beside it, in whole points as they are read. */
  private static final double TEXT_PT = 9;

  private static final double LIST_PT = 8;
  private static final double GUTTER_MM = 5;

  private static void addTooNear(List<PdfText.Glyph> glyphs, List<String> faults) {
    List<PdfText.Glyph> lists = sized(glyphs, LIST_PT);
    for (PdfText.Glyph text : sized(glyphs, TEXT_PT)) {
      lists.stream()
          .filter(each -> Math.abs(each.bottom() - text.bottom()) < 2)
          .filter(each -> each.left() > text.left())
          .filter(each -> each.left() - text.right() < GUTTER_MM)
          .forEach(each -> faults.add(text + " too near to " + each));
    }
  }

  private static List<PdfText.Glyph> sized(List<PdfText.Glyph> glyphs, double points) {
    return glyphs.stream().filter(each -> Math.abs(each.size() - points) < 0.5).toList();
  }
}
