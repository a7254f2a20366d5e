package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** Where two moves lead a part to its seat, its picture shows them both. */
class TwoMovesPictureTest {
  private static final Size PAGE = new Size(180, 95);

  private static Piece piece() throws IOException {
    String text = Files.readString(Path.of("src/test/resources/build/lip.yaml"));
    Diagnostics found = new Diagnostics();
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
    return new DescriptionReader(words)
        .read(new SourceText("lip.yaml", text), found)
        .flatMap(description -> PieceBuilder.build(description, found))
        .orElseThrow();
  }

  private static List<Arrow> arrows() throws IOException {
    Piece piece = piece();
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    Step step =
        plan.steps().stream().filter(each -> each.firstMove().isPresent()).findFirst().get();
    Drawing drawing = StepPicture.draw(piece, step, PAGE).orElseThrow();
    return drawing.elements().stream()
        .filter(Arrow.class::isInstance)
        .map(Arrow.class::cast)
        .toList();
  }

  private static double length(Arrow arrow) {
    return arrow.from().distance(arrow.to());
  }

  @Test
  void eachLegHasAnArrowOfFullLength() throws IOException {
    List<Arrow> arrows = arrows();
    assertEquals(2, arrows.size());
    arrows.forEach(arrow -> assertEquals(10, length(arrow), 0.1));
  }

  /** Down on the paper first; then across, in the direction in which x runs on it. */
  @Test
  void theLegsRunAsTheMovesDo() throws IOException {
    List<Arrow> arrows = arrows();
    At over = way(arrows.getFirst());
    At down = way(arrows.getLast());
    assertEquals(0, down.x(), 0.01);
    assertTrue(down.y() > 9, "down " + down);
    assertTrue(Math.abs(over.x()) > 5, "over " + over);
  }

  private static At way(Arrow arrow) {
    return arrow.to().plus(-arrow.from().x(), -arrow.from().y());
  }
}
