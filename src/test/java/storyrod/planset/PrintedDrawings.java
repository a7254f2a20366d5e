package storyrod.planset;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import storyrod.drawing.Drawing;
import storyrod.words.Words;

/** Every drawing that a page of a plan set shows, of whatever kind. */
public final class PrintedDrawings {
  /** Several tests ask for those of the same plan sets. */
  private static final Map<PlanSet, Map<String, Drawing>> DRAWN =
      Collections.synchronizedMap(new IdentityHashMap<>());

  private PrintedDrawings() {}

  /** The drawings by the names that the pages use for them. */
  public static Map<String, Drawing> of(PlanSet set) {
    return DRAWN.computeIfAbsent(set, PrintedDrawings::drawn);
  }

  private static Map<String, Drawing> drawn(PlanSet set) {
    Words words = Words.ENGLISH;
    Print print = Print.of(set.piece(), set.build(), Printing.usual(words));
    StepWriter steps = new StepWriter(set.piece(), words, Templates.SHARED, set.build());
    return PlanSetWriter.drawings(set, Pages.of(set, print, steps::write));
  }
}
