package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Text;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/** Short parts stay in one length until they are cut to size, where they are drawn apart. */
class LongBlanksTest {
  @ParameterizedTest
  @CsvSource({
    "window-bench, G, 8 parts (G) crosscut from one blank of 40",
    "sideboard, AF, 4 parts (AF) crosscut from one blank of 28",
    "step-stool, B, 2 parts (B) crosscut from one blank of 23 11/32",
  })
  void theStepThatCutsThemToSizeTellsTheBlank(String project, String mark, String said) {
    AllProjects.Sample sample = sample(project);
    Step step =
        sample.set().build().steps().stream()
            .filter(each -> each.verb() == Verb.SIZE)
            .filter(each -> marks(sample.set().piece(), each).contains(mark))
            .findFirst()
            .orElseThrow();
    String texts = texts(sample.set().drawings().steps().get(step.number()));
    assertTrue(texts.contains(said), texts);
  }

  /** Whatever shares a blank and is drawn says so; nothing else does. */
  @TestFactory
  List<DynamicTest> eachDrawnPartOfALongBlankTellsIt() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          List<String> faults = new ArrayList<>();
          for (Step step : sample.set().build().steps()) {
            Drawing drawing = sample.set().drawings().steps().get(step.number());
            if (step.verb() == Verb.SIZE && drawing != null) {
              boolean isShared =
                  shared(piece, step).stream().anyMatch(part -> shows(drawing, part.mark()));
              if (isShared != texts(drawing).contains("crosscut from one blank of")) {
                faults.add("step " + step.number() + ": " + texts(drawing));
              }
            }
          }
          assertEquals(List.of(), faults);
        });
  }

  /** An arrow whose word is written upwards beside it is read as two signs. */
  @Test
  void theWordOfTheGrainIsLevelOnAShortBlank() {
    AllProjects.Sample bench = sample("window-bench");
    List<String> upwards = new ArrayList<>();
    bench.set().build().steps().stream()
        .filter(step -> step.verb() == Verb.SIZE)
        .map(step -> bench.set().drawings().steps().get(step.number()))
        .filter(drawing -> drawing != null)
        .flatMap(drawing -> Clean.flat(drawing.elements()).stream())
        .filter(each -> each instanceof Text text && !text.upright())
        .map(each -> ((Text) each).text())
        .filter(text -> text.equals("grain"))
        .forEach(upwards::add);
    assertEquals(List.of(), upwards);
  }

  private static AllProjects.Sample sample(String name) {
    return new AllProjects.Sample(name, AllProjects.named(name));
  }

  private static TreeSet<String> marks(Piece piece, Step step) {
    return new TreeSet<>(Strips.byMark(piece, step).keySet());
  }

  private static List<Part> shared(Piece piece, Step step) {
    return GluedPanel.of(piece, step.targets().stream().map(piece::part).toList()).stream()
        .filter(GluedPanel::isShared)
        .flatMap(blank -> blank.parts().stream())
        .toList();
  }

  private static boolean shows(Drawing drawing, String mark) {
    return Clean.flat(drawing.elements()).stream()
        .anyMatch(each -> each instanceof Drawing.Balloon ring && ring.mark().equals(mark));
  }

  /** The texts one after the other: a caption may be broken into lines. */
  private static String texts(Drawing drawing) {
    return String.join(" ", Painter.texts(drawing).stream().map(PlacedText::text).toList());
  }
}
