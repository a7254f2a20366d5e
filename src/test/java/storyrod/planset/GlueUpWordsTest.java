package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the steps say in which sub-assemblies and cases are glued up. */
class GlueUpWordsTest {
  private static StepText titled(String project, String title) throws IOException {
    return StepWordsTest.steps(project).stream()
        .filter(step -> step.title().equals(title))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + title));
  }

  /** The picture shows the first of three: the sentences speak of one, and list the marks once. */
  @ParameterizedTest
  @CsvSource({
    "sideboard, Glue up the upper drawer and drawers 1 and 2",
    "nightstand, Glue up drawers 1 to 3"
  })
  void threeDrawersAreToldForOne(String project, String title) throws IOException {
    List<String> sentences = titled(project, title).sentences();
    assertTrue(sentences.getFirst().startsWith("Do all this for each of the three, one after"));
    assertTrue(sentences.contains("Lay the left drawer side ready with its joints in reach."));
    assertTrue(sentences.contains("Push the box front and the box back home."));
    assertTrue(sentences.stream().noneMatch(each -> each.contains("the three drawer")), title);
  }

  /** The upper drawer is lower than the others, and its joints take fewer clamps. */
  @Test
  void clampsThatDifferFromDrawerToDrawerAreToldForAll() throws IOException {
    List<String> sentences =
        titled("sideboard", "Glue up the upper drawer and drawers 1 and 2").sentences();
    assertEquals(
        1,
        sentences.stream().filter(each -> each.startsWith("In all, set ten clamps")).count(),
        sentences::toString);
  }

  @Test
  void marksThatAllThreeShareStayInTheSentences() throws IOException {
    List<String> sentences =
        titled("sideboard", "Glue up the upper drawer and drawers 1 and 2").sentences();
    assertEquals(
        "Do all this for each of the three, one after the other: the upper drawer, of L × 2, M, N"
            + " and P; drawer 1, of P, R × 2, S and T; drawer 2, of P, V × 2, W and X. They are"
            + " alike but for the height of their parts.",
        sentences.getFirst());
    assertTrue(
        sentences.contains("Slide the drawer bottom (P) into its grooves, without glue."),
        sentences::toString);
  }

  /** Once the legs sit on their rails, nobody can turn them round any more. */
  @Test
  void mirrorImagesAreToldInTheStepThatBeginsThem() throws IOException {
    String mirrored =
        "Build the left end and the right end as mirror images of each other: lay each part on the"
            + " side where the picture shows it.";
    assertTrue(
        titled("sewing-box", "Glue the legs to the end rails").sentences().contains(mirrored));
    assertFalse(
        titled("sewing-box", "Glue the end stretchers to the legs").sentences().contains(mirrored));
  }

  /** Both doors have two stiles each, and what is the left one here is the right one there. */
  @Test
  void mirrorImagesAreToldWhichPartTheyTakeWhere() throws IOException {
    assertTrue(
        titled("sideboard", "Glue up the left door and the right door")
            .sentences()
            .contains(
                "The left door takes the left door stile (Z) and the right door stile (AA); the"
                    + " right door takes the left door stile (AA) and the right door stile (Z)."));
    assertTrue(
        titled("sewing-box", "Glue the legs to the end rails")
            .sentences()
            .contains(
                "The left end takes the back leg (A) mirrored and the front leg (A) as drawn; the"
                    + " right end takes the back leg (A) as drawn and the front leg (A)"
                    + " mirrored."));
  }

  /** The side of the bookcase is held by bottom and fixed shelf, over half of its height. */
  @Test
  void whatTwoLinesOfGlueHoldNeedsNoCare() throws IOException {
    StepText step =
        titled("bookcase", "Glue the bottom, the fixed shelf and the right side to the left side");
    assertTrue(
        step.cautions().stream().noneMatch(each -> each.startsWith("Handle with care")),
        step::toString);
  }

  /** A sideboard's left side hangs on the bottom just as its right one does. */
  @Test
  void bothSidesOnOneLineOfGlueAreNamed() throws IOException {
    StepText step = titled("sideboard", "Glue the bottom and the right side to the left side");
    assertTrue(step.cautions().getFirst().contains("the two sides (B)"), step::toString);
  }
}
