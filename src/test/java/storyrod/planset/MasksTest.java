package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** What is kept bare of finish. */
class MasksTest {
  private static List<String> on(String project, String what) {
    PlanSet set = AllProjects.named(project);
    Texts texts = new Texts(set.piece().description().format(), Words.ENGLISH);
    return new Masks(set.piece(), set.build().steps(), texts)
        .all().stream().filter(mask -> mask.what().contains(what)).map(Masks.Mask::on).toList();
  }

  /** The fronts are bored on the bench, the boxes behind them only when the fronts are on. */
  @Test
  void holesThatAreBoredAfterTheFinishNeedNoTape() {
    assertEquals(List.of("Q, U, Y"), on("sideboard", "Bar pull"));
    assertEquals(List.of("B, F"), on("sideboard", "Shelf pin"));
  }
}
