package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.planset.PageRooms;
import storyrod.planset.PlanSet;
import storyrod.words.Words;

/**
 * Drawings lie on a page that is wider than high where that is worth the turning, and only there.
 */
class TurnedPagesTest {
  private static final double WORTH = 1.2;

  @TestFactory
  List<DynamicTest> partsAreClearlyLargerOnTurnedPages() {
    return AllProjects.each(
        sample -> {
          PlanSet set = sample.set();
          Rooms rooms = rooms(set);
          List<String> faults = new ArrayList<>();
          for (Mark mark : set.piece().marks()) {
            Drawing shown = set.drawings().parts().get(mark.mark());
            Size room = new Size(rooms.page().widthMm(), roomMm(mark, rooms.page(), rooms));
            Drawing upright = PartDrawing.draw(mark, set.piece(), room);
            if (isTurned(shown, rooms) && shown.factor() < WORTH * upright.factor()) {
              faults.add(mark.mark() + " " + shown.scale() + " " + upright.scale());
            }
          }
          assertEquals(List.of(), faults);
        });
  }

  /** The drawing keeps to its page with all that stands beside it. */
  @TestFactory
  List<DynamicTest> whatIsTurnedKeepsToItsPage() {
    return AllProjects.each(
        sample -> {
          Rooms rooms = rooms(sample.set());
          Size page = rooms.turnedPage();
          Drawings drawings = sample.set().drawings();
          for (Mark mark : sample.set().piece().marks()) {
            Drawing part = drawings.parts().get(mark.mark());
            assertTrue(
                !isTurned(part, rooms)
                    || part.widthMm() <= page.widthMm()
                        && part.heightMm() <= roomMm(mark, page, rooms),
                part::name);
          }
          for (GeneralSheet sheet : drawings.general()) {
            assertTrue(
                !isTurned(sheet.drawing(), rooms)
                    || sheet.drawing().widthMm() <= page.widthMm()
                        && sheet.drawing().heightMm() <= page.heightMm() - rooms.besideGeneralMm(),
                sheet.drawing()::name);
          }
        });
  }

  /**
   * By their sizes: a top 70 in long, a leg 28 1/2 in, a bench of 58 in, a bottom of 51 7/16 in.
   */
  @Test
  void whatIsLongLies() {
    assertEquals(
        List.of("general-front", "general-side-section", "general-top", "part-A"),
        turned("dining-table"));
    assertEquals(List.of("general-front", "part-B"), turned("window-bench"));
  }

  /** A case that is as high as wide gains nothing. */
  @Test
  void whatIsHighStandsUpright() {
    assertEquals(List.of(), turned("bookcase"));
    assertEquals(List.of(), turned("nightstand"));
  }

  /** By its length of 28 1/2 in: five sheets of 8 1/2 x 11 in upright, four turned. */
  @Test
  void longTemplatesTakeFewerSheets() {
    Piece table = AllProjects.named("dining-table").piece();
    Rooms rooms = rooms(AllProjects.named("dining-table"));
    List<FullSize> shapes = FullSize.of(table);
    Size upright = rooms.fullSize(shapes);
    assertEquals(5, sheets(TemplateSheets.draw(shapes, Words.ENGLISH, upright, upright)));
    assertEquals(4, sheets(TemplateSheets.draw(shapes, Words.ENGLISH, rooms)));
  }

  /** Templates of holes and of a hollow leg are on as few sheets upright. */
  @TestFactory
  List<DynamicTest> templatesStayUprightWhereTurningSavesNone() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          Rooms rooms = rooms(sample.set());
          List<FullSize> shapes = FullSize.of(piece);
          Size room = rooms.fullSize(shapes);
          List<TemplateSheets> upright = TemplateSheets.draw(shapes, Words.ENGLISH, room, room);
          List<TemplateSheets> shown = sample.set().drawings().templates();
          boolean anyTurned =
              shown.stream()
                  .flatMap(each -> each.tiles().stream())
                  .anyMatch(tile -> isTurned(tile.drawing(), rooms));
          assertEquals(anyTurned, sheets(shown) < sheets(upright));
        });
  }

  private static int sheets(List<TemplateSheets> templates) {
    return templates.stream().mapToInt(each -> each.tiles().size()).sum();
  }

  private static List<String> turned(String project) {
    PlanSet set = AllProjects.named(project);
    Rooms rooms = rooms(set);
    return Stream.concat(
            set.drawings().general().stream().map(GeneralSheet::drawing),
            set.drawings().parts().values().stream())
        .filter(each -> isTurned(each, rooms))
        .map(Drawing::name)
        .toList();
  }

  private static boolean isTurned(Drawing drawing, Rooms rooms) {
    return drawing.widthMm() > rooms.page().widthMm();
  }

  private static double roomMm(Mark mark, Size page, Rooms rooms) {
    return page.heightMm() - rooms.besidePartMm(mark);
  }

  private static Rooms rooms(PlanSet set) {
    return PageRooms.of(set.piece(), set.build(), Words.ENGLISH);
  }
}
