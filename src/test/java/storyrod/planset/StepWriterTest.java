package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Figures;
import storyrod.build.SamplePieces;
import storyrod.drawing.AllProjects;
import storyrod.piece.Piece;
import storyrod.planset.StepText.SettingText;
import storyrod.words.Words;

@Isolated("It sets the default locale.")
class StepWriterTest {
  private static final Piece BENCH = SamplePieces.bench();
  private static final StepWriter WRITER = new StepWriter(BENCH, Words.ENGLISH, new Templates());

  private static List<StepText> all() {
    return SamplePieces.benchPlan().steps().stream().map(WRITER::write).toList();
  }

  private static StepText titled(String title) {
    List<String> titles = all().stream().map(StepText::title).toList();
    return all().stream()
        .filter(text -> text.title().equals(title))
        .findFirst()
        .orElseThrow(() -> new AssertionError(title + " not in " + titles));
  }

  @Test
  void sidesAreGluedToTheBottomByNameAndMark() {
    StepText text = titled("Glue the bottom and the right side to the left side");
    List<String> pushed = text.sentences().stream().filter(s -> s.startsWith("Push ")).toList();
    assertEquals(List.of("Push the bottom (B) home.", "Push the right side (A) home."), pushed);
    assertTrue(
        text.sentences()
            .contains("Brush a thin coat of glue into the dados and on the ends that go in."),
        text::toString);
    assertEquals("1 h", text.waiting());
  }

  @Test
  void equalPartsAreSpokenOfTogether() {
    titled("Glue the feet to the bottom");
    titled("Glue the shelf edges to the shelves");
    titled("Glue the middle stiles and the bottom rail to the top rail");
  }

  @Test
  void sheetIsCutStraightToSizeInOneStep() {
    StepText text = titled("Cut the 23/32 in birch plywood to size");
    assertTrue(text.sentences().getFirst().contains("nothing is cut twice"), text::toString);
    assertTrue(all().stream().noneMatch(each -> each.title().startsWith("Cut down")));
  }

  @Test
  void makersWordsComeBeforeWhatTheyConcern() {
    Step step = SamplePieces.benchPlan().steps().getFirst();
    Step said =
        new Step(
            step.number(),
            step.stage(),
            step.operations(),
            step.newParts(),
            step.standing(),
            step.enters(),
            step.mirrored(),
            step.firstMove(),
            step.down(),
            step.hardware(),
            step.tools(),
            step.cautions(),
            step.settings(),
            List.of("Take the calmest board"),
            step.minutes(),
            step.waitMinutes());
    List<String> sentences = WRITER.write(said).sentences();
    assertEquals("Note: Take the calmest board.", sentences.getFirst());
    assertEquals(WRITER.write(step).sentences(), sentences.subList(1, sentences.size()));
  }

  @Test
  void partThatNothingHoldsIsMarkedFromBothEndsInOneSentence() {
    StepText text = titled("Glue the middle stiles and the bottom rail to the top rail");
    List<String> marked = text.sentences().stream().filter(s -> s.startsWith("Mark")).toList();
    assertEquals(
        List.of(
            "Mark the place of the two middle stiles (K) on the top rail (I):"
                + " 14 7/16 in from each end to the nearer side.",
            "Mark the place of the two middle stiles (K) on the bottom rail (J):"
                + " 14 7/16 in from each end to the nearer side."),
        marked);
    assertEquals(
        List.of(
            new SettingText("From each end, to the nearer side", "I", "14 7/16 in"),
            new SettingText("From each end, to the nearer side", "J", "14 7/16 in")),
        text.settings().subList(0, 2));
  }

  /** Where brads are driven blind, the measure ends at a line, not at a side of a part. */
  @Test
  void lineForBradsIsToldAsALine() {
    PlanSet bookcase = AllProjects.named("bookcase");
    StepWriter writer = new StepWriter(bookcase.piece(), Words.ENGLISH, new Templates());
    List<SettingText> measured =
        bookcase.build().steps().stream()
            .map(writer::write)
            .filter(text -> text.sentences().getFirst().startsWith("Draw a line on the back (N)"))
            .flatMap(text -> text.settings().stream())
            .toList();
    assertEquals(
        List.of(new SettingText("From the bottom end, to the line", "N", "25 3/8 in")), measured);
  }

  @Test
  void feetAreFlushWithTheBottomTwoAndTwoAndLieAgainstTheSides() {
    List<String> sentences = titled("Glue the feet to the bottom").sentences();
    assertTrue(
        sentences.contains(
            "Keep the four feet (G) flush with the bottom (B), two at the front and two at the"
                + " back."),
        sentences::toString);
    assertTrue(sentences.contains("Push the four feet (G) against A × 2."), sentences::toString);
  }

  @Test
  void slidesAreSetByALineOnDrawerAndCase() {
    StepText text = titled("Fit the drawer slides and hang the drawer on trial");
    for (String mark : List.of("(N)", "(C)")) {
      assertTrue(
          text.sentences().stream().anyMatch(s -> s.contains(" line ") && s.contains(mark)),
          text::toString);
    }
    assertTrue(text.sentences().stream().anyMatch(s -> s.contains("flush with the front edges")));
  }

  @Test
  void moreThanTwoKindsOfPartAreCountedInATitle() {
    titled("Cut the grooves in the left side, the right side and five more parts");
  }

  @Test
  void frontIsLinedUpByItsGapAndScrewedAfterwards() {
    List<String> sentences = titled("Fix the drawer front").sentences();
    int gap =
        sentences.indexOf(
            "Set the drawer front (R) in its opening on thin shims and even out the gap all round.");
    assertTrue(gap >= 0 && gap < sentences.indexOf("Drive the four screws."), sentences::toString);
  }

  @Test
  void pieceIsLaidOnItsBackForItsFeet() {
    assertEquals(
        "Lay what is together on its back, on a blanket.",
        titled("Glue the feet to the bottom").sentences().getFirst());
  }

  @Test
  void oneOfTwoPartsOfOneNameIsToldByItsPlace() {
    assertTrue(
        titled("Glue up the drawer")
            .sentences()
            .contains("Lay the left drawer side (N) ready with its joints in reach."));
  }

  @Test
  void fenceIsSetFromTheNearerEdge() {
    assertTrue(
        titled("Cut the dados in the bottom").sentences().stream()
            .anyMatch(s -> s.contains("16 27/32 in from the left end")));
  }

  @Test
  void oilFinishWarnsOfRagsBeforeAnythingElse() {
    assertTrue(titled("Finish the piece").cautions().getFirst().startsWith("Rags wet with oil"));
  }

  @Test
  void everySentenceIsOneLineWithAFullStopAndEveryTitleHasNone() {
    List<String> odd = new ArrayList<>();
    for (StepText text : all()) {
      text.sentences().stream()
          .filter(s -> !s.matches("[A-Z].*[A-Za-z0-9)]\\.") || s.contains("  ") || s.contains("{"))
          .forEach(odd::add);
      if (!text.title().matches("[A-Z].*[A-Za-z0-9)]") || text.sentences().isEmpty()) {
        odd.add(text.title());
      }
    }
    assertEquals(List.of(), odd);
  }

  @Test
  void noStepSaysTheSameTwice() {
    for (StepText text : all()) {
      assertEquals(text.sentences().stream().distinct().toList(), text.sentences(), text.title());
    }
  }

  @Test
  void wordsDoNotDependOnTheMachinesLanguage() {
    Locale before = Locale.getDefault();
    try {
      List<StepText> here = all();
      Locale.setDefault(Locale.of("tr", "TR"));
      assertEquals(here, all());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void everyKeyOfTheTablesHasWords() throws IOException {
    for (String table : List.of("tools", "cautions")) {
      String prefix = table.substring(0, table.length() - 1) + ".";
      try (InputStream in = Figures.class.getResourceAsStream(table + ".csv")) {
        new String(in.readAllBytes(), StandardCharsets.UTF_8)
            .lines()
            .filter(line -> !line.startsWith("#"))
            .skip(1)
            .map(line -> prefix + line.split(",")[1])
            .forEach(key -> assertTrue(Words.ENGLISH.has(key), key));
      }
    }
  }

  @Test
  void everyTraitOfTheTablesIsTimed() throws IOException {
    for (String table : List.of("tools", "cautions")) {
      try (InputStream in = Figures.class.getResourceAsStream(table + ".csv")) {
        new String(in.readAllBytes(), StandardCharsets.UTF_8)
            .lines()
            .filter(line -> !line.startsWith("#"))
            .skip(1)
            .map(line -> line.split(",")[0])
            .forEach(trait -> assertTrue(Figures.STANDARD.traits().contains(trait), trait));
      }
    }
  }

  @Test
  void everyStageHasATitle() {
    for (Step step : SamplePieces.benchPlan().steps()) {
      assertTrue(!WRITER.stage(step).isBlank());
    }
  }
}
