package storyrod.planset;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import storyrod.drawing.Drawing;
import storyrod.words.Words;

/** Every drawing that a page of a plan set shows, of whatever kind. */
public final class PrintedDrawings {
  /** Several tests ask for those of the same plan sets. */
  private static final Map<PlanSet, Map<Printing, Map<String, Drawing>>> DRAWN =
      Collections.synchronizedMap(new IdentityHashMap<>());

  private static final Printing USUAL = Printing.usual(Words.ENGLISH);

  private PrintedDrawings() {}

  /** The names of the papers on which a plan set can be printed. */
  public static Set<String> papers() {
    return Paper.BY_NAME.keySet();
  }

  /** The drawings by the names that the pages use for them. */
  public static Map<String, Drawing> of(PlanSet set) {
    return of(set, USUAL);
  }

  /** The same on a paper by its name. */
  public static Map<String, Drawing> of(PlanSet set, String paper) {
    return of(set, on(Paper.BY_NAME.get(paper)));
  }

  private static Printing on(Paper paper) {
    return new Printing(
        USUAL.templates(), USUAL.words(), USUAL.edition(), Optional.of(paper), USUAL.choice());
  }

  private static Map<String, Drawing> of(PlanSet set, Printing printing) {
    return DRAWN
        .computeIfAbsent(set, key -> Collections.synchronizedMap(new HashMap<>()))
        .computeIfAbsent(printing, key -> drawn(set, key));
  }

  private static Map<String, Drawing> drawn(PlanSet set, Printing printing) {
    Print print = Print.of(set.piece(), set.build(), printing);
    StepWriter steps = new StepWriter(set.piece(), printing.words(), Templates.SHARED, set.build());
    return PlanSetWriter.drawings(set, Pages.of(set, print, steps::write));
  }
}
