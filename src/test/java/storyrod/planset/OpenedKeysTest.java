package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.GeneralSheet;
import storyrod.piece.HardwareUse;

/** The lists below the exploded views of sub-assemblies. */
class OpenedKeysTest {
  /** They count what is drawn in these views, not what goes into the whole piece. */
  @TestFactory
  List<DynamicTest> theyCountWhatTheirViewsShow() {
    return AllProjects.each(
        project -> {
          PlanSet set = project.set();
          List<GeneralSheet> sheets = set.drawings().exploded().opened();
          HardwareList all =
              new HardwareList(
                  HardwareUse.of(set.piece()).counts().keySet().stream()
                      .map(item -> HardwareUse.of(set.piece()).mark(item))
                      .map(mark -> new HardwareList.Row(mark, mark, -1, "", ""))
                      .toList());
          List<List<GeneralSheet>> pages = new ArrayList<>();
          int at = 0;
          for (int count : OpenedPages.counts(sheets.size())) {
            pages.add(sheets.subList(at, at + count));
            at += count;
          }
          for (List<GeneralSheet> page : pages) {
            Map<String, Integer> said =
                HardwareKey.ofSheets(page, all).stream()
                    .collect(
                        Collectors.toMap(
                            HardwareList.Row::mark,
                            HardwareList.Row::count,
                            Integer::sum,
                            TreeMap::new));
            assertEquals(drawn(set, page), said);
          }
        });
  }

  /** A catch has a body on the door and one in the frame, and is one catch. */
  @TestFactory
  List<DynamicTest> allPagesTogetherCountNothingTwice() {
    return AllProjects.each(
        project -> {
          PlanSet set = project.set();
          Map<String, Integer> all = new TreeMap<>();
          HardwareUse use = HardwareUse.of(set.piece());
          use.counts().forEach((item, count) -> all.put(use.mark(item), count));
          OpenedPages.of(set, Texts.of(set.piece())).keys().stream()
              .flatMap(List::stream)
              .forEach(row -> all.merge(row.mark(), -row.count(), Integer::sum));
          all.values().removeIf(left -> left >= 0);
          assertEquals(Map.of(), all);
        });
  }

  private static Map<String, Integer> drawn(PlanSet set, List<GeneralSheet> page) {
    HardwareUse use = HardwareUse.of(set.piece());
    Map<String, Integer> bodies = new TreeMap<>();
    page.forEach(
        sheet ->
            sheet.drawing().elements().stream()
                .filter(Group.class::isInstance)
                .map(Group.class::cast)
                .filter(group -> group.id().startsWith("hardware-"))
                .forEach(group -> bodies.merge(group.mark(), sheet.units().size(), Integer::sum)));
    for (PlacedItem each : PlacedHardware.of(set.piece())) {
      int many = each.origin().each();
      bodies.computeIfPresent(
          use.mark(each.item()), (mark, count) -> count > 0 && many > 1 ? -count / many : count);
    }
    bodies.keySet().retainAll(marks(use));
    bodies.replaceAll((mark, count) -> Math.abs(count));
    return bodies;
  }

  /** What is made of the piece's own wood stands in the cut list, under a part's mark. */
  private static List<String> marks(HardwareUse use) {
    return use.counts().keySet().stream().map(use::mark).toList();
  }
}
