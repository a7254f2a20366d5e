package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.planset.StepEntry.HardwareRow;
import storyrod.planset.StepEntry.SizeRow;
import storyrod.words.Words;

/** Steps that are higher than a page. */
class StepSlicesTest {
  private static final List<String> SENTENCES =
      IntStream.range(0, 12).mapToObj(i -> "Sentence %d, ".formatted(i).repeat(6)).toList();

  private static Print print() {
    PlanSet set = AllProjects.named("step-stool");
    return Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
  }

  private static StepEntry step(int sentences, int sizes) {
    List<String> words =
        IntStream.range(0, sentences).mapToObj(i -> SENTENCES.get(i % SENTENCES.size())).toList();
    List<SizeRow> rows =
        IntStream.range(0, sizes).mapToObj(i -> new SizeRow("M" + i, "1", i + " × 60")).toList();
    StepText text =
        new StepText(
            "Do it",
            words,
            List.of(),
            List.of(new StepText.ToolText("saw", "saw")),
            List.of(),
            "1 h",
            "");
    return new StepEntry(
        1, text, List.of(), List.of(), List.of(), List.of(), rows, List.of(), false, 0, "1 h", "");
  }

  /** With a picture as wide as its sentences, and so many items in its list of hardware. */
  private static StepEntry pictured(int sentences, int items) {
    StepEntry bare = step(sentences, 0);
    DrawingBox picture =
        new DrawingBox("step-1", new StepHeights(print()).besideListsMm(), 90, Optional.empty());
    return new StepEntry(
        1,
        bare.text(),
        List.of(picture),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        IntStream.range(0, items).mapToObj(i -> new HardwareRow("H" + i, "screw", 4)).toList(),
        false,
        1,
        "1 h",
        "");
  }

  /** Picture and lists together are higher than a page; beside each other they are not. */
  @Test
  void aNarrowPictureStandsBesideItsLists() {
    StepEntry step = pictured(16, 26);
    StepHeights heights = new StepHeights(print());
    List<StepSlice> slices = slices(step);
    assertTrue(90 + heights.side().besidePicture(step) > heights.roomMm());
    assertEquals(2, slices.size());
    slices.forEach(each -> assertTrue(each.heightMm() <= heights.roomMm(), each.toString()));
  }

  private static List<StepSlice> slices(StepEntry step) {
    return StepSlices.of(step, new StepHeights(print()), 0);
  }

  @TestFactory
  Stream<DynamicTest> noPageIsNearlyEmptyAndNoneTooFull() {
    double room = new StepHeights(print()).roomMm();
    return Stream.of(
            step(40, 0), step(23, 0), step(26, 0), step(3, 40), step(3, 300), step(80, 127))
        .map(
            step ->
                DynamicTest.dynamicTest(
                    step.text().sentences().size() + " and " + step.sizes().size(),
                    () -> {
                      List<StepSlice> slices = slices(step);
                      slices.forEach(each -> assertTrue(each.heightMm() <= room + 1e-9));
                      assertTrue(
                          slices.size() == 1 || slices.getLast().heightMm() >= room / 3,
                          slices.toString());
                    }));
  }

  @TestFactory
  Stream<DynamicTest> allOfItStandsOnItsPagesOnce() {
    return Stream.of(step(40, 0), step(3, 300), step(80, 127))
        .map(step -> DynamicTest.dynamicTest("" + step.sizes().size(), () -> assertWhole(step)));
  }

  private static void assertWhole(StepEntry step) {
    List<StepSlice> slices = slices(step);
    assertTrue(slices.size() > 1);
    assertTrue(slices.getFirst().begins() && slices.getLast().ends());
    assertEquals(
        IntStream.range(0, step.text().sentences().size()).boxed().toList(),
        slices.stream().flatMap(s -> IntStream.range(s.from(), s.to()).boxed()).toList());
    assertEquals(
        step.sizes(), slices.stream().flatMap(each -> downTheColumns(each.sizes())).toList());
  }

  private static Stream<SizeRow> downTheColumns(List<List<SizeRow>> rows) {
    int columns = rows.isEmpty() ? 0 : rows.getFirst().size();
    return IntStream.range(0, columns)
        .boxed()
        .flatMap(
            column -> rows.stream().filter(row -> row.size() > column).map(row -> row.get(column)));
  }

  /** What fits on a page keeps its lists beside its sentences. */
  @TestFactory
  Stream<DynamicTest> whatFitsIsWhole() {
    return Stream.of(step(5, 10), step(15, 0))
        .map(
            step ->
                DynamicTest.dynamicTest(
                    "" + step.sizes().size(),
                    () -> {
                      assertEquals(1, slices(step).size());
                      assertTrue(!slices(step).getFirst().below());
                    }));
  }
}
