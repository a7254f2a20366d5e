package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** German sentences that a reader found to be wrong; the rules are those of Duden. */
class GermanSentencesTest {
  private static final Words GERMAN = Words.load("de");

  private static List<String> sentences(String project) throws IOException {
    Piece piece = StepWordsTest.piece(project);
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    StepWriter writer = new StepWriter(piece, GERMAN, new Templates(), plan);
    return plan.steps().stream()
        .map(writer::write)
        .flatMap(step -> Stream.concat(Stream.of(step.title()), step.sentences().stream()))
        .toList();
  }

  /** A relative clause ends with a comma; a plain row with "und" has none. */
  @Test
  void commasStandWhereTheyBelong() throws IOException {
    List<String> table = sentences("dining-table");
    assertTrue(table.stream().anyMatch(each -> each.contains("die sie halten,")), table::toString);
    for (String project : List.of("dining-table", "sideboard", "nightstand")) {
      for (String each : sentences(project)) {
        assertFalse(each.contains("halten einhaken") || each.contains("halten schieben"), each);
        assertFalse(each.contains("herausziehen, und die Front"), each);
      }
    }
  }

  @Test
  void oneSlotIsOne() throws IOException {
    assertTrue(
        sentences("step-stool").stream()
            .anyMatch(each -> each.startsWith("Langloch in ") && each.endsWith(" schneiden")));
    assertTrue(
        StepWordsTest.steps("step-stool").stream()
            .anyMatch(step -> step.title().equals("Cut the slot in the step")));
  }

  /** What there is one of stands in the singular, in titles too. */
  @Test
  void oneHoleAndOneNotchAreOne() throws IOException {
    assertTrue(sentences("sewing-box").contains("Loch für den Knopf in Lid bohren"));
    assertTrue(
        sentences("bookcase").stream()
            .anyMatch(each -> each.startsWith("Geschweifte Ausklinkung in ")));
    assertTrue(
        sentences("sideboard").stream().anyMatch(each -> each.startsWith("Löcher für Griffe in ")));
  }

  /** Two rows, one of them joined with "und" itself, are joined with "sowie" (Duden). */
  @Test
  void rowsThatHoldAnUndAreJoinedWithSowie() throws IOException {
    List<String> sideboard = sentences("sideboard");
    assertTrue(sideboard.stream().anyMatch(each -> each.contains("1 und 2 sowie ")), "no sowie");
    sideboard.forEach(each -> assertFalse(each.matches(".* 1 und 2 und .*"), each));
  }

  /** "3/8 in in ihren Knopf" is misread: the unit for inches is spelled like the preposition. */
  @Test
  void noPrepositionStandsBesideTheUnit() throws IOException {
    for (String project : List.of("bookcase", "sideboard", "sewing-box", "dining-table")) {
      sentences(project).forEach(each -> assertFalse(each.contains(" in in "), each));
    }
  }

  /** "Löcher für Schraube" is no German: what several holes are for stands in the plural. */
  @Test
  void holesAreForScrewsAndKnobs() throws IOException {
    List<String> nightstand = sentences("nightstand");
    assertTrue(nightstand.stream().anyMatch(each -> each.startsWith("Löcher für Schrauben in ")));
    assertTrue(nightstand.stream().anyMatch(each -> each.startsWith("Löcher für Knöpfe in ")));
    for (String project : List.of("bookcase", "sideboard", "nightstand", "sewing-box")) {
      for (String each : sentences(project)) {
        assertFalse(each.matches(".*(Löcher|Loch) für (Schraube|Knopf|Griff|Beschlag)\\b.*"), each);
      }
    }
  }

  /** Behind a colon a row is no object of "in" and stands in the nominative. */
  @Test
  void partsBehindAColonStandInTheNominative() throws IOException {
    for (String project : List.of("bookcase", "sideboard", "nightstand")) {
      List<String> marking =
          sentences(project).stream().filter(each -> each.contains("anzeichnen: ")).toList();
      assertTrue(
          marking.stream().anyMatch(each -> each.contains(" weitere Teile")), marking::toString);
      marking.forEach(each -> assertFalse(each.contains("weiteren Teil"), each));
    }
  }

  @Test
  void daysStandInTheDative() {
    assertEquals("14 Tagen", GERMAN.say("timeline.after-days", 14));
    assertEquals("einem Tag", GERMAN.say("timeline.after-one-day"));
  }

  /** What a description says in its own language is not passed off as a sentence of ours. */
  @Test
  void wordsOfTheMakerStandInQuotes() {
    assertTrue(GERMAN.say("finish.tried", "white oak").contains("„white oak“"));
  }

  private static void says(String project, String words) throws IOException {
    List<String> all = sentences(project);
    assertTrue(all.stream().anyMatch(each -> each.contains(words)), () -> words + " in " + all);
  }

  /** The stop stands on the upper part, so the hole through it comes on top of the pilot depth. */
  @Test
  void depthStopIsSetDeeperByTheClearanceHole() throws IOException {
    says(
        "sideboard",
        "Den Tiefenanschlag um die Länge des Durchgangslochs tiefer stellen, als die Tiefe der"
            + " Vorbohrung angibt.");
  }

  /** What keeps the wood from tearing lies where the bit leaves it, wherever that is. */
  @Test
  void scrapLiesWhereTheBitComesOut() throws IOException {
    says("sideboard", "ein Reststück bündig an der Kante, an der der Fräser austritt, und");
    for (String project : List.of("sideboard", "bookcase", "window-bench", "nightstand")) {
      sentences(project).forEach(each -> assertFalse(each.contains("abgewandten Seite"), each));
    }
  }

  /**
   * "Ende gegen Ende" left open which way a board turns; each turn says what becomes of the top.
   */
  @Test
  void turnsSayWhatBecomesOfTheUnderside() throws IOException {
    says(
        "dining-table",
        "jedes zweite Brett über die Enden wenden, Unterseite nach oben, Enden vertauscht: ");
    says(
        "sideboard",
        "Eines der beiden Teile flach liegend um 180° drehen, sodass die Enden tauschen und die"
            + " Unterseite unten bleibt, damit ");
  }

  /** A groove has walls; cheeks are what a tenon has, and what is left beside an open mortise. */
  @Test
  void groovesHaveWallsAndTenonsHaveCheeks() throws IOException {
    for (String side : List.of("end", "edge", "face")) {
      String told = GERMAN.say("setting.fence." + side, "links");
      assertTrue(told.startsWith("Nähere Wand, "), told);
    }
    assertFalse(GERMAN.say("step.sand.legend").contains("wange"));
    says("sideboard", "von eingepassten Wänden und Enden weg: ");
    for (String project : List.of("dining-table", "sideboard", "nightstand", "bookcase")) {
      for (String each : sentences(project)) {
        assertFalse(each.contains("Wangen und Enden") || each.contains("Nutwange"), each);
      }
    }
  }

  /** "Schraube × 3 durch Trittplatte eindrehen" is a list and no sentence. */
  @Test
  void severalItemsAreSaidAsTheyAreRead() throws IOException {
    says("step-stool", "rei Schrauben durch ");
    for (String project : List.of("step-stool", "sideboard", "nightstand", "sewing-box")) {
      for (String each : sentences(project)) {
        assertFalse(each.matches(".*\\b(Schraube|Stift|Dübel|Gleiter|Griff|Knopf) × .*"), each);
      }
    }
  }

  /** "Es" and "jedes" of a step for several drawers pointed at nothing that was named. */
  @Test
  void stepsForSeveralUnitsNameThem() throws IOException {
    for (String project : List.of("sideboard", "nightstand", "window-bench", "sewing-box")) {
      for (String each : sentences(project)) {
        assertFalse(each.matches("(Das alles für jedes|Jedes dauert|Was zusammen ist).*"), each);
      }
    }
  }

  /** One hole is one, and waits for the front that guides the bit. */
  @Test
  void oneHoleThatIsDrilledLaterIsOne() {
    assertEquals(
        "Loch für den Knopf erst in Schritt 44 bohren, durch das Loch der angesetzten Front P,"
            + " nicht auf der Werkbank.",
        GERMAN.say("part.drilled-later", "Knopf", "P", "44"));
  }

  /** Drawings say "linke Fläche" and "Oberseite"; "Fläche links" is another name for the same. */
  @Test
  void facesAndEdgesAreCalledAsOnDrawings() throws IOException {
    assertEquals("linke Fläche", GERMAN.say("part.face.left"));
    says("sideboard", "sowie der linken Fläche von ");
    for (String project : List.of("sideboard", "step-stool", "nightstand", "dining-table")) {
      for (String each : sentences(project)) {
        assertFalse(
            each.matches(
                ".*\\b(ab|an|von|auf die) (Fläche|Kante|Ende) (links|rechts|vorn|hinten|oben|unten).*"),
            each);
      }
    }
  }

  /** The planer's figure in a step that glues up is not what its boards are planed to. */
  @Test
  void boardsOfAPanelAreToldToBeLeftThicker() {
    assertTrue(GERMAN.say("setting.finished-thickness").contains("Bretter etwas dicker"));
    assertTrue(Words.ENGLISH.say("setting.finished-thickness").contains("boards a little over"));
  }

  /** What is read by a reader in a hurry is cut into short sentences, each with its verb. */
  @Test
  void whatIsSandedBeforeTheFinishIsToldInSeveralSentences() throws IOException {
    says("sideboard", " schleifen: zuerst die Außenseite und die Kanten und Rückseiten, die man");
    says("sideboard", "Allen Staub abbürsten.");
    says(
        "sewing-box",
        "Dann alle Flächen von dem schleifen, was noch lose und ungeschliffen ist: T.");
  }
}
