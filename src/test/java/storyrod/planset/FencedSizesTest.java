package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.drawing.SawnPiece;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;

/**
 * A part's length and width are each set by a fence, never what happens to be left of a piece: only
 * then do equal parts come out equal (common practice).
 */
class FencedSizesTest {
  /** 47 1/2 in hold three times 15 3/4 in and two kerfs: the last is what is left, in any order. */
  private static final List<String> FILLED =
      List.of("window-bench A width 400.05 mm", "window-bench B width 400.05 mm");

  @TestFactory
  List<DynamicTest> everySizeOfAPartIsAFenceSetting() {
    return AllProjects.each(
        sample ->
            assertEquals(
                FILLED.stream().filter(each -> each.startsWith(sample.name() + " ")).toList(),
                sample.set().stock().layouts().stream()
                    .flatMap(plan -> plan.sheets().stream())
                    .map(sheet -> SawnPiece.of(sheet, sample.set().piece()))
                    .flatMap(FencedSizesTest::leftOver)
                    .map(each -> sample.name() + " " + each)
                    .toList()));
  }

  private static Stream<String> leftOver(SawnPiece sheet) {
    return sheet.parts().stream()
        .flatMap(
            part ->
                Stream.of(true, false)
                    .filter(
                        along -> sheet.cuts().stream().noneMatch(c -> sets(c, part.area(), along)))
                    .map(along -> part.mark() + " " + size(part.area(), along)));
  }

  private static String size(Area area, boolean along) {
    return along ? "width " + area.width() : "length " + area.length();
  }

  /** Whether a cut is made at the far side of an area, its fence at the near one. */
  private static boolean sets(SawCut cut, Area area, boolean along) {
    Length start = along ? area.y() : area.x();
    Length size = along ? area.width() : area.length();
    Length across = along ? area.x() : area.y();
    return cut.alongLength() == along
        && cut.at().equals(start.plus(size))
        && cut.fence().equals(size)
        && !cut.from().isLongerThan(across)
        && cut.to().isLongerThan(across);
  }
}
