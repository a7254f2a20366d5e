package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.words.Words;

/** Steps tell how parts lie, what leads the tool, and what is done before what. */
class PlacedWordsTest {
  private static List<StepText> sideboard;
  private static List<StepText> stool;
  private static List<StepText> bookcase;

  @BeforeAll
  static void write() throws IOException {
    sideboard = StepWordsTest.steps("sideboard");
    stool = StepWordsTest.steps("step-stool");
    bookcase = StepWordsTest.steps("bookcase");
  }

  private static StepText step(List<StepText> steps, String title) {
    return steps.stream()
        .filter(step -> step.title().startsWith(title))
        .findFirst()
        .orElseThrow(
            () -> new AssertionError(steps.stream().map(StepText::title).toList().toString()));
  }

  private static void says(StepText step, String... words) {
    for (String each : words) {
      assertTrue(step.sentences().stream().anyMatch(s -> s.contains(each)), step::toString);
    }
  }

  private static int first(StepText step, String start) {
    return step.sentences().stream().map(each -> each.startsWith(start)).toList().indexOf(true);
  }

  @Test
  void equalPartsAreTurnedSoThatTheirGroovesFaceEachOther() {
    says(
        step(sideboard, "Screw the stretchers"),
        "Turn one end for end, so that the two grooves face each other: that of the front stretcher"
            + " (D) to the back.");
    StepText stretchers = step(sideboard, "Screw the stretchers");
    assertTrue(
        first(stretchers, "Turn one end for end") < first(stretchers, "Bring the two stretchers"),
        stretchers::toString);
  }

  /** A partition the wrong way round leaves a shelf without pins at one end. */
  @Test
  void equalWallsAreTurnedSoThatTheirPinHolesLookIntoTheirBays() {
    says(
        step(sideboard, "Glue the partitions"),
        "See that the left partition (F) looks with the shelf pin holes to the left.",
        "See that the right partition (F) looks with the shelf pin holes to the right.");
  }

  @Test
  void taperedFeetLookInwardsAndEachHandHasItsPlaces() {
    says(
        step(sideboard, "Glue the feet"),
        "Turn the tapered faces of all of them inwards: the left front foot and the right back foot"
            + " are as drawn, the left back foot and the right front foot mirrored.");
  }

  @Test
  void aFrameIsSquaredBeforeItsScrewsHoldIt() {
    StepText rail = step(sideboard, "Glue the bottom rail");
    int measured = first(rail, "Before you drive anything, measure both diagonals");
    assertTrue(
        0 <= measured && measured < first(rail, "With the back up, drive the four"),
        rail::toString);
    assertEquals(
        1, rail.sentences().stream().filter(each -> each.contains("diagonals")).count(), "once");
  }

  @Test
  void aFrontIsHeldFromTheFrontWhereTheDrawerIsShut() {
    StepText fronts = step(sideboard, "Fix the drawer fronts");
    int held = first(fronts, "Hold it there and drive two temporary screws from the front");
    assertTrue(0 <= first(fronts, "Push the drawer shut"), fronts::toString);
    assertTrue(first(fronts, "Push the drawer shut") < held, fronts::toString);
    assertTrue(held < first(fronts, "Draw the drawer out"), fronts::toString);
    assertFalse(String.join(" ", fronts.sentences()).contains("Hold it with the pull"));
  }

  @Test
  void jawsThatGoUnderWhatStandsHaveRoom() throws IOException {
    says(
        step(sideboard, "Glue the partitions"),
        "Set what is together on two battens or blocks, so that the jaws reach under it.");
    says(step(sideboard, "Glue the face frame in place"), "raise it on to two battens");
    says(step(StepWordsTest.steps("window-bench"), "Glue the partitions"), "battens or blocks");
  }

  @Test
  void grooveInTheNarrowEdgeIsSetOutFromAFace() {
    says(
        step(sideboard, "Cut the grooves in the stretchers"),
        "1/4 in from the bottom face.",
        "Stand the part on that edge, its face against a tall fence");
    says(step(sideboard, "Cut the grooves in the sides"), "1/2 in from the back edge.");
    says(step(sideboard, "Cut the mortises"), "1/4 in from the front face.");
  }

  /** The sides of the boxes are short; those of the bookcase are 55 in long. */
  @Test
  void whatLeadsARabbetGoesByThePartsSize() {
    StepText small = step(sideboard, "Cut the rabbets in the drawer sides");
    says(small, "Screw a board of scrap to the fence", "across with the mitre gauge");
    assertTrue(small.tools().contains("mitre gauge with a stop"), small::toString);
    StepText tall = step(bookcase, "Cut the rabbets in the sides");
    says(tall, "clamp a straightedge across");
    assertFalse(tall.tools().contains("table saw"), tall::toString);
    assertEquals(
        List.of(Words.ENGLISH.say("caution.router")),
        tall.cautions().stream().filter(each -> each.contains("against the turn")).toList());
    assertFalse(tall.cautions().stream().anyMatch(each -> each.contains("featherboards")));
    says(step(bookcase, "Cut the dados in the sides"), "25 1/2 in from the bottom end.");
  }

  @Test
  void stepsNameTheFullSizeTemplates() {
    says(
        step(stool, "Saw the curves"), "full-size templates at the end there are some for B and C");
    says(step(sideboard, "Cut the tapers in the feet"), "there is one for AF");
    says(step(sideboard, "Drill the shelf pin holes"), "some for B and F");
    assertFalse(String.join(" ", stool.toString()).contains("through the points given"));
  }

  /** The second strip of the bookcase's sides begins at their other end. */
  @Test
  void rowsThatAllHaveTemplatesAreSetOutFromNoOtherEnd() {
    StepText pins = step(bookcase, "Drill the shelf pin holes");
    says(pins, "by the end and the edge drawn on it");
    assertFalse(pins.sentences().stream().anyMatch(each -> each.contains("the same end")));
    says(step(stool, "Drill the screw holes"), "from one and the same end of every part");
  }

  @Test
  void everyGluedFaceGetsGlue() {
    StepText leg = step(stool, "Glue the right leg panel");
    says(
        leg,
        "into the dado and on the end that goes in.",
        "Brush it on where the right leg panel (B) meets the stretcher (C) with a plain face, too.");
  }

  @Test
  void splayedPieceIsTriedWithoutClampsAndSquares() {
    StepText dry = step(stool, "Put the piece together dry");
    assertEquals(List.of("mallet"), dry.tools());
    assertFalse(String.join(" ", dry.sentences()).matches(".*([Cc]lamp|diagonal|square).*"));
  }

  @Test
  void oneRuleTellsHowStavesAreTurned() {
    StepText boards = step(stool, "Glue up the boards for the step");
    says(boards, "Turn every second board");
    assertFalse(String.join(" ", boards.sentences()).contains("heart side"));
  }

  /**
   * The rip's kerf and the trim leave 1/16 in at the edges, the crosscut's kerf 1/8 in at an end.
   */
  @Test
  void aFrontKeptFromItsRailHasItsGaps() {
    StepText fronts = step(sideboard, "Fix the drawer fronts");
    List<String> gaps =
        fronts.settings().stream()
            .filter(each -> each.mark().equals("Q") && each.name().startsWith("Gap"))
            .map(each -> each.name() + " " + each.value())
            .toList();
    assertEquals(List.of("Gap at the left and right 1/8 in", "Gap above and below 1/16 in"), gaps);
    says(step(sideboard, "Fit the drawer slides"), "Plane nothing off the drawer front (Q)");
  }

  @Test
  void catchesAndBradsAreToldWhatTheyGoInto() {
    says(
        step(sideboard, "Mount the catches"),
        "Screw the catch to the two middle stiles (K), 3 in from the upper edge of the door");
    says(
        step(sideboard, "Mount the catches"),
        "Screw the strike to the two door stiles (AA) where it has printed.");
    says(
        step(sideboard, "Fasten the back"),
        "Drive the five brads from behind into the back stretcher (D), evenly spread");
  }
}
