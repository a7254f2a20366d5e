package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.Library;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.planset.StepText.SettingText;
import storyrod.words.Words;

/** What the steps of whole projects say. */
class StepWordsTest {
  private static List<StepText> sideboard;
  private static List<StepText> table;
  private static List<StepText> bench;
  private static List<StepText> bookcase;
  private static List<StepText> box;

  @BeforeAll
  static void write() throws IOException {
    sideboard = steps("sideboard");
    table = steps("dining-table");
    bench = steps("window-bench");
    bookcase = steps("bookcase");
    box = steps("sewing-box");
  }

  static List<StepText> steps(String project) throws IOException {
    return steps(piece(project));
  }

  static List<StepText> steps(Piece piece) {
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    StepWriter writer = new StepWriter(piece, Words.ENGLISH, new Templates(), plan);
    return plan.steps().stream().map(writer::write).toList();
  }

  static Piece piece(String project) throws IOException {
    return piece(project, text -> text);
  }

  /** The piece of a project whose text is changed first. */
  static Piece piece(String project, UnaryOperator<String> change) throws IOException {
    Path file = Path.of("projects", project, "project.yaml");
    Diagnostics diagnostics = new Diagnostics();
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
    return new DescriptionReader(words, Printable::has, StepWordsTest::beside)
        .read(new SourceText(file.toString(), change.apply(Files.readString(file))), diagnostics)
        .flatMap(description -> PieceBuilder.build(description, diagnostics))
        .orElseThrow(() -> new AssertionError(diagnostics.sorted()));
  }

  private static Library.Found beside(String path, SourceText from) {
    Path file = Path.of(from.file()).resolveSibling(path);
    try {
      return Library.Found.of(new SourceText(file.toString(), Files.readString(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static StepText titled(List<StepText> steps, String title) {
    return steps.stream()
        .filter(step -> step.title().equals(title))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(title + " in " + steps.stream().map(StepText::title).toList()));
  }

  private static void assertSays(StepText step, String sentence) {
    assertTrue(step.sentences().contains(sentence), step::toString);
  }

  /** A notch all along an edge, not through: no work for a jigsaw. */
  @Test
  void notchAlongAnEdgeIsCutLikeARabbet() {
    StepText step =
        titled(
            box,
            "Cut the notches along the edges of the long frame pieces and the short frame pieces");
    assertEquals(List.of("table saw", "dado set", "board of scrap for the fence"), step.tools());
  }

  /** A cutter in the table saw cannot start and stop inside a board. */
  @Test
  void groovesThatEndInsideABoardAreRouted() {
    StepText step = titled(box, "Cut the stopped grooves in the left end and the right end");
    assertEquals(
        List.of("router table with a fence", "straight or spiral bit", "chisel"), step.tools());
    assertEquals(
        "Run the edge named along the fence, from stop to stop, and square those ends with a"
            + " chisel.",
        step.sentences().getLast());
    assertEquals(
        "Run the edge named along the fence.",
        titled(box, "Cut the grooves in the front and the back").sentences().getLast());
  }

  @Test
  void quarterSawnStockIsNamedSoWhereItIsBought() throws IOException {
    Piece piece = piece("sewing-box");
    Texts texts = new Texts(piece.description().format(), Words.ENGLISH);
    assertEquals("Black cherry 1/2, quarter-sawn", texts.stock(piece.part("lid").stock()));
    assertEquals("Black cherry 1/2", texts.stock(piece.part("box.back").stock()));
  }

  @Test
  void bothCheeksOfABridleAreOneStep() {
    assertEquals(
        1, box.stream().filter(step -> step.title().startsWith("Cut the bridle cheeks")).count());
  }

  @Test
  void crateOfDividersNeedsNoClamps() {
    StepText step = titled(box, "Glue the short dividers to the long dividers");
    assertTrue(step.sentences().stream().noneMatch(s -> s.contains("clamps on")), step::toString);
    assertTrue(
        step.sentences().stream().anyMatch(s -> s.startsWith("Press the slots into each other")),
        step::toString);
  }

  @Test
  void leftAndRightPartsOfOneMarkAreSpokenOfTogether() {
    StepText step = titled(sideboard, "Screw the stretchers to the sides and the partitions");
    assertSays(step, "Bring the two stretchers (D) in from above.");
    assertSays(step, "Keep the two stretchers (D) flush with the two sides (B) at the top.");
  }

  @Test
  void partsOfOneNameInTwoSizesAreManyInATitle() {
    titled(sideboard, "Plane the top and the drawer fronts and cut them to size");
  }

  @Test
  void sizeBehindAnItemsNameStaysAsItIsForMany() {
    assertSays(
        titled(table, "Fasten the breadboard ends to the slab"),
        "With the underside up, drive in the six oak pegs 1/4 in.");
  }

  @Test
  void frontsAreToldApartInTheContents() {
    titled(sideboard, "Fix the drawer fronts of drawers 1 and 2 and the upper drawer");
  }

  @Test
  void leafOnTheCaseIsScrewedOnWhenTheDoorIsHung() {
    List<String> hinges =
        titled(sideboard, "Fit the hinges and hang the left door and the right door on trial")
            .sentences();
    assertTrue(
        hinges.stream().anyMatch(s -> s.endsWith("its screws go in when the door is hung.")),
        hinges::toString);
    assertTrue(hinges.getLast().startsWith("Take all of it off again"), hinges::toString);
    assertSays(
        titled(sideboard, "Put the hinges back"),
        "Set each hinge back into its mortise in the door and drive its screws; those of the other"
            + " leaf go in when the door is hung.");
    StepText hang = titled(sideboard, "Hang the left door and the right door");
    assertEquals(
        "Hang one after the other: the left door and the right door.", hang.sentences().getFirst());
    assertSays(
        hang,
        "Close it and look at the gap; when it is as it was on trial, drive the other screws.");
  }

  @Test
  void whatHangsOnOneLineOfGlueIsHandledWithCareUntilItIsFirm() {
    String until = "Handle with care until step ";
    StepText sides = titled(sideboard, "Glue the partitions to the bottom");
    assertTrue(sides.cautions().getFirst().startsWith(until), sides::toString);
    assertTrue(
        sides.cautions().getFirst().contains("until the two stretchers (D) are on"),
        sides::toString);
    for (String after : List.of("Screw the cleats to the bottom", "Fasten the back in place")) {
      assertTrue(
          titled(sideboard, after).cautions().stream().noneMatch(each -> each.startsWith(until)),
          after);
    }
  }

  @Test
  void glueForTonguesStaysOutOfTheRestOfTheirGroove() throws IOException {
    List<StepText> door = steps("../src/test/resources/projects/panel-door");
    String said =
        "Brush a thin coat of glue into the grooves and on the ends that go in; in a groove only"
            + " where they sit.";
    assertTrue(door.stream().anyMatch(step -> step.sentences().contains(said)), door::toString);
  }

  @Test
  void glueStaysOutOfTheGrooveThatAPanelMovesIn() {
    StepText door = titled(sideboard, "Glue up the left door and the right door");
    assertSays(
        door,
        "Brush a thin coat of glue into the mortises and on the tenons that go in; in a groove only"
            + " where the haunches sit.");
    assertTrue(
        door.sentences().stream().anyMatch(s -> s.matches("Slide the .* without glue\\.")),
        door::toString);
  }

  @Test
  void whatStandsFirstIsSetUpAndNotBroughtIn() {
    StepText step = titled(table, "Set up the frame");
    assertEquals(
        List.of(
            clampsOff(table, titled(table, "Glue up the frame")),
            "Set the frame upright on a level place and see that it does not rock.",
            "Where a leg is short, slide a thin wedge under it, and take as much off the other legs"
                + " as the wedge is thick there."),
        step.sentences());
  }

  /** The breadboard ends stand out past the slab: 70 in over all, and the frame 52 in. */
  @Test
  void overhangIsThatOfTheWholeTop() {
    StepText step = titled(table, "Fasten the top");
    assertTrue(
        step.settings().contains(new SettingText("Overhang at the left", "", "9 in")),
        step::toString);
    assertFalse(
        step.settings().contains(new SettingText("Overhang at the left", "", "6 1/4 in")),
        step::toString);
  }

  @Test
  void breadboardEndStaysFreeOfGlueAndIsPeggedFromBelow() {
    StepText step = titled(table, "Fasten the breadboard ends to the slab");
    assertSays(
        step,
        "Use no glue in the groove, or only over a few inches in the middle: the wood that lies"
            + " across it has to be free to swell and shrink.");
    assertSays(step, "Set the two breadboard ends (E) in place, each from its own side.");
    assertSays(step, "With the underside up, drive in the six oak pegs 1/4 in.");
  }

  @Test
  void subAssembliesThatAreMirrorImagesAreBuiltInOneStep() {
    assertSays(
        titled(sideboard, "Glue up the left door and the right door"),
        "Build the left door and the right door as mirror images of each other: lay each part on"
            + " the side where the picture shows it.");
  }

  @Test
  void partsOfInnerLevelsAreSandedBeforeTheyFaceEachOther() {
    assertSays(
        titled(table, "Sand the inside faces"),
        "Sand each face that will look inwards on A × 4, B × 2 and C × 2, along the grain, up to"
            + " grit 220.");
  }

  /** What is told where parts are first needed that another step glued and clamped. */
  private static String clampsOff(List<StepText> steps, StepText glued) {
    return "Take off the clamps of step " + (1 + steps.indexOf(glued)) + ".";
  }

  @Test
  void pieceIsLaidDownOnceForStepsInARow() {
    StepText left = titled(bookcase, "Glue the left side strip to the left side");
    assertSays(
        left, "Lay what is together on its back, on two battens, so that the jaws reach under it.");
    List<String> told =
        left.sentences().stream().filter(said -> !said.startsWith("Note: ")).toList();
    assertEquals("Leave it on its back for the next step.", told.getLast());
    StepText right =
        titled(
            bookcase,
            "Glue the right side strip and the bottom strip to the right side and the bottom");
    assertEquals(clampsOff(bookcase, left), right.sentences().getFirst());
    assertEquals(
        "It still lies on its back: see that the battens under it leave room for the jaws.",
        right.sentences().get(1));
    List<String> all = bookcase.stream().flatMap(step -> step.sentences().stream()).toList();
    assertEquals(1, all.stream().filter("Stand it up again."::equals).count());
  }

  @Test
  void fourEqualLegsTakeOneSettingOfTheGuide() {
    List<String> guided =
        titled(table, "Cut the mortises in the legs").sentences().stream()
            .filter(sentence -> sentence.startsWith("For "))
            .toList();
    assertEquals(
        List.of(
            "For the four legs (A), set the guide to 17/32 in from the left face, then from the"
                + " front face, as the part is drawn."),
        guided);
  }

  /** The frame is 52 in by 30 in: its diagonal is 60.03 in. */
  @Test
  void lastJointOfATableFrameIsSquaredByTwoPeople() {
    StepText last = titled(table, "Glue up the frame");
    assertSays(
        last,
        "Measure both diagonals from outer corner to outer corner: each should be 60 1/32 in.");
    assertTrue(last.cautions().getFirst().startsWith("Have a helper"), last::toString);
  }

  @Test
  void panelTooWideForThePlanerAsksForNone() {
    List<String> tools = titled(table, "Plane the slab and cut it to size").tools();
    assertFalse(tools.contains("planer"), tools::toString);
    assertTrue(tools.contains("hand plane, wide drum sander, or router on a sled"));
  }

  @Test
  void everyStepOfASideboardHasItsOwnTitle() {
    List<String> titles = sideboard.stream().map(StepText::title).toList();
    assertEquals(titles.stream().distinct().toList(), titles);
    titled(sideboard, "Glue up the upper drawer and drawers 1 and 2");
  }

  @Test
  void noHandGoesIntoASlotForAPeg() {
    assertTrue(
        table.stream()
            .flatMap(step -> step.sentences().stream())
            .noneMatch(sentence -> sentence.contains("where a hand goes in")));
  }

  @Test
  void someOfTheFeetAreToldByTheirPlace() {
    assertSays(
        titled(bench, "Glue the feet to the bottom"),
        "Mark the place of the two back feet (G) on the bottom (B): 3/4 in from the back edge to"
            + " the nearer side.");
  }

  @Test
  void numbersUpToTwelveAreWords() {
    assertSays(
        titled(sideboard, "Screw the stretchers to the sides and the partitions"),
        "Drive the eight screws from above.");
  }

  @Test
  void heightOfASlideSaysFromWhatItIsTaken() {
    assertSays(
        titled(bench, "Fit the drawer slides and hang the drawer on trial"),
        "On the faces of the two partitions (C) that look at the drawer, draw a level line 5 1/4 in"
            + " above the top face of the bottom (B); on the outer faces of the two drawer sides"
            + " (P), a line 4 1/2 in above the lower edges.");
  }
}
