package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
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

  @BeforeAll
  static void write() throws IOException {
    sideboard = steps("sideboard");
    table = steps("dining-table");
  }

  private static List<StepText> steps(String project) throws IOException {
    Path file = Path.of("projects", project, "project.yaml");
    Diagnostics diagnostics = new Diagnostics();
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
    Piece piece =
        new DescriptionReader(words, Printable::has, StepWordsTest::beside)
            .read(new SourceText(file.toString(), Files.readString(file)), diagnostics)
            .flatMap(description -> PieceBuilder.build(description, diagnostics))
            .orElseThrow(() -> new AssertionError(diagnostics.sorted()));
    StepWriter writer = new StepWriter(piece, Words.ENGLISH, new Templates());
    return Planner.plan(piece, diagnostics).orElseThrow().steps().stream()
        .map(writer::write)
        .toList();
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
  void frontsAreToldApartInTheContents() {
    titled(sideboard, "Fix the drawer front of drawer 1");
    titled(sideboard, "Fix the drawer front of drawer 2");
  }

  @Test
  void leafOnTheCaseIsScrewedOnWhenTheDoorIsHung() {
    List<String> hinges = titled(sideboard, "Mount the hinges").sentences();
    assertTrue(
        hinges.getLast().endsWith("its screws go in when the door is hung."), hinges::toString);
    assertTrue(hinges.stream().noneMatch(s -> s.contains("24 screws")), hinges::toString);
    StepText hang = titled(sideboard, "Hang the left door and the right door");
    assertEquals(
        "Hang one after the other: the left door and the right door.", hang.sentences().getFirst());
    assertSays(
        hang,
        "Wedge each of them in its opening on thin shims, so that the gap is even all round.");
  }

  @Test
  void glueStaysOutOfTheGrooveThatAPanelMovesIn() {
    assertSays(
        titled(sideboard, "Glue the door rails to the left door stile"),
        "Brush a thin coat of glue into the grooves and on the ends that go in; in a groove only"
            + " where they sit.");
  }

  @Test
  void whatStandsFirstIsSetUpAndNotBroughtIn() {
    StepText step = titled(table, "Set up the frame");
    assertEquals(
        List.of("Set the frame upright on a level place and see that it does not rock."),
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
}
