package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects.Sample;
import storyrod.planset.PageRooms;
import storyrod.planset.Paper;
import storyrod.planset.Printing;
import storyrod.words.Words;

/** The general drawings of all projects fill their pages on every paper. */
class GeneralFillTest {
  /** Reached by all; a third drawer and a low table's side are short of half a page. */
  private static final double LEAST = 0.46;

  @TestFactory
  List<DynamicTest> noPageIsHalfEmptyOnAnyPaper() {
    return AllProjects.each(
        sample -> {
          List<String> faults = new ArrayList<>();
          Paper.BY_NAME.forEach((name, paper) -> faults.addAll(halfEmpty(sample, name, paper)));
          assertEquals(List.of(), faults);
        });
  }

  private static List<String> halfEmpty(Sample sample, String name, Paper paper) {
    Printing usual = Printing.usual(Words.ENGLISH);
    Printing printing =
        new Printing(
            usual.templates(), usual.words(), usual.edition(), Optional.of(paper), usual.choice());
    Rooms rooms = PageRooms.of(sample.set().piece(), sample.set().build(), printing);
    List<GeneralSheet> sheets = GeneralSheets.draw(sample.set().piece(), rooms);
    double room = rooms.page().heightMm();
    List<Double> heights = sheets.stream().map(each -> share(each, rooms) * room).toList();
    List<String> faults = new ArrayList<>();
    for (Packing.Page page :
        Packing.pages(heights.stream().map(Packing.Item::of).toList(), room, GeneralSheets.MOST)) {
      List<Double> on = heights.subList(page.first(), page.first() + page.choices().size());
      double fill = on.stream().mapToDouble(each -> each).sum() / room;
      if (fill < LEAST) {
        faults.add(name + " " + sheets.get(page.first()).drawing().name() + " " + fill);
      }
    }
    return faults;
  }

  /** How much of its page's height a drawing takes. */
  private static double share(GeneralSheet sheet, Rooms rooms) {
    boolean isTurned = sheet.drawing().widthMm() > rooms.page().widthMm();
    Size page = isTurned ? rooms.turnedPage() : rooms.page();
    return (sheet.drawing().heightMm() + rooms.besideGeneralMm()) / page.heightMm();
  }
}
