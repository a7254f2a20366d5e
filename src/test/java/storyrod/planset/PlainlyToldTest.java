package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Steps name what is there by its right name, and nothing that is not there. */
class PlainlyToldTest {
  private static List<StepText> sideboard;
  private static List<StepText> nightstand;
  private static List<StepText> bookcase;
  private static List<StepText> table;
  private static List<StepText> box;

  @BeforeAll
  static void write() throws IOException {
    sideboard = StepWordsTest.steps("sideboard");
    nightstand = StepWordsTest.steps("nightstand");
    bookcase = StepWordsTest.steps("bookcase");
    table = StepWordsTest.steps("dining-table");
    box = StepWordsTest.steps("sewing-box");
  }

  private static StepText step(List<StepText> steps, String title) {
    return steps.stream()
        .filter(step -> step.title().startsWith(title))
        .findFirst()
        .orElseThrow(() -> new AssertionError(title));
  }

  private static void says(StepText step, String words) {
    assertTrue(step.sentences().stream().anyMatch(each -> each.contains(words)), step::toString);
  }

  private static void keepsSilent(StepText step, String words) {
    assertTrue(step.sentences().stream().noneMatch(each -> each.contains(words)), step::toString);
  }

  /** Of a single board nothing is done to each or all of them. */
  @Test
  void whatIsDoneToOnePartIsToldOfOne() throws IOException {
    List<StepText> stool = StepWordsTest.steps("step-stool");
    StepText milled = step(stool, "Mill the white ash");
    says(milled, "Flatten one face of the blank on the jointer.");
    says(milled, "Plane it to 3/4 in.");
    keepsSilent(milled, "each");
    says(step(stool, "Cut the part of 3/4 in white ash"), "Rip the blank to width");
    keepsSilent(step(stool, "Cut the part of 3/4 in white ash"), "equal parts");
    says(step(stool, "Mark face and edge of the stretcher"), "Turn its better face");
    says(step(stool, "Mitre the ends of the stretcher"), "at the corner and the part, measured");
  }

  /** A bit is looked for by its own size. */
  @Test
  void bitThatBoresARoundingIsNamed() throws IOException {
    says(step(StepWordsTest.steps("step-stool"), "Cut the slot"), "with the 1 1/4 in bit.");
  }

  /** A groove in the edge of a stretcher that lies flat is set out from the stretcher's face. */
  @Test
  void faceFromWhichJointsAreSetOutIsNoEdge() {
    says(
        step(sideboard, "Mark face and edge"),
        "Put the face mark of D × 2 on the bottom face: joints are set out from it,");
    says(
        step(nightstand, "Mark face and edge"),
        "Put a cross on the top face of E too, opposite the face mark: joints are set out from it.");
    says(
        step(nightstand, "Mark face and edge"),
        "Put the edge mark on the edge, end or face from which the joints are set out");
    says(step(table, "Mark face and edge"), "Put a cross on the bottom face of E too,");
    says(step(bookcase, "Mark face and edge"), "J on the bottom end and the back edge;");
  }

  /** A face that is marked needs no second mark: the edge mark goes on an edge. */
  @Test
  void faceMarkServesForTheJointsThatAreSetOutFromIt() {
    StepText marking = step(sideboard, "Mark face and edge");
    says(marking, "Z × 2, AA × 2");
    says(marking, "The joints of Z, AA and AB are set out from the face mark too.");
    keepsSilent(marking, "AB on the front face");
  }

  @Test
  void partThatStandsOnItsEdgeRunsAlongTheFenceWithItsFace() {
    StepText stretchers = step(nightstand, "Cut the grooves in the stretchers");
    says(stretchers, "into a narrow edge: of the two stretchers (E) the back edge as drawn. Stand");
    says(stretchers, "Run the face named along the fence.");
    says(step(sideboard, "Cut the grooves in the sides"), "Run the edge named along the fence.");
  }

  /** The lower rails are turned over when they are built in; on the saw all four lie alike. */
  @Test
  void equalPartsGetTheirGroovesAsTheirOneDrawingShowsThem() {
    says(
        step(sideboard, "Cut the grooves in the door stiles"),
        "of the two door stiles (Z) the right edge as drawn, of the two door stiles (AA) the left"
            + " edge as drawn, of the four door rails (AB) the bottom edge as drawn. Stand");
  }

  /** A glued outer peg would split the top: which one takes glue is told where it is driven. */
  @Test
  void gluedPegIsToldWhereItIsDriven() {
    says(
        step(table, "Fasten the breadboard ends"),
        "Glue those pegs only that the note names, as you drive them.");
  }

  /** Lines across a part for holes in its face ask for no side to keep to. */
  @Test
  void sideIsKeptOnlyWhereOneWasSet() {
    keepsSilent(step(bookcase, "Drill the dowel holes in the plinth front"), "Keep it on that");
    says(step(bookcase, "Drill the dowel holes in the plinth ends"), "Keep it on that side");
  }

  /** The edge of the case is a seam by now: slides flush with the front would stand proud. */
  @Test
  void slidesAreSetBehindWhatIsGluedOverTheEdge() {
    says(
        step(nightstand, "Fit the drawer slides"),
        "front end flush with the front edges of the two sides (A), that is 20 mm behind the front"
            + " face of the two edges (B).");
    StepText sideboardSlides = step(sideboard, "Fit the drawer slides");
    says(sideboardSlides, "that is 3/4 in behind the front face of the two middle stiles (K)");
    says(sideboardSlides, "that is 3/4 in behind the front face of the top rail (");
  }

  /** One sentence for each drawer names what is measured, on which parts, and from where. */
  @Test
  void linesOfSlidesAreToldDrawerByDrawer() {
    StepText slides = step(nightstand, "Fit the drawer slides");
    says(
        slides,
        "Drawer 2: on the faces of the two sides (A) that look at it, draw a level line 211 mm"
            + " above the top face of the bottom (C); on the outer faces of the two drawer sides"
            + " (Q), a line 43 mm above the lower edges.");
    assertTrue(
        slides.settings().stream().noneMatch(each -> each.name().contains("Line")),
        slides::toString);
  }

  /** The stretchers end between the sides and behind the frieze, where no rule reaches. */
  @Test
  void topIsSetByWhatIsSeenAtItsEdge() {
    StepText top = step(bookcase, "Screw the top");
    says(top, "stand out 3/4 in past the left side strip (C) at the left.");
    says(top, "Keep the top (B) flush with the left side (J) at the back.");
    keepsSilent(top, "past the front stretcher");
  }

  /** Brads on the line of the shelf's underside would miss it: 25 in and half of 23/32 in. */
  @Test
  void bradsAreSetOutOnTheMiddleOfWhatTheyGoInto() {
    says(
        step(bookcase, "Fasten the back"),
        "along the middle of what lies behind it: 25 3/8 in from the bottom end for the fixed");
  }

  /** The aprons end at the legs, which reach further out. */
  @Test
  void standIsSetByItsLegs() {
    StepText stand = step(nightstand, "Screw the stand to the bottom");
    says(stand, "Measure 16 mm inwards from the left face of the left side (A)");
    says(stand, "set the front leg (G) with its left face on it.");
    keepsSilent(stand, "nearer side on it");
  }

  /** Butt hinges have no plates. */
  @Test
  void doorThatLeansIsMendedAtWhatItHangsOn() {
    StepText doors = step(sideboard, "Fit the hinges");
    says(doors, "pare a mortise, or pack it with paper.");
    keepsSilent(doors, "plate");
  }

  @Test
  void whatHoldsTheFastenersIsCalledByItsName() {
    says(step(nightstand, "Fasten the top"), "on the inside of the stretchers, three in each");
    says(step(sideboard, "Fasten the top"), "On stretchers that run along the grain of the top");
    says(step(table, "Fasten the top"), "on the inside of the rails");
  }

  @Test
  void secondTemplateOfAMarkIsNoPart() {
    says(
        step(bookcase, "Drill the shelf pin holes"),
        "there are some for J (two of them, headed J and J-2): tape");
  }

  /** Loose shelves, doors and fronts are sanded nowhere else. */
  @Test
  void looseThingsAreSandedBeforeTheFinish() throws IOException {
    says(
        step(bookcase, "Finish the piece"),
        "all faces of what is still loose and was not sanded before: P × 3 and Q × 3.");
    says(step(sideboard, "Finish the piece"), "AB × 4, AD × 2 and AE × 2.");
    says(step(sideboard, "Finish the piece"), "With a respirator on, sand up to grit 220: first");
    says(step(nightstand, "Finish the piece"), "With a respirator on, sand up to grit 180: first");
    says(
        step(StepWordsTest.steps("step-stool"), "Finish the piece"),
        "With a respirator on, sand the outside up to grit 180.");
    says(step(nightstand, "Finish the piece"), "Brush off all dust.");
  }

  /** Once when it is laid down, once when the clamps are off and it is stood up. */
  @Test
  void heavyPieceIsStoodUpAndMovedByTwo() {
    String turning = Words.ENGLISH.say("caution.turning");
    StepText slides = step(sideboard, "Fit the drawer slides");
    says(slides, "stand the piece up again");
    assertTrue(slides.cautions().contains(turning), slides::toString);
    String lifting = Words.ENGLISH.say("caution.lifting");
    assertTrue(step(sideboard, "Tie the piece to the wall").cautions().contains(lifting));
    // The nightstand weighs less than 23 kg without its drawers.
    assertFalse(step(nightstand, "Mount the glides").cautions().contains(turning));
  }

  @Test
  void screwsOfPullsAreTurnedWithTheScrewdriver() {
    StepText pulls = step(sideboard, "Mount the pulls");
    says(pulls, "hold the pull in its place, and tighten them with the screwdriver.");
    assertEquals(List.of("screwdriver"), pulls.tools());
  }

  /** A front of 3/4 in and a box of 15/32 in; of 20 mm and 12 mm; 3/8 in or 10 mm in the pull. */
  @Test
  void screwsOfPullsGoThroughFrontAndBox() throws IOException {
    says(step(sideboard, "Mount the pulls"), "1 7/32 in of wood and some 3/8 in into the pull");
    says(step(sideboard, "Mount the pulls"), "about 1 19/32 in in all");
    says(step(nightstand, "Mount the knobs"), "32 mm of wood and some 10 mm into the knob");
    assertEquals(List.of(Length.mm(32)), new Grip(StepWordsTest.piece("nightstand")).wood("knob"));
    assertEquals(List.of(), new Grip(StepWordsTest.piece("nightstand")).wood("glide"));
  }

  /** The back is 1/4 in of plywood, through which the screws reach the stretcher. */
  @Test
  void strapIsScrewedToWhatHoldsIt() throws IOException {
    Piece byItsRail =
        StepWordsTest.piece(
            "bookcase",
            text ->
                text.replace(
                    "count: 2, parts: [case.left-side, case.right-side]",
                    "parts: [case.back-stretcher]"));
    StepText strap = step(StepWordsTest.steps(byItsRail), "Tie the piece");
    says(strap, "through the back (N), which alone holds no screw.");
    says(strap, "Drill pilot holes for the strap, a little thinner than the core of its screws");
  }

  @Test
  void feetAreSortedBeforeTheGlueIsSpread() {
    List<String> feet = step(sideboard, "Glue the feet").sentences();
    int sorted = feet.indexOf(start(feet, "Turn the tapered faces"));
    assertTrue(sorted < feet.indexOf(start(feet, "Brush a thin coat")), feet::toString);
  }

  private static String start(List<String> sentences, String words) {
    return sentences.stream().filter(each -> each.startsWith(words)).findFirst().orElseThrow();
  }

  /** The dowels join the top frame to the stand, which is put together later. */
  @Test
  void nothingIsSetInDryThatJoinsWhatIsPutTogetherLater() {
    keepsSilent(step(box, "Put the left end, the right end, the top frame"), "dowels in dry");
    says(step(box, "Put the stand together dry"), "four dowels in dry");
  }

  @Test
  void cutterOverAJointWaitsForTheCureAndNotForTheClamps() {
    says(
        step(box, "Round over the edges in the long frame pieces"),
        "The clamps come off after 6 hours, but only in 24 hours is the glue hard enough");
  }
}
