package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.SvgWriter;

/**
 * A drawing's SVG and its page in a PDF give the same picture, each drawn by a program that is not
 * ours: JSVG and PDFBox. Ink in the one has ink of the other within a third of a millimetre, and
 * areas of one tone have that tone in both.
 */
class SamePictureTest {
  /** Pixels of ink that the two programs may round apart where lines and letters end. */
  private static final int STRAY = 12;

  /** Pixels of tone that may differ beside a slanted seam. */
  private static final int TONES = 0;

  @TestFactory
  List<DynamicTest> theSvgLooksLikeThePageOfThePdf() {
    return AllProjects.each(
        sample -> {
          Map<String, Drawing> drawings = PrintedDrawings.of(sample.set());
          List<String> faults = new ArrayList<>();
          try (PDDocument document = PdfText.open(Rasters.pdf(drawings))) {
            int page = 0;
            for (Map.Entry<String, Drawing> each : drawings.entrySet()) {
              Raster pdf = Rasters.page(document, page++, each.getValue());
              Raster svg = Rasters.svg(SvgWriter.write(each.getValue()), each.getValue());
              if (strays(pdf, svg) > STRAY || svg.tonesApart(pdf) > TONES) {
                faults.add(fault(each.getKey(), pdf, svg));
              }
            }
          }
          assertEquals(List.of(), faults);
        });
  }

  private static int strays(Raster pdf, Raster svg) {
    return pdf.strays(svg) + svg.strays(pdf);
  }

  private static String fault(String name, Raster pdf, Raster svg) {
    return name + ": " + strays(pdf, svg) + " of ink, " + svg.tonesApart(pdf) + " of tone";
  }

  /** Without a line of 20 mm, a note, a dimension or its areas a picture is not the same. */
  @Test
  void whatIsMissingIsSeen() throws Exception {
    Drawing whole = AllProjects.named("window-bench").drawings().parts().get("D");
    Group group = (Group) whole.elements().getFirst();
    try (PDDocument document = PdfText.open(Rasters.pdf(Map.of("whole", whole)))) {
      Raster pdf = Rasters.page(document, 0, whole);
      assertTrue(strays(pdf, Rasters.svg(SvgWriter.write(whole), whole)) <= STRAY);
      for (Class<?> kind :
          List.of(Drawing.Line.class, Drawing.Note.class, Drawing.Dimension.class)) {
        Raster less = Rasters.svg(SvgWriter.write(without(kind, whole, group)), whole);
        assertTrue(strays(pdf, less) > 5 * STRAY, kind + " " + strays(pdf, less));
      }
      Raster plain = Rasters.svg(SvgWriter.write(without(Drawing.Area.class, whole, group)), whole);
      assertTrue(plain.tonesApart(pdf) > 1000, "tones " + plain.tonesApart(pdf));
    }
  }

  /** A part's drawing without one of a kind of elements, or without all areas. */
  private static Drawing without(Class<?> kind, Drawing whole, Group group) {
    List<Element> left = new ArrayList<>(group.elements());
    List<Element> some = left.stream().filter(kind::isInstance).toList();
    left.removeAll(kind == Drawing.Area.class ? some : List.of(one(some)));
    return new Drawing(
        whole.name(),
        whole.widthMm(),
        whole.heightMm(),
        whole.scale(),
        List.of(new Group(group.id(), group.mark(), group.name(), left)));
  }

  /** The shortest line that is 20 mm long or more; of other kinds the last. */
  private static Element one(List<Element> some) {
    return some.stream()
        .filter(each -> longMm(each) >= 20)
        .min(Comparator.comparingDouble(SamePictureTest::longMm))
        .orElse(some.getLast());
  }

  private static double longMm(Element element) {
    return element instanceof Drawing.Line line
        ? line.points().getFirst().distance(line.points().getLast())
        : 0;
  }
}
