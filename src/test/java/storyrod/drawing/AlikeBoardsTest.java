package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.planset.PlanSet;
import storyrod.stock.StockPlan.SheetPlan;

/** Boards that each give a stave of one top, by their look one board many times over. */
class AlikeBoardsTest {
  private static final PlanSet TABLE = AllProjects.named("dining-table");

  private static List<SawnAlike> topBoards() {
    SheetPlan plan =
        TABLE.stock().layouts().stream()
            .filter(each -> each.stock().name().equals("top-wood"))
            .findFirst()
            .orElseThrow();
    return SawnAlike.of(
        plan.sheets().stream().map(sheet -> SawnPiece.of(sheet, TABLE.piece())).toList());
  }

  @Test
  void theyAreShownOnceUnderNoNumberOfAStave() {
    SawnAlike many = topBoards().getFirst();
    assertEquals("1–7", many.range());
    assertEquals(List.of("Slab"), many.piece().parts().stream().map(Laid::title).toList());
  }

  @Test
  void theStepThatChoosesThemShowsEachLookOnce() {
    Drawing drawn =
        TABLE.build().steps().stream()
            .filter(step -> step.verb() == Verb.CHOOSE && step.targets().contains("top.slab"))
            .flatMap(step -> GridPicture.of(TABLE.piece(), TABLE.stock(), step).stream())
            .findFirst()
            .orElseThrow()
            .drawn(new Size(190, 90));
    String mark = topBoards().getFirst().piece().parts().getFirst().mark();
    List<String> titles =
        drawn.elements().stream()
            .filter(Group.class::isInstance)
            .map(Group.class::cast)
            .filter(each -> each.mark().equals(mark))
            .map(Group::title)
            .toList();
    assertEquals(List.of("D Slab"), titles);
  }
}
