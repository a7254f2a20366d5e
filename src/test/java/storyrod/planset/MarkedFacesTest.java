package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.ShowFaces;
import storyrod.drawing.AllProjects;
import storyrod.drawing.AllProjects.Sample;
import storyrod.geometry.Face;
import storyrod.piece.Likeness;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.words.Words;

/** The face that is marked is named so that each part has one, and later steps find it. */
class MarkedFacesTest {
  private static final Pattern MARK = Pattern.compile("\\b[A-Z]{1,2}\\b");
  private static final String POCKETS = "Clamp each part with the face up in which the holes begin";
  private static final String MARKED = "Turn the better face of each";

  private static Optional<String> sentence(Sample sample, Step step, String start) {
    Printing usual = Printing.usual(Words.ENGLISH);
    StepTexts texts = new StepTexts(sample.set().piece(), sample.set().build());
    return texts.in(usual).of(step).sentences().stream()
        .filter(each -> each.startsWith(start))
        .findFirst();
  }

  private static Stream<PocketHoles> pockets(Operation operation) {
    return operation.cuts().stream()
        .filter(PocketHoles.class::isInstance)
        .map(PocketHoles.class::cast);
  }

  /** Whoever lays the other face up drills all holes from the wrong side. */
  @TestFactory
  List<DynamicTest> pocketHolesBeginInTheFaceThatLiesUp() {
    return AllProjects.each(
        sample ->
            sample.set().build().steps().stream()
                .filter(
                    step ->
                        step.operations().stream().flatMap(MarkedFacesTest::pockets).count() > 0)
                .forEach(step -> assertFaces(sample, step)));
  }

  private static void assertFaces(Sample sample, Step step) {
    String said = sentence(sample, step, POCKETS).orElseThrow();
    List<String> ways = List.of(said.replaceFirst(".*show: ", "").split("; "));
    for (Operation operation : step.operations()) {
      String mark = sample.set().piece().part(operation.target()).mark();
      for (PocketHoles holes : pockets(operation).toList()) {
        String lying = lying(sample.set().piece(), operation, holes.from());
        assertTrue(
            ways.stream().anyMatch(way -> marks(way).contains(mark) && ends(way, lying)),
            () -> mark + " lies" + lying + ": " + said);
      }
    }
  }

  private static String lying(Piece piece, Operation operation, Face from) {
    Optional<Face> show = new ShowFaces(piece).of(piece.part(operation.target()));
    return show.filter(face -> face.axis() == from.axis())
        .map(face -> face == from ? " with the marked face up" : " with the marked face down")
        .orElse("");
  }

  private static boolean ends(String way, String lying) {
    String end = way.replaceFirst("\\.$", "");
    return lying.isEmpty() ? !end.contains("marked face") : end.endsWith(lying);
  }

  private static List<String> marks(String text) {
    return MARK.matcher(text).results().map(MatchResult::group).toList();
  }

  @Test
  void railsWithTheirHolesBehindLieOnTheMarkedFace() {
    Sample bookcase =
        AllProjects.all().stream()
            .filter(each -> each.name().equals("bookcase"))
            .findFirst()
            .orElseThrow();
    List<String> all =
        bookcase.set().build().steps().stream()
            .flatMap(step -> sentence(bookcase, step, POCKETS).stream())
            .toList();
    assertFalse(all.isEmpty());
    assertTrue(all.stream().anyMatch(each -> each.contains("with the marked face down")));
  }

  /** "B to the left; B to the right" tells nothing. */
  @TestFactory
  List<DynamicTest> noPartIsToldToLookTwoWays() {
    return AllProjects.each(
        sample ->
            sample.set().build().steps().stream()
                .flatMap(step -> sentence(sample, step, MARKED).stream())
                .forEach(MarkedFacesTest::assertOneWayEach));
  }

  private static void assertOneWayEach(String said) {
    List<String> named =
        Arrays.stream(said.replaceFirst(".*mark on it: ", "").replaceFirst("\\.$", "").split("; "))
            .map(each -> each.replaceFirst(" (to the (left|right|front|back)|up|down)$", ""))
            .flatMap(each -> Stream.of(each.split(", | and ")))
            .toList();
    assertEquals(new HashSet<>(named).size(), named.size(), said);
    List<String> bare = named.stream().filter(each -> each.matches("[A-Z]{1,2}( × .*)?")).toList();
    List<String> letters = bare.stream().map(each -> each.replaceFirst(" ×.*", "")).toList();
    assertEquals(new HashSet<>(letters).size(), letters.size(), said);
  }

  /**
   * Square legs of one mark are turned by a quarter from corner to corner: a mark on the left face
   * of a right one, as it stands, would be on another face than its drawing shows.
   */
  @Test
  void legsThatAreTurnedInTheirPlacesAreMarkedAsDrawn() {
    for (String name : List.of("nightstand", "dining-table")) {
      Sample sample =
          AllProjects.all().stream()
              .filter(each -> each.name().equals(name))
              .findFirst()
              .orElseThrow();
      String said =
          sample.set().build().steps().stream()
              .flatMap(step -> sentence(sample, step, "Put that of").stream())
              .filter(each -> each.contains("face as drawn: each is turned"))
              .findFirst()
              .orElseThrow();
      Piece piece = sample.set().piece();
      String mark =
          piece.marks().stream()
              .filter(each -> each.title().equals("Leg"))
              .findFirst()
              .orElseThrow()
              .mark();
      assertTrue(said.contains(mark + " × 4 on the left face"), said);
      sample.set().build().steps().stream()
          .flatMap(step -> sentence(sample, step, MARKED).stream())
          .forEach(each -> assertFalse(marks(each).contains(mark), each));
    }
  }

  /** Whether it is told by the drawing or by its place, the mark is on one face of the part. */
  @TestFactory
  List<DynamicTest> partsOfAMarkBearItOnTheSameFaceOrAreMarkedAsDrawn() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          ShowFaces shows = new ShowFaces(piece);
          String all =
              sample.set().build().steps().stream()
                  .flatMap(step -> sentence(sample, step, MARKED).stream())
                  .collect(java.util.stream.Collectors.joining(" "));
          for (Mark mark : piece.marks()) {
            for (String name : mark.parts()) {
              Optional<Face> drawn = shows.of(mark.shown());
              Optional<Face> own = shows.of(piece.part(name));
              if (drawn.isPresent() && own.isPresent() && marks(all).contains(mark.mark())) {
                assertTrue(
                    Likeness.areMarkedAlike(mark.shown(), drawn.get(), piece.part(name), own.get()),
                    name + ": " + all);
              }
            }
          }
        });
  }
}
