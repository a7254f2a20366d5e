package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.piece.Piece;

/** What the steps of whole projects ask for can be done as the work lies on the bench. */
class AtTheBenchTest {
  private static List<StepText> stool;
  private static List<StepText> table;
  private static List<StepText> bookcase;
  private static List<StepText> bench;

  @BeforeAll
  static void write() throws IOException {
    stool = StepWordsTest.steps("step-stool");
    table = StepWordsTest.steps("dining-table");
    bookcase = StepWordsTest.steps("bookcase");
    bench = StepWordsTest.steps("window-bench");
  }

  private static StepText step(List<StepText> steps, String title) {
    return steps.stream()
        .filter(step -> step.title().equals(title))
        .findFirst()
        .orElseThrow(() -> new AssertionError(title));
  }

  private static void assertSays(StepText step, String words) {
    assertTrue(step.sentences().stream().anyMatch(each -> each.contains(words)), step::toString);
  }

  @Test
  void noMeasureIsTakenFromAnEndThatIsLetIn() {
    assertSays(step(stool, "Glue the stretcher to the left leg panel"), "from the bottom end");
    assertEquals(
        List.of(),
        stool.stream()
            .flatMap(each -> each.sentences().stream())
            .filter(each -> each.contains("from the top end"))
            .toList());
  }

  @Test
  void screwsThatPullAGluedJointHomeSpareTheClamps() {
    StepText legs = step(stool, "Glue the left leg panel to the step");
    assertEquals(
        List.of("glue and brush", "drill", "pilot bit", "depth stop", "driver bit"), legs.tools());
    assertEquals("", legs.waiting());
    assertTrue(legs.sentences().stream().noneMatch(each -> each.contains("lamp")), legs::toString);
  }

  /** Plain faces that are screwed or glued later fall apart when they are tried. */
  @Test
  void whatMeetsWithPlainFacesIsHeldWhenItIsTriedDry() {
    StepText whole = step(stool, "Put the piece together dry");
    assertSays(whole, "Close every joint by hand");
    assertSays(whole, "B × 2 and C meet with plain faces");
    assertSays(whole, "press these together by hand while you look at the others");
    assertEquals(List.of("mallet"), whole.tools(), "jaws slip where the faces lean");
    StepText frame = step(bench, "Put the face frame together dry");
    assertSays(frame, "Draw every joint together with a clamp across it");
    assertEquals(List.of("mallet", "bar clamps"), frame.tools());
  }

  /** Between the legs and below the step, no sander turns on so narrow a board. */
  @Test
  void stretcherIsSandedBeforeItIsBuiltIn() {
    assertSays(step(stool, "Sand the inside faces"), "Sand both faces of C,");
    assertTrue(
        step(stool, "Finish the piece").sentences().stream()
            .noneMatch(each -> each.contains("no step before sanded")));
  }

  /** A back of 1/4 in is nothing to press on between two partitions. */
  @Test
  void clampsBearWhereSomethingStandsBehindAThinPanel() {
    assertSays(
        step(bench, "Glue the face frame in place"),
        "Set those jaws on the back panel (E), with a caul under each, right behind the two"
            + " partitions (C)");
  }

  /** The frame alone weighs some 20 lb; with its top on a table is a load for two. */
  @Test
  void onlyWhatIsHeavyAsItStandsByThenIsTurnedByTwo() throws IOException {
    assertTrue(
        step(table, "Mount the glides").cautions().stream().noneMatch(AtTheBenchTest::asksForTwo));
    Piece heavy =
        StepWordsTest.piece(
            "dining-table",
            text -> text.replace("thickness: 2 1/4,", "thickness: 2 1/4, density: 2500,"));
    assertTrue(
        step(StepWordsTest.steps(heavy), "Mount the glides").cautions().stream()
            .anyMatch(AtTheBenchTest::asksForTwo));
  }

  private static boolean asksForTwo(String caution) {
    return caution.contains("more than one person should turn");
  }

  @Test
  void eachJointOfAFrameGetsItsOwnClamp() {
    assertSays(
        step(table, "Glue up the frame"),
        "Set two clamps from left to right across the joints, the jaws on the left end and the"
            + " right end: they open 52 in");
  }

  @Test
  void clampsOfEqualSubAssembliesAreCountedForAllOfThem() {
    assertSays(
        step(table, "Glue up the left end and the right end"),
        "Set two clamps from front to back across the joints, the jaws on the four legs (A)");
  }

  @Test
  void whatIsDrivenFromBelowIntoASubAssemblyIsDrivenFromAbove() {
    StepText pegged = step(table, "Fasten the breadboard ends to the slab");
    assertSays(pegged, "With the underside up, drive in the six oak pegs 1/4 in.");
    assertEquals(
        List.of("mallet", "bar clamps", "flush-cut saw", "chisel", "glue and brush"),
        pegged.tools());
  }

  @Test
  void jawsReachUnderWhatLiesOnItsBack() {
    assertSays(
        step(bookcase, "Glue the left side strip to the left side"),
        "on its back, on two battens, so that the jaws reach under it");
  }

  @Test
  void nothingComesFromBelowToWhatLiesOnItsBack() {
    assertSays(
        step(bookcase, "Screw the plinth to the bottom"),
        "Bring the plinth in from the lower end of the piece");
  }

  /** The tray's long sides cross no divider on which they could stand. */
  @Test
  void feltDotsGoWhereTheTrayStands() throws IOException {
    StepText dots =
        step(StepWordsTest.steps("sewing-box"), "Fit the felt dots 3/8 in, self-adhesive");
    assertSays(
        dots,
        "four to the two tray ends (Q) and eight to the two long frame pieces (D) and the two short"
            + " frame pieces (E)");
  }

  /** A slot as wide as the cutter has no second line to cut at. */
  @Test
  void slotsOfCrossingPartsAreCutInOnePass() throws IOException {
    assertSays(
        step(
            StepWordsTest.steps("sewing-box"),
            "Cut the cross-laps in the long dividers and the short dividers"),
        "cut each slot in one pass");
  }
}
