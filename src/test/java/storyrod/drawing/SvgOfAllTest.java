package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import storyrod.piece.Mark;
import storyrod.planset.PrintedDrawings;

/** What must hold for the SVG of each drawing that any project prints. */
class SvgOfAllTest {
  /** The largest, an exploded view of many parts, takes about half of it. */
  private static final int MOST_BYTES = 400_000;

  private interface Check {
    void on(Drawing drawing, Document svg) throws Exception;
  }

  private static List<DynamicTest> each(Check check) {
    return AllProjects.each(
        sample -> {
          for (Drawing drawing : PrintedDrawings.of(sample.set()).values()) {
            check.on(drawing, SvgWriterTest.parse(SvgWriter.write(drawing)));
          }
        });
  }

  @TestFactory
  List<DynamicTest> idsAreNamesThatOccurOnce() {
    return each(
        (drawing, svg) -> {
          Set<String> ids = new HashSet<>();
          NodeList all = svg.getElementsByTagName("*");
          for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
              assertTrue(ids.add(id), drawing.name() + ": " + id + " occurs twice");
              assertTrue(id.matches("[A-Za-z][A-Za-z0-9-]*"), drawing.name() + ": " + id);
            }
          }
        });
  }

  /** Every group of a part says its mark and its name. */
  @TestFactory
  List<DynamicTest> groupsOfPartsHaveMarkAndName() {
    return AllProjects.each(
        sample -> {
          Set<String> marks = new HashSet<>();
          sample.set().piece().marks().stream().map(Mark::mark).forEach(marks::add);
          Hardware.of(sample.set().piece()).stream().map(Hardware::mark).forEach(marks::add);
          for (Drawing drawing : PrintedDrawings.of(sample.set()).values()) {
            NodeList groups =
                SvgWriterTest.parse(SvgWriter.write(drawing)).getElementsByTagName("g");
            for (int i = 0; i < groups.getLength(); i++) {
              Element group = (Element) groups.item(i);
              if (group.hasAttribute("id")) {
                assertTrue(
                    marks.contains(group.getAttribute("data-mark")), group.getAttribute("id"));
                assertFalse(group.getAttribute("data-name").isBlank(), group.getAttribute("id"));
              }
            }
          }
        });
  }

  @TestFactory
  List<DynamicTest> sizesAreInMillimetres() {
    return each(
        (drawing, svg) -> {
          Element root = svg.getDocumentElement();
          assertEquals(drawing.widthMm(), mm(root.getAttribute("width")), 0.01);
          assertEquals(drawing.heightMm(), mm(root.getAttribute("height")), 0.01);
        });
  }

  private static double mm(String size) {
    assertTrue(size.endsWith("mm"), size);
    return Double.parseDouble(size.substring(0, size.length() - 2));
  }

  /** Spaces at the start of a text are left out by whatever reads it: they must not count. */
  @TestFactory
  List<DynamicTest> noTextBeginsWithASpace() {
    return each(
        (drawing, svg) ->
            SvgWriterTest.texts(svg)
                .forEach(
                    text -> assertEquals(text.stripLeading(), text, () -> "in " + drawing.name())));
  }

  @TestFactory
  List<DynamicTest> filesAreSmall() {
    return AllProjects.each(
        sample ->
            PrintedDrawings.of(sample.set())
                .values()
                .forEach(
                    each -> {
                      int bytes = SvgWriter.write(each).getBytes(StandardCharsets.UTF_8).length;
                      assertTrue(bytes < MOST_BYTES, each.name() + " has " + bytes);
                    }));
  }
}
