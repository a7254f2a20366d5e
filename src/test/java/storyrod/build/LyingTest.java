package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Face;

/** How the piece lies in a step is one value, which pictures and texts take from the step. */
class LyingTest {
  private static List<Face> lies(TestPiece piece) {
    return Planner.plan(piece.piece(), new Diagnostics()).orElseThrow().steps().stream()
        .filter(step -> step.verb() == Verb.FIT && !step.standing().isEmpty())
        .map(Step::down)
        .toList();
  }

  private static TestPiece box(String order) {
    TestPiece piece = TestPiece.withOrder("Case", order);
    piece.part("case", "Case", "A", "ash", 0, 600, 0, 300, 0, 800);
    piece.part("wing", "Wing", "B", "ash", 600, 900, 0, 300, 0, 800);
    piece.part("skid", "Skid", "C", "ash", 0, 600, 0, 100, -40, 0);
    piece.fasten("butt", "wing", Face.LEFT, "case", true, "", 0);
    return piece.fasten("butt", "skid", Face.TOP, "case", true, "", 0);
  }

  @Test
  void whatComesFromBelowFindsThePieceOnItsBack() {
    assertEquals(List.of(Face.BACK), lies(box("fit case\nfit wing\nfit skid")));
  }

  @Test
  void whatComesFromBehindFindsThePieceOnItsFront() {
    TestPiece behind = box("fit case\nfit wing\nfit rear\nfit skid");
    behind.part("rear", "Rear", "D", "ash", 0, 600, 300, 320, 0, 800);
    behind.fasten("butt", "rear", Face.FRONT, "case", true, "", 0);
    assertEquals(List.of(Face.FRONT, Face.BACK), lies(behind));
  }
}
