package storyrod.planset;

import java.util.Map;
import storyrod.drawing.Drawing;
import storyrod.words.Words;

/** Every drawing that a page of a plan set shows, of whatever kind. */
public final class PrintedDrawings {
  private PrintedDrawings() {}

  /** The drawings by the names that the pages use for them. */
  public static Map<String, Drawing> of(PlanSet set) {
    Words words = Words.ENGLISH;
    Texts texts = new Texts(set.piece().description().format(), words);
    StepWriter steps = new StepWriter(set.piece(), words, Templates.SHARED, set.build());
    return PlanSetWriter.drawings(set, Pages.of(set, texts, steps::write));
  }
}
