package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** What a furniture maker who read the steps found missing or wrong, in English and German. */
class AsTheMakerWorksTest {
  private static final List<String> PROJECTS =
      List.of("bookcase", "sideboard", "nightstand", "sewing-box");

  private static final Map<String, List<StepText>> STEPS = new TreeMap<>();

  @BeforeAll
  static void write() throws IOException {
    for (String project : PROJECTS) {
      Piece piece = StepWordsTest.piece(project);
      BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
      for (String language : List.of("en", "de")) {
        StepWriter writer = new StepWriter(piece, Words.load(language), new Templates(), plan);
        STEPS.put(project + "." + language, plan.steps().stream().map(writer::write).toList());
      }
    }
  }

  private static List<String> step(String steps, String title) {
    return STEPS.get(steps).stream()
        .filter(step -> step.title().startsWith(title))
        .findFirst()
        .map(AsTheMakerWorksTest::sentences)
        .orElseThrow(() -> new AssertionError(title));
  }

  private static List<String> sentences(StepText step) {
    return step.sentences().stream().map(each -> each.replace('\u00a0', ' ')).toList();
  }

  private static void says(String steps, String title, String words) {
    List<String> sentences = step(steps, title);
    assertTrue(sentences.stream().anyMatch(each -> each.contains(words)), sentences::toString);
  }

  private static void inOrder(String steps, String title, String... words) {
    List<String> sentences = step(steps, title);
    List<Integer> places =
        Stream.of(words).map(each -> String.join("|", sentences).indexOf(each)).toList();
    assertFalse(places.contains(-1), sentences::toString);
    assertEquals(places.stream().sorted().toList(), places, sentences::toString);
  }

  private static void keepsSilent(String steps, String words) {
    Stream<StepText> told =
        STEPS.get(steps).stream()
            .filter(step -> sentences(step).stream().anyMatch(each -> each.contains(words)));
    assertTrue(told.findAny().isEmpty(), words);
  }

  /** A dado that runs right across holds a narrower shelf at no place from front to back. */
  @Test
  void whatCanSlideInItsHousingIsKeptFlush() {
    says(
        "bookcase.en",
        "Glue the bottom, the fixed shelf and the right side",
        "Keep the bottom (K) and the fixed shelf (A) flush with the two sides (J) at the front.");
    says(
        "bookcase.de",
        "Bottom, Fixed shelf",
        "Bottom (K) und Fixed shelf (A) bündig mit Side × 2 (J) halten, vorn.");
  }

  /** Notches that take each other in let neither part slide. */
  @Test
  void crossLapSitsByItself() {
    keepsSilent("sewing-box.en", "Mark the place of the two long dividers");
    keepsSilent("sewing-box.de", "Platz von Long divider");
  }

  /** Two sides 35 1/4 in apart never both stand before studs 16 in apart (common practice). */
  @Test
  void studIsFoundBeforeTheStrapIsScrewedOn() {
    inOrder(
        "sideboard.en",
        "Tie the piece",
        "Find a stud",
        "carry that middle over to its back",
        "Screw the strap to the back stretcher (D), near the top of the piece and at the stud",
        "Set the piece in its place",
        "Screw its other end");
    inOrder(
        "bookcase.en",
        "Tie the piece",
        "Where none lies behind one of the two sides (J), screw a board across two studs",
        "Screw a strap to each",
        "Screw their other ends into the board or the middle of the stud");
    inOrder(
        "sideboard.de",
        "Möbel an der Wand",
        "Einen Wandständer",
        "diese Mitte auf seine Rückseite übertragen",
        "Kippsicherung an Back stretcher (D) schrauben",
        "Möbel an seinen Platz stellen",
        "Ihr anderes Ende");
    inOrder(
        "bookcase.de",
        "Möbel an der Wand",
        "dort für die Kippsicherung ein Brett über zwei Ständer schrauben",
        "Je eine Kippsicherung",
        "Ihr anderes Ende jeweils in das Brett");
  }

  /** Nobody reaches inside a case of which the door is shut (common practice). */
  @Test
  void strikePrintsItsPlaceOnTheDoor() {
    inOrder(
        "sideboard.en",
        "Mount the catches",
        "Screw the catch to the two middle stiles (K)",
        "Set the strike on the magnet and chalk its back. Close each door",
        "Screw the strike to the two door stiles (AA) where it has printed.");
    inOrder(
        "sideboard.de",
        "Zwei Schnäpper anbringen",
        "Schnäpper an Middle stile × 2 (K) schrauben",
        "Gegenstück an den Magneten setzen",
        "Gegenstück dort an Door stile × 2 (AA) schrauben, wo es abgefärbt hat.");
  }

  /** The gap round a front lies between it and its opening; its slides have no part in it. */
  @Test
  void openingGivesWayToTheFrontThatWasCutOutOfIt() {
    says(
        "sideboard.en",
        "Fit the drawer slides",
        "whose grain runs on into what it was cut from: ease its opening instead.");
    says("sideboard.de", "Schubkastenführungen anbringen", "stattdessen die Öffnung nacharbeiten.");
    keepsSilent("sideboard.en", "shift its slides");
    keepsSilent("sideboard.de", "stattdessen die Führungen");
  }

  /** Drawer sides are pressed at their corners; only what is glued all along is a strip. */
  @Test
  void drawerSidesAreNoStrips() {
    keepsSilent("sideboard.en", "so thin a strip");
    keepsSilent("sideboard.de", "so dünner Streifen");
    says("bookcase.en", "Glue the left side strip", "so thin a strip closes only where");
    says("bookcase.en", "Glue the frieze", "so thin a strip closes only where");
  }

  /** The shelf strips lose their long edges only. */
  @Test
  void chamferAlongTheGrainAsksForNoneAcross() {
    says("bookcase.en", "Chamfer the edges", "in the router, or with a plane.");
    says("bookcase.de", "Kanten an Shelf strip", "oder mit dem Hobel abnehmen.");
  }

  @Test
  void slotsSayWhichWayTheyRun() {
    says(
        "bookcase.en",
        "Cut the screw slots in the back stretcher",
        "with a scrap of wood under it: each runs from front to back.");
    says("bookcase.de", "Langlöcher für Schrauben", "Jedes verläuft von vorn nach hinten.");
  }

  @Test
  void whatIsLiftedIsTakenByANamedPart() {
    String glued = "Glue the partitions to the bottom";
    says("sideboard.en", glued, "Lift it by the bottom (C) only, with a helper.");
    keepsSilent("sideboard.en", "undermost");
    keepsSilent("sideboard.de", "zuunterst");
  }

  /** The carcase weighs 48 lb as it is laid down, and over 51 lb, 23 kg, with its plinth on. */
  @Test
  void pieceIsWeighedAsItIsStoodUpAgain() {
    assertEquals(
        1,
        STEPS.get("bookcase.en").stream()
            .filter(step -> step.sentences().contains("Stand it up again."))
            .filter(step -> step.cautions().toString().contains("more than one person should turn"))
            .count());
  }

  /** What is flush at one side and what at the other cannot be seen from a pair of marks. */
  @Test
  void eachOfTwoIsToldItsOwnSide() {
    says(
        "sideboard.en",
        "Glue the face frame in place",
        "flush with the two partitions (F), the left one at the right and the right one at the left");
    says(
        "sideboard.de",
        "Face frame an Ort",
        "bündig mit Partition × 2 (F) halten, das linke Teil rechts und das rechte Teil links.");
  }

  /** The frame is pressed on to the bottom as well as on to the sides. */
  @Test
  void allJawsAreAskedFor() {
    says("sideboard.en", "Glue the face frame in place", "the face frame, and on the bottom (C)");
    says("sideboard.de", "Face frame an Ort", " und auf Bottom (C)");
  }

  /** The router runs on over the whole end; the notch takes the end of the rabbet away after it. */
  @Test
  void rabbetIsRoutedBeforeItsEndIsNotched() {
    for (List<String> cuts :
        List.of(
            List.of("bookcase.en", "Cut the rabbets in the sides", "Cut the notches in the sides"),
            List.of("bookcase.de", "Falze in Side", "Ausklinkungen in Side"))) {
      List<String> titles = STEPS.get(cuts.getFirst()).stream().map(StepText::title).toList();
      int rabbets = place(titles, cuts.get(1));
      int notches = place(titles, cuts.get(2));
      assertTrue(0 <= rabbets && rabbets < notches, titles::toString);
    }
  }

  private static int place(List<String> titles, String start) {
    return titles.stream().map(each -> each.startsWith(start)).toList().indexOf(true);
  }
}
