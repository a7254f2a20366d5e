package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.drawing.SawnPiece;
import storyrod.measure.Length;
import storyrod.planset.CutReplay.Kind;
import storyrod.planset.CutReplay.Step;

/** A piece shorter than 12 in is not ripped only to get an offcut out of it (common practice). */
class ShortRipsTest {
  private static final Length SHORTEST = Length.inch(12, 1);

  @TestFactory
  List<DynamicTest> noShortPieceIsRippedForAnOffcut() {
    return AllProjects.each(
        sample -> {
          Stream<SawnPiece> sheets =
              sample.set().stock().layouts().stream()
                  .flatMap(plan -> plan.sheets().stream())
                  .map(sheet -> SawnPiece.of(sheet, sample.set().piece()));
          List<Step> dangerous =
              sheets
                  .flatMap(sheet -> CutReplay.of(sheet).stream())
                  .filter(ShortRipsTest::isShortRip)
                  .filter(ShortRipsTest::givesNoPart)
                  .toList();
          assertEquals(List.of(), dangerous);
        });
  }

  private static boolean isShortRip(Step step) {
    Length length = step.cut().to().minus(step.cut().from());
    return step.cut().alongLength() && length.isShorterThan(SHORTEST);
  }

  private static boolean givesNoPart(Step step) {
    return Stream.of(step.gives(), step.leaves())
        .flatMap(Optional::stream)
        .allMatch(each -> each.kind() == Kind.OFFCUT || each.kind() == Kind.WASTE);
  }
}
